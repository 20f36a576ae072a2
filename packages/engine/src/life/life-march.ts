import type { EdgeWear } from "../cutting/index.ts";
import { largest } from "../quantity/index.ts";
import { levelEdgeWear } from "./edge-wear.ts";
import { endBefore, endWithin } from "./life-end.ts";
import type { LifeInput, LifeLimits } from "./life-input.ts";
import { lifeLimitsOf, USUAL_LARGEST_CHANGE } from "./life-limits.ts";
import type { LifeEnd, LifeStep } from "./life-step.ts";
import {
  copyOfPlace,
  enterNextBed,
  goDown,
  holesDrilled,
  isThrough,
  lowerEdges,
  type MarchPlace,
} from "./march-place.ts";
import { requireSound } from "./sound-life.ts";
import { type StateInBed, stateInBed } from "./state-in-bed.ts";
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
}

// A point that wears by more than this share of the deepest cut between two traces trades places with its neighbours.
const LARGEST_SHARE_OF_CUT = 0.3;
// A bit that hardly cuts any more still gets on with its march.
const LEAST_SHARE_OF_CHANGE = 0.05;
// A stretch is done again in smaller steps where it changed the advance or the hottest temperature by more than this.
const LARGEST_ADVANCE_CHANGE = 0.1;
const LARGEST_HEATING = 25;
const SMALLEST_CHANGE_SHARE = 1 / 64;
// After a stretch in small steps the next may be longer by this much again.
const REGAINING = 1.5;
// So that whoever drives the march hears from it now and then, however slow the wear is.
const MOST_STEPS_UNHEARD = 200;

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
  const wear = (input.wear ?? layout.cutters.map(levelEdgeWear)).map((row) => row.slice());
  const first = wearState(wear);
  const wornVolumes = new Float64Array(layout.cutters.length);
  let place: MarchPlace = { hole: 1, bed: 0, depth: beds[0].top, footage: 0, time: 0, wear, worn: first, wornVolumes };
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
    const stretch = untilTraced({ input, limits, place, share, inBed, wearState });
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
      };
    }
  }
}

/** One way from a trace of the edges to the next. */
interface Stretch {
  readonly steps: readonly LifeStep[];
  readonly end?: LifeEnd;
  /** Most that any point can have lost on it [m]. */
  readonly changed: number;
  /** The bed it came to last. */
  readonly lastBed: number;
}

function untilTraced({
  input,
  limits,
  place,
  share,
  inBed,
  wearState,
}: {
  readonly input: LifeInput;
  readonly limits: LifeLimits;
  readonly place: MarchPlace;
  readonly share: number;
  readonly inBed: (bed: number) => StateInBed;
  readonly wearState: ReturnType<typeof wearStateOf>;
}): Stretch {
  const { beds, holes = 1, largestChange = USUAL_LARGEST_CHANGE } = input;
  const steps: LifeStep[] = [];
  let changed = 0;
  let lastBed = place.bed;
  while (steps.length < MOST_STEPS_UNHEARD) {
    lastBed = place.bed;
    const now = inBed(place.bed);
    const ended = endBefore(now, limits);
    if (ended) return { steps, changed, lastBed, end: ended };
    const { lowering, fastestLowering, volumePerLength } = now.wear;
    const ofCut = LARGEST_SHARE_OF_CUT * largest(now.drilled.loads.deepest);
    const allowed = share * largestChange * Math.min(1, Math.max(LEAST_SHARE_OF_CHANGE, ofCut / largestChange));
    if (!(allowed > changed)) break;
    const { bottom } = beds[place.bed];
    const whole = Math.min(bottom - place.depth, (allowed - changed) / fastestLowering);
    const before = place.worn;
    lowerEdges(place, lowering, whole);
    place.worn = wearState(place.wear);
    const passed = endWithin(before, place.worn, limits);
    const length = whole * (passed?.share ?? 1);
    if (passed) {
      lowerEdges(place, lowering, length - whole);
      place.worn = wearState(place.wear);
    }
    changed += fastestLowering * length;
    volumePerLength.forEach((each, i) => {
      place.wornVolumes[i] += each * length;
    });
    goDown(place, length, now.rate);
    steps.push(stepAt(place, now));
    if (passed) return { steps, changed, lastBed, end: passed.end };
    const drilled = isThrough(place, beds) && enterNextBed(place, beds, holes);
    if (drilled) return { steps, changed, lastBed, end: drilled };
  }
  return { steps, changed, lastBed };
}

function stepAt({ hole, bed, depth, footage, time, worn }: MarchPlace, now: StateInBed): LifeStep {
  const { rate, binds, temperatures, drilled } = now;
  const { weight, torque } = drilled.bit;
  const hottestTemperature = largest(temperatures);
  return {
    footage,
    holeNumber: hole,
    bedIndex: bed,
    depth,
    timeOnBottom: time,
    rate,
    weight,
    torque,
    binds,
    hottestTemperature,
    hottestCutter: temperatures.indexOf(hottestTemperature) + 1,
    ...worn,
  };
}

function differs(before: StateInBed, after: StateInBed): boolean {
  return (
    Math.abs(after.drilled.advance / before.drilled.advance - 1) > LARGEST_ADVANCE_CHANGE ||
    Math.abs(largest(after.temperatures) - largest(before.temperatures)) > LARGEST_HEATING
  );
}
