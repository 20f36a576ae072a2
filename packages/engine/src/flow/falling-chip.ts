import { requirePositive, STANDARD_GRAVITY } from "../quantity/index.ts";

/** A chip falling through still fluid. */
export interface FallingChip {
  /** Size of the chip d, as the diameter of a sphere of the same volume or the side of a flat piece [m]. */
  readonly chipSize: number;
  /** Density of the chip [kg/m³]. */
  readonly chipDensity: number;
  /** Density of the fluid ρ [kg/m³]. */
  readonly fluidDensity: number;
  /** Dynamic viscosity that the chip feels μ [Pa s]. */
  readonly viscosity: number;
}

/**
 * Speed squared times drag coefficient of a sphere-like chip at rest in its fall: (4/3) g d Δρ/ρ [m²/s²].
 *
 * @throws RangeError when an input is not positive or the chip would float
 */
export function fallDrive(chip: FallingChip): number {
  const { chipSize, chipDensity, fluidDensity, viscosity } = chip;
  const densityDifference = chipDensity - fluidDensity;
  requirePositive({ chipSize, fluidDensity, viscosity, "chipDensity above fluidDensity": densityDifference });
  return ((4 / 3) * STANDARD_GRAVITY * chipSize * densityDifference) / fluidDensity;
}
