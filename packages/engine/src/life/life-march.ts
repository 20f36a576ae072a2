import type { EdgeWear } from "../cutting/index.ts";
import { largest } from "../quantity/index.ts";
import { levelEdgeWear } from "./edge-wear.ts";
import type { HeldGauge } from "./held-gauge.ts";
import type { LifeInput } from "./life-input.ts";
import { lifeLimitsOf } from "./life-limits.ts";
import type { LifeEnd, LifeStep } from "./life-step.ts";
import { copyOfPlace, holesDrilled, type MarchPlace } from "./march-place.ts";
import { untilTraced } from "./march-stretch.ts";
import { requireSound } from "./sound-life.ts";
import { type StateInBed, stateInBed } from "./state-in-bed.ts";
import { wallLandsOf } from "./wall-lands.ts";
import { type WearState, wearStateOf } from "./wear-state.ts";
import { wornBit } from "./worn-bit.ts";

/** A life marched to its end. */
export interface MarchedLife {
  readonly end: LifeEnd;
  readonly steps: readonly LifeStep[];
  /** How the edges are worn in the end. */
  readonly wear: readonly EdgeWear[];
  /** Diamond and carbide that the law has worn off each cutter [m³]. */
  readonly wornVolumes: readonly number[];
  /** Number of the bed that the bit stood in when it ended, from 0 [-]. */
  readonly bedIndex: number;
  /** Holes drilled to their end [-]. */
  readonly holes: number;
  /** How the bit was worn at the start. */
  readonly start: WearState;
  /** How the bit is worn in the end. */
  readonly worn: WearState;
  /** Reach that the gauge cutters have lost by bearing side force [m]. */
  readonly sideLoss: number;
}

// A stretch is done again in smaller steps where it changed the advance or the hottest temperature by more than this.
const LARGEST_ADVANCE_CHANGE = 0.1;
const LARGEST_HEATING = 25;
const SMALLEST_CHANGE_SHARE = 1 / 64;
// After a stretch in small steps the next may be longer by this much again.
const REGAINING = 1.5;

/**
 * Marches a bit through its beds, hole after hole, giving each stretch as it is done; told `true` in answer, it stops where
 * the edges would be traced next.
 *
 * A stretch ends with its bed, or where an edge has worn so much that it must be traced anew. Between two traces rates and
 * loads of a bed stay as they are. After each trace the bed is looked at again: where it drills too differently, the way
 * back to the last trace is taken again in half the steps.
 *
 * @throws RangeError when beds, holes, limits or coefficients are not sound, or a row has not a place for each cutter
 * @source (d) explicit march of the wear law, first order in the step
 */
export function* lifeMarch(input: LifeInput): Generator<LifeStep, MarchedLife, boolean | undefined> {
  const limits = lifeLimitsOf(input);
  requireSound(input, limits);
  const { layout, beds } = input;
  const wearState = wearStateOf(layout);
  const wallLands = wallLandsOf(layout);
  const wear = (input.wear ?? layout.cutters.map(levelEdgeWear)).map((row) => row.slice());
  const first = wearState(wear);
  const gauge: HeldGauge = { ownLoss: first.cutterUndergauge / 2, sideLoss: 0, ring: 0 };
  const wornVolumes = new Float64Array(layout.cutters.length);
  let place: MarchPlace = {
    hole: 1,
    bed: 0,
    depth: beds[0].top,
    footage: 0,
    time: 0,
    wear,
    worn: first,
    gauge,
    wornVolumes,
  };
  let bit = wornBit(input, { wear, now: first, first });
  let known = new Map<number, StateInBed>();
  const inBed = (bed: number) => {
    const found = known.get(bed) ?? stateInBed(bit, beds[bed]);
    known.set(bed, found);
    return found;
  };
  const steps: LifeStep[] = [];
  let share = 1;
  for (;;) {
    const back = copyOfPlace(place);
    const stretch = untilTraced({ input, limits, place, share, inBed, wearState, wallLands });
    const { end, changed, lastBed } = stretch;
    if (!end && changed > 0) {
      const next = wornBit(input, { wear: place.wear, now: place.worn, first });
      const after = stateInBed(next, beds[lastBed]);
      if (share > SMALLEST_CHANGE_SHARE && differs(inBed(lastBed), after)) {
        share /= 2;
        place = back;
        continue;
      }
      share = Math.min(1, share * REGAINING);
      bit = next;
      known = new Map([[lastBed, after]]);
    }
    let told: LifeEnd | undefined = end;
    for (const step of stretch.steps) {
      steps.push(step);
      if ((yield step) && !told) told = { by: "stopped" };
    }
    if (told) {
      return {
        end: told,
        steps,
        wear: place.wear,
        wornVolumes: [...place.wornVolumes],
        bedIndex: place.bed,
        holes: holesDrilled(place, beds),
        start: first,
        worn: place.worn,
        sideLoss: place.gauge.sideLoss,
      };
    }
  }
}

function differs(before: StateInBed, after: StateInBed): boolean {
  return (
    Math.abs(after.drilled.advance / before.drilled.advance - 1) > LARGEST_ADVANCE_CHANGE ||
    Math.abs(largest(after.temperatures) - largest(before.temperatures)) > LARGEST_HEATING
  );
}
