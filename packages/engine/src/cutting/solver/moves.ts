import { gapsBetweenWings, wingsAround } from "../../bit/index.ts";
import { ANGLE_STEP, ARC_STEP, type Candidate, onStep, RAKE_STEP, SWEEP_STEP, zoneOfCutter } from "./candidate.ts";
import type { RandomSource } from "./random-source.ts";
import type { SolverSetting } from "./solver-setting.ts";

/** Changes a candidate a little; gives the cutters that stand otherwise now, or nothing where the change is not allowed. */
export type Move = (
  candidate: Candidate,
  setting: SolverSetting,
  random: RandomSource,
) => readonly number[] | undefined;

const DEGREE = Math.PI / 180;
/** Widest usual shift of a station, as share of a face; most are far smaller [-]: (d) our choice. */
const WIDEST_SHIFT = 0.3;
/** Smallest usual shift against the widest, for stations and wings [-]: (d) our choice. */
const [FINEST_SHIFT, FINEST_TURN] = [0.01, 0.1];
/** Widest usual turn of a wing and change of sweep [rad]: (d) our choice. */
const [WIDEST_TURN, SWEEP_CHANGE] = [2 * DEGREE, 2 * DEGREE];

/** One station along the profile, by anything from a tenth of a millimetre to a third of a face. */
const shiftStation: Move = (candidate, { spec, stock }, random) => {
  const { role, arc } = candidate;
  const at = random.whole(role.length);
  if (role[at] !== "face") return undefined;
  const spread = spec.cutter.faceDiameter * WIDEST_SHIFT * FINEST_SHIFT ** random.share();
  const moved = onStep(arc[at] + random.normal() * spread, ARC_STEP);
  const station = moved === arc[at] ? moved + ARC_STEP : moved;
  if (station < stock.atCentre().arc || station > stock.profile.gaugeStart) return undefined;
  arc[at] = station;
  return [at];
};

/** Two cutters change wings: the stations stay, the order of the wings over them changes. */
const swapWings: Move = ({ role, wing }, _, random) => {
  const [a, b] = [random.whole(role.length), random.whole(role.length)];
  if (wing[a] === wing[b] || role[a] === "gauge" || role[b] === "gauge") return undefined;
  [wing[a], wing[b]] = [wing[b], wing[a]];
  return [a, b];
};

/** One wing turns, within the gaps allowed; wing 1 stays as the mark. */
const turnWing: Move = ({ wing, wingAngles }, { gaps, freedom }, random) => {
  if (!(freedom.gap > 0) || wingAngles.length < 2) return undefined;
  const turned = 1 + random.whole(wingAngles.length - 1);
  const by = random.normal() * WIDEST_TURN * FINEST_TURN ** random.share();
  wingAngles[turned] = onStep(wingAngles[turned] + by, ANGLE_STEP);
  const standing = gapsBetweenWings(wingAngles);
  const widest = Math.max(...standing);
  if (Math.min(...standing) < gaps.least || widest > gaps.most || widest < gaps.leastWidest) return undefined;
  return cuttersWhere(wing, (each) => each === turned);
};

/** All wings trail more or less. */
const changeSweep: Move = (candidate, { freedom, start }, random) => {
  const sweep = onStep(candidate.sweep + random.normal() * SWEEP_CHANGE, SWEEP_STEP);
  if (sweep === candidate.sweep || Math.abs(sweep - start.sweep) > freedom.sweep + SWEEP_STEP / 2) return undefined;
  candidate.sweep = sweep;
  return cuttersWhere(candidate.wing, () => true);
};

/** One zone leans a step more or less, never so that the faces lean less outward than the schedule has them. */
const changeRake: Move = (candidate, { freedom, stock }, random) => {
  const { rakeSteps, wing } = candidate;
  const zone = random.whole(rakeSteps.length);
  const steps = rakeSteps[zone] + (random.share() < 0.5 ? 1 : -1);
  if (Math.abs(steps) * RAKE_STEP > freedom.rake + RAKE_STEP / 2) return undefined;
  if (steps < (rakeSteps[zone - 1] ?? -Infinity) || steps > (rakeSteps[zone + 1] ?? Infinity)) return undefined;
  rakeSteps[zone] = steps;
  const moved = cuttersWhere(wing, (_, at) => zoneOfCutter(candidate, at, stock) === zone);
  return moved.length > 0 ? moved : undefined;
};

/** Draws a gauge cutter in onto the face, by a third of a face or more, or sends an outermost face cutter out to gauge. */
const changeDuty: Move = (candidate, { spec, stock }, random) => {
  const { role, wing, arc, wingAngles } = candidate;
  const chosen = random.whole(wingAngles.length);
  const [outermost] = cuttersWhere(wing, (each) => each === chosen).sort((a, b) => arc[b] - arc[a]);
  if (outermost === undefined || role[outermost] === "centre") return undefined;
  if (role[outermost] === "gauge") {
    const drawn = arc[outermost] - spec.cutter.faceDiameter * (WIDEST_SHIFT + random.share());
    if (drawn < stock.atCentre().arc) return undefined;
    role[outermost] = "face";
    arc[outermost] = onStep(drawn, ARC_STEP);
  } else {
    role[outermost] = "gauge";
    arc[outermost] = stock.atGauge(0).arc;
  }
  return holdsDiameter(candidate) ? [outermost] : undefined;
};

/** Whether of any two neighbouring wings at least one carries a gauge cutter. */
export function holdsDiameter({ role, wing, wingAngles }: Candidate): boolean {
  const bare = wingAngles.map((_, each) => !role.some((of, at) => of === "gauge" && wing[at] === each));
  const round = wingsAround(wingAngles);
  return round.every((each, at) => !(bare[each] && bare[round[(at + 1) % round.length]]));
}

function cuttersWhere(wing: readonly number[], holds: (wing: number, at: number) => boolean): number[] {
  const found: number[] = [];
  for (const [at, each] of wing.entries()) if (holds(each, at)) found.push(at);
  return found;
}

/** How often each move is tried, adding up to 1 [-]: (d) our choice, tuned on the demo bits. */
const MOVES: readonly { readonly move: Move; readonly share: number }[] = [
  { move: shiftStation, share: 0.52 },
  { move: swapWings, share: 0.18 },
  { move: turnWing, share: 0.12 },
  { move: changeDuty, share: 0.08 },
  { move: changeRake, share: 0.06 },
  { move: changeSweep, share: 0.04 },
];

/**
 * A random move out of all there are.
 *
 * @source (d) draw by stated shares
 */
export function drawnMove(random: RandomSource): Move {
  let rest = random.share();
  for (const { move, share } of MOVES) {
    if (rest < share) return move;
    rest -= share;
  }
  return shiftStation;
}
