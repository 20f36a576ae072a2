import { largest } from "../quantity/index.ts";
import { gaugeAfter, withGauge } from "./held-gauge.ts";
import { endBefore, endWithin } from "./life-end.ts";
import type { LifeInput, LifeLimits } from "./life-input.ts";
import { USUAL_LARGEST_CHANGE } from "./life-limits.ts";
import type { LifeEnd, LifeStep } from "./life-step.ts";
import { enterNextBed, goDown, isThrough, lowerEdges, type MarchPlace } from "./march-place.ts";
import type { StateInBed } from "./state-in-bed.ts";
import type { wallLandsOf } from "./wall-lands.ts";
import type { wearStateOf } from "./wear-state.ts";

// A point that wears by more than this share of the deepest cut between two traces trades places with its neighbours.
const LARGEST_SHARE_OF_CUT = 0.3;
// A bit that hardly cuts any more still gets on with its march.
const LEAST_SHARE_OF_CHANGE = 0.05;
// So that whoever drives the march hears from it now and then, however slow the wear is.
const MOST_STEPS_UNHEARD = 200;

/** One way from a trace of the edges to the next. */
export interface Stretch {
  readonly steps: readonly LifeStep[];
  readonly end?: LifeEnd;
  /** Most that any point can have lost on it [m]. */
  readonly changed: number;
  /** The bed it came to last. */
  readonly lastBed: number;
}

/** Goes on until an edge has worn so much that it must be traced anew, or the life ends. */
export function untilTraced({
  input,
  limits,
  place,
  share,
  inBed,
  wearState,
  wallLands,
}: {
  readonly input: LifeInput;
  readonly limits: LifeLimits;
  readonly place: MarchPlace;
  readonly share: number;
  readonly inBed: (bed: number) => StateInBed;
  readonly wearState: ReturnType<typeof wearStateOf>;
  readonly wallLands: ReturnType<typeof wallLandsOf>;
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
    const gauge = place.gauge;
    const landArea = wallLands(gauge.ownLoss + gauge.sideLoss);
    const goOn = (length: number) => {
      const edges = wearState(place.wear);
      if (length > 0) {
        place.gauge = gaugeAfter(gauge, { ownLoss: edges.cutterUndergauge / 2, length, wall: now.wall, landArea });
      } else place.gauge = gauge;
      place.worn = withGauge(edges, place.gauge);
    };
    lowerEdges(place, lowering, whole);
    goOn(whole);
    const passed = endWithin(before, place.worn, limits);
    const length = whole * (passed?.share ?? 1);
    if (passed) {
      lowerEdges(place, lowering, length - whole);
      goOn(length);
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
  const { weight, torque, lateralForce } = drilled.bit;
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
    sideForce: lateralForce,
    binds,
    hottestTemperature,
    hottestCutter: temperatures.indexOf(hottestTemperature) + 1,
    ...worn,
  };
}
