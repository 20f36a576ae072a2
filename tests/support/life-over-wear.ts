import { type Life, type LifeInput, life, WEAR_COEFFICIENT } from "@bitwright/engine";

/** The life of a bit over what is known of the wear coefficient, each end marched. */
export interface LifeOverWear {
  /** With the highest coefficient of the band: the shortest life. */
  readonly short: Life;
  readonly likely: Life;
  /** With the lowest coefficient of the band. */
  readonly long: Life;
}

/** Life at the middle and at both ends of the band of the coefficient. */
export function lifeOverWear(input: LifeInput): LifeOverWear {
  const { low, high } = WEAR_COEFFICIENT;
  const at = (wearCoefficient: number) => life({ ...input, wearCoefficient });
  return { short: at(high), likely: life(input), long: at(low) };
}
