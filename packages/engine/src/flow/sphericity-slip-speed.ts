import { bracketedRoot, requireBetween, requirePositive } from "../quantity/index.ts";
import { type FallingChip, fallDrive } from "./falling-chip.ts";
import { stokesSlipSpeed } from "./stokes-slip-speed.ts";

/** What `sphericityDrag` needs. */
export interface SphericityDragInput {
  /** Reynolds number of the fall [-]. */
  readonly reynolds: number;
  /** Surface of a sphere of the chip's volume over the chip's own surface s, 1 for a sphere [-]. */
  readonly sphericity: number;
}

/**
 * Drag coefficient of a chip by its sphericity.
 *
 * log₁₀ f = A + B log₁₀ Re + C (log₁₀ Re)², A, B, C cubics in sphericity; Re to about 1000.
 *
 * @returns drag coefficient [-]
 * @throws RangeError when Re is not positive or sphericity lies outside 0 to 1
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems
 * @example
 * sphericityDrag({ reynolds: 240, sphericity: 0.8 }) // → 2.935 (± 0.3 %)
 */
export function sphericityDrag({ reynolds, sphericity: s }: SphericityDragInput): number {
  requirePositive({ reynolds });
  requireBetween("sphericity", s, 0, 1);
  const a = 2.2954 - 2.2626 * s + 4.4395 * s ** 2 - 2.9825 * s ** 3;
  const b = -0.4193 - 1.9014 * s + 3.3416 * s ** 2 - 2.0409 * s ** 3;
  const c = 0.1117 + 0.0553 * s - 0.1468 * s ** 2 + 0.1145 * s ** 3;
  const decade = Math.log10(reynolds);
  return 10 ** (a + b * decade + c * decade ** 2);
}

/** A falling chip whose shape is known. */
export interface ShapedFallingChip extends FallingChip {
  /** Surface of a sphere of the chip's volume over the chip's own surface, 1 for a sphere [-]. */
  readonly sphericity: number;
}

/** Decade of Re below which a chip falls as Stokes says [-]. */
const SLOWEST_FALL = -4;

/**
 * Slip of a chip whose sphericity is known.
 *
 * f(Re) v² = (4/3) g d Δρ/ρ, solved for v with the drag coefficient of `sphericityDrag`; by Stokes in fluid so thick
 * that Re falls below 1e-4, where that form is of no use.
 *
 * @returns slip speed [m/s]
 * @throws RangeError when an input is not positive, the chip would float, or sphericity lies outside 0 to 1
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems
 * @example
 * sphericitySlipSpeed({ chipSize: 0.00635, chipDensity: 2699, fluidDensity: 1438, viscosity: 0.006, sphericity: 0.8 }) // → 0.1575 (± 0.3 %)
 */
export function sphericitySlipSpeed(chip: ShapedFallingChip): number {
  const { sphericity } = chip;
  const drive = fallDrive(chip);
  const reynoldsPerSpeed = (chip.fluidDensity * chip.chipSize) / chip.viscosity;
  const balance = (decade: number) => {
    const reynolds = 10 ** decade;
    return ((reynolds / reynoldsPerSpeed) ** 2 * sphericityDrag({ reynolds, sphericity })) / drive - 1;
  };
  if (balance(SLOWEST_FALL) > 0) return stokesSlipSpeed(chip);
  const decade = bracketedRoot({ f: balance, low: SLOWEST_FALL, high: 8, residual: 1e-10 });
  return 10 ** decade / reynoldsPerSpeed;
}
