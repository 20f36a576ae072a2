import type { ScaledBit } from "./scaled-bit.ts";

/** What the equations of self-excitation are marched from; all of it in the units of `ScaledBit`. */
export interface MarchInput {
  readonly bit: Pick<ScaledBit, "wings" | "cutStiffness" | "contactLoad" | "contactFriction">;
  /** W', weight held at the top [-]. */
  readonly scaledWeight: number;
  /** ω0, speed at which the top turns [-]. */
  readonly scaledSpeed: number;
  /** How long to march, in units of t* [-]. */
  readonly duration: number;
  /** Longest time step; a share of the shortest time in the problem where not given [-]. */
  readonly timeStep?: number;
  /** Whether the string twists, or is so stiff that the bit turns evenly. */
  readonly rotation?: "twisting" | "even";
  /** ξ, damping of the string's twisting as a share of critical; none where not given, as in the paper [-]. */
  readonly twistDamping?: number;
  /** How the march begins, apart from steady drilling. */
  readonly start?: MarchStart;
  /** How many moments to keep for drawing [-]. */
  readonly samples?: number;
  /** Asked now and then; when it says so the march ends with what it has. */
  readonly shouldStop?: () => boolean;
}

/** What is wrong with steady drilling at the start. */
export interface MarchStart {
  /** The bit below its steady place [L*]: above where negative. */
  readonly axialOffset?: number;
  /** Its speed along the hole over the steady one [-]. */
  readonly axialSpeedRatio?: number;
  /** Its turning speed over the steady one [-]. */
  readonly turningSpeedRatio?: number;
  /** Ripple of the hole bottom left before the start [L*], by the angle before the start, which is negative [rad]. */
  readonly ripple?: (angle: number) => number;
}

/** What became of a bit. */
export type MarchRegime = "steady" | "axial vibration" | "torsional vibration" | "stick-slip" | "bit bounce";

/** Moments of a march, in the units of `ScaledBit`, the last that of its end; all rows are of one length. */
export interface MarchSeries {
  /** Time [-]. */
  readonly time: Float64Array;
  /** Speed along the hole over the steady one [-]. */
  readonly axialSpeed: Float64Array;
  /** Turning speed of the bit over that of the top [-]. */
  readonly turningSpeed: Float64Array;
  /** Cut of one wing over the steady one [-]. */
  readonly cutRatio: Float64Array;
  /** Bit below its place in steady drilling [L*]. */
  readonly axialOffset: Float64Array;
  /** T', torque of the rock on the bit [-]. */
  readonly scaledTorque: Float64Array;
  /** W', load of the rock on the bit [-]. */
  readonly scaledWeight: Float64Array;
}

/** What a march came to. Shares and means are of its second half. */
export interface March {
  readonly regime: MarchRegime;
  /** Whether it ran to its end. */
  readonly finished: boolean;
  /** Time marched [-]. */
  readonly duration: number;
  /** Share of the time that the bit stands still [-]. */
  readonly stickShare: number;
  /** Share of the time that the flats have lost the rock [-]. */
  readonly liftShare: number;
  /** Share of the time that the whole bit is off bottom [-]. */
  readonly bounceShare: number;
  /** Highest turning speed over that of the top [-]. */
  readonly fastestRatio: number;
  /** Largest less least turning speed, over that of the top [-]. */
  readonly turningSwing: number;
  /** Largest less least speed along the hole over the steady one, less what the turning speed explains of it [-]. */
  readonly axialSwing: number;
  /** The axial swing of the last quarter over that of the one before [-]. */
  readonly growthRatio: number;
  /** Mean torque [-]. */
  readonly meanScaledTorque: number;
  /** Mean share of the contact that bears, <g> [-]. */
  readonly meanContactShare: number;
  /** The steady cut of one wing [-]. */
  readonly steadyCut: number;
  /** How many times the flats, the whole bit or the turning changed state [-]. */
  readonly events: number;
  readonly series: MarchSeries;
}
