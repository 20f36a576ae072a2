import { type FallingChip, fallDrive } from "./falling-chip.ts";

/**
 * Fall of a small round chip through a thick fluid.
 *
 * v = g d² Δρ/(18 μ), that is a drag coefficient of 24/Re; Re below about 1.
 *
 * @returns slip speed [m/s]
 * @throws RangeError when an input is not positive or the chip would float
 * @source (b) Stokes 1851, recalled
 * @example
 * stokesSlipSpeed({ chipSize: 0.001, chipDensity: 2600, fluidDensity: 1000, viscosity: 0.1 }) // → 0.0087170
 */
export function stokesSlipSpeed(chip: FallingChip): number {
  const { chipSize, fluidDensity, viscosity } = chip;
  return (fallDrive(chip) * fluidDensity * chipSize) / (24 * viscosity);
}
