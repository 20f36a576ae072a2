import { type Life, life } from "./life.ts";
import type { LifeInput } from "./life-input.ts";
import { WEAR_COEFFICIENT } from "./wear-law.ts";

/** The life of a bit over what is known of the wear coefficient. */
export interface LifeOverWear {
  /** With the highest coefficient of the band: the shortest life. */
  readonly short: Life;
  /** With the coefficient asked for. */
  readonly likely: Life;
  /** With the lowest coefficient of the band. */
  readonly long: Life;
}

/**
 * Life at the best coefficient and at both ends of its band: a factor of ten of the rock's grinding makes almost as much in
 * footage. With a coefficient that was set the band keeps its width around it.
 *
 * @throws RangeError when the beds, holes or coefficients are not sound
 * @source (c) width of the band: no source
 */
export function lifeOverWear(input: LifeInput): LifeOverWear {
  const { low, mid, high } = WEAR_COEFFICIENT;
  const set = input.wearCoefficient ?? mid;
  const at = (coefficient: number) => life({ ...input, wearCoefficient: (set * coefficient) / mid });
  return { short: at(high), likely: life(input), long: at(low) };
}
