import { type FallingChip, fallDrive } from "./falling-chip.ts";

/** Drag coefficient of a flat chip in fast fall [-]. */
const FAST_DRAG = 1.727;
/** Drag coefficient times Re added in slow fall [-]. */
const SLOW_DRAG = 24;
const FAST_FROM_REYNOLDS = 100;

/**
 * Slip of a flat chip after Chien, viscosity counted at every speed.
 *
 * Drag coefficient 24/Re + 1.727: v = [√((24 x)² + 4 · 1.727 D) - 24 x]/(2 · 1.727), x = μ/(ρ d), D = (4/3) g d Δρ/ρ.
 *
 * @returns slip speed [m/s]
 * @throws RangeError when an input is not positive or the chip would float
 * @source (b) Chien 1971 as in Lapeyrouse 2002, recalled; field constants turned into drag coefficients
 * @example
 * chienViscousSlipSpeed({ chipSize: 0.00635, chipDensity: 2636, fluidDensity: 1318, viscosity: 0.013 }) // → 0.20873
 */
export function chienViscousSlipSpeed(chip: FallingChip): number {
  const { chipSize, fluidDensity, viscosity } = chip;
  const drive = fallDrive(chip);
  const slow = (SLOW_DRAG * viscosity) / (fluidDensity * chipSize);
  return (Math.sqrt(slow ** 2 + 4 * FAST_DRAG * drive) - slow) / (2 * FAST_DRAG);
}

/**
 * Slip of a flat chip after Chien, with viscosity left out once the fall is fast.
 *
 * The viscous form while its Reynolds number ρ v d/μ stays below 100, above it √(D/1.727), D = (4/3) g d Δρ/ρ.
 *
 * @returns slip speed [m/s]
 * @throws RangeError when an input is not positive or the chip would float
 * @source (b) Chien 1971, recalled
 * @example
 * chienSlipSpeed({ chipSize: 0.00635, chipDensity: 2598, fluidDensity: 999.3, viscosity: 0.0011 }) // → 0.27732
 */
export function chienSlipSpeed(chip: FallingChip): number {
  const viscous = chienViscousSlipSpeed(chip);
  const reynolds = (chip.fluidDensity * viscous * chip.chipSize) / chip.viscosity;
  return reynolds < FAST_FROM_REYNOLDS ? viscous : Math.sqrt(fallDrive(chip) / FAST_DRAG);
}
