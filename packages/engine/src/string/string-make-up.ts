import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import { buoyancyFactor } from "./buoyancy-factor.ts";

/** The collars above the bit. */
export interface CollarRun {
  /** Length of all collars together [m]. */
  readonly length: number;
  /** Weight in air for each length [N/m]. */
  readonly linearWeight: number;
}

/** The drill pipe above the collars, as much of it as the depth asks for. */
export interface PipeRun {
  /** Length of one joint [m]. */
  readonly jointLength: number;
  /** Weight in air for each length, joints included [N/m]. */
  readonly linearWeight: number;
}

/** What hangs in the hole, from the bit up: collars if there are any, then pipe. */
export interface StringMakeUp {
  readonly collars?: CollarRun;
  readonly pipe: PipeRun;
}

/** A string in a hole full of fluid. */
export interface HangingString {
  readonly makeUp: StringMakeUp;
  /** Density of the fluid; 0 in air [kg/m³]. */
  readonly fluidDensity: number;
}

/** What `hangingWeight` needs. */
export interface HangingWeightInput extends HangingString {
  /** Length of the string [m]. */
  readonly length: number;
}

/**
 * Weight of a string hanging in fluid.
 *
 * W = BF (w_c L_c + w_p L_p); collars first, pipe for what is longer. The bit's own weight is left out.
 *
 * @returns weight [N]
 * @throws RangeError when a length or weight is out of range
 * @source (a) Lyons, Carter & Lapeyrouse 2012, p. 24
 * @example
 * hangingWeight({ makeUp: { pipe: { jointLength: 6.096, linearWeight: 194.1 } }, fluidDensity: 1030.5, length: 100 }) // → 16862
 */
export function hangingWeight({ makeUp, fluidDensity, length }: HangingWeightInput): number {
  checkMakeUp(makeUp);
  requireNotNegative({ length });
  const collarLength = Math.min(length, makeUp.collars?.length ?? 0);
  const inAir = collarLength * (makeUp.collars?.linearWeight ?? 0) + (length - collarLength) * makeUp.pipe.linearWeight;
  return buoyancyFactor(fluidDensity) * inAir;
}

/** What `lengthThatWeighs` needs. */
export interface LengthThatWeighsInput extends HangingString {
  /** Weight W [N]. */
  readonly weight: number;
}

/**
 * Length of string, counted from the bit, that weighs a given amount in fluid. With the weight on bit it is the height
 * of the neutral point above the bit: below it the string is pressed, above it pulled.
 *
 * W/(BF w_c) within the collars, L_c + (W - BF w_c L_c)/(BF w_p) above them.
 *
 * @returns length [m]
 * @throws RangeError when a length or weight is out of range
 * @source (d) the hanging weight read the other way
 * @example
 * lengthThatWeighs({ makeUp: { pipe: { jointLength: 6.096, linearWeight: 194.1 } }, fluidDensity: 1030.5, weight: 27245 }) // → 161.58
 */
export function lengthThatWeighs({ makeUp, fluidDensity, weight }: LengthThatWeighsInput): number {
  checkMakeUp(makeUp);
  requireNotNegative({ weight });
  const { collars, pipe } = makeUp;
  const inAir = weight / buoyancyFactor(fluidDensity);
  if (!collars) return inAir / pipe.linearWeight;
  const inCollars = inAir / collars.linearWeight;
  if (inCollars <= collars.length) return inCollars;
  return collars.length + (inAir - collars.linearWeight * collars.length) / pipe.linearWeight;
}

function checkMakeUp({ collars, pipe }: StringMakeUp): void {
  requirePositive({ jointLength: pipe.jointLength, pipeLinearWeight: pipe.linearWeight });
  if (collars) requirePositive({ collarLength: collars.length, collarLinearWeight: collars.linearWeight });
}
