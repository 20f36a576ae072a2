import {
  type CutterRole,
  type FaceStock,
  faceOf,
  type LayoutPlan,
  type ProfileZone,
  type RakeShifts,
  type StationedFace,
} from "../../bit/index.ts";

/** A layout while it is being searched for. Lengths and angles are kept on steps that a shop can set. */
export interface Candidate {
  readonly role: CutterRole[];
  /** Wing of each cutter, from 0 [-]. */
  readonly wing: number[];
  /** Length along the profile of each tip [m]. */
  readonly arc: number[];
  /** Azimuths of the wings at the bit axis [rad]. */
  readonly wingAngles: number[];
  /** Trail of the gauge end of a wing [rad]. */
  sweep: number;
  /** Back rake added by zone, from the centre outward, in steps [-]. */
  readonly rakeSteps: number[];
}

/** The zones from the centre outward. */
const ZONES_OUTWARD: readonly ProfileZone[] = ["cone", "nose", "taper", "shoulder", "gauge"];

const DEGREE = Math.PI / 180;

/** Step of a station [m]: (c) our choice, no pocket is set finer than a tenth of a millimetre. */
export const ARC_STEP = 1e-4;
/** Step of a wing's angle [rad]: (c) our choice, a tenth of a degree. */
export const ANGLE_STEP = 0.1 * DEGREE;
/** Step of the sweep [rad]: (c) our choice, half a degree. */
export const SWEEP_STEP = 0.5 * DEGREE;
/** Step of a rake [rad]: (c) our choice, one degree. */
export const RAKE_STEP = DEGREE;

/** The nearest value on a step. */
export function onStep(value: number, step: number): number {
  return Math.round(value / step) * step;
}

/** A candidate of its own with the same values. */
export function copied({ role, wing, arc, wingAngles, sweep, rakeSteps }: Candidate): Candidate {
  return {
    role: [...role],
    wing: [...wing],
    arc: [...arc],
    wingAngles: [...wingAngles],
    sweep,
    rakeSteps: [...rakeSteps],
  };
}

/** A plan as a candidate to start from. */
export function candidateOf({ cutters, wingAngles, sweep, rakeShifts }: LayoutPlan): Candidate {
  return {
    role: cutters.map(({ role }) => role),
    wing: cutters.map(({ wing }) => wing - 1),
    arc: cutters.map(({ arc }) => arc),
    wingAngles: [...wingAngles],
    sweep,
    rakeSteps: ZONES_OUTWARD.map((zone) => Math.round(rakeShifts[zone] / RAKE_STEP)),
  };
}

/** The plan of a candidate. */
export function planOf({ role, wing, arc, wingAngles, sweep, rakeSteps }: Candidate): LayoutPlan {
  return {
    cutters: role.map((each, at) => ({ role: each, wing: wing[at] + 1, arc: arc[at] })),
    wingAngles: [...wingAngles],
    sweep,
    rakeShifts: rakeShiftsOf(rakeSteps),
  };
}

function rakeShiftsOf(rakeSteps: readonly number[]): RakeShifts {
  const shift = (zone: ProfileZone) => (rakeSteps[ZONES_OUTWARD.indexOf(zone)] ?? 0) * RAKE_STEP;
  return {
    cone: shift("cone"),
    nose: shift("nose"),
    taper: shift("taper"),
    shoulder: shift("shoulder"),
    gauge: shift("gauge"),
  };
}

/** The number of the zone, from the centre outward, whose rake a cutter has; -1 for the centre cutter, which keeps its own. */
export function zoneOfCutter({ role, arc }: Candidate, at: number, stock: FaceStock): number {
  if (role[at] === "centre") return -1;
  return ZONES_OUTWARD.indexOf(role[at] === "gauge" ? "gauge" : stock.zoneAt(arc[at]));
}

/** The faces of a candidate, cutter by cutter, out of the stock. */
export function facesOf({ role, arc, rakeSteps }: Candidate, stock: FaceStock): StationedFace[] {
  const shifts = rakeShiftsOf(rakeSteps);
  return role.map((each, at) => faceOf(stock, { role: each, arc: arc[at] }, shifts));
}
