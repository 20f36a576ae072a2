import { type FallingChip, fallDrive } from "./falling-chip.ts";

/** Drag coefficient times Re of slow fall [-]. */
const SLOW_DRAG = 40;
/** Drag coefficient times √Re between slow and fast fall [-]. */
const MIDDLE_DRAG = 22;
/** Drag coefficient of fast fall [-]. */
const FAST_DRAG = 1.507;

/**
 * Slip of a chip in the annulus after Moore, with the apparent viscosity of the mud at the annulus wall.
 *
 * Drag coefficient 40/Re, 22/√Re or 1.507, the largest of the three: v is the least of D ρ d/(40 μ),
 * (D/22 √(ρ d/μ))^⅔ and √(D/1.507), D = (4/3) g d Δρ/ρ. As printed the laws change at Re 3 and 300, which leaves small steps;
 * taking the largest drag moves the upper change to 215 and removes them (at most 8 % between 215 and 300).
 *
 * @returns slip speed [m/s]
 * @throws RangeError when an input is not positive or the chip would float
 * @source (b) Moore 1974, Drilling Practices Manual, recalled; field constants turned into drag coefficients
 * @example
 * mooreSlipSpeed({ chipSize: 0.00635, chipDensity: 2598, fluidDensity: 999.3, viscosity: 0.0011 }) // → 0.29687
 */
export function mooreSlipSpeed(chip: FallingChip): number {
  const { chipSize, fluidDensity, viscosity } = chip;
  const drive = fallDrive(chip);
  const reynoldsPerSpeed = (fluidDensity * chipSize) / viscosity;
  return Math.min(
    (drive * reynoldsPerSpeed) / SLOW_DRAG,
    ((drive / MIDDLE_DRAG) * Math.sqrt(reynoldsPerSpeed)) ** (2 / 3),
    Math.sqrt(drive / FAST_DRAG),
  );
}
