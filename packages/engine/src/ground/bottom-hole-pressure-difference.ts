import { FRESH_WATER_DENSITY, requireNotNegative, STANDARD_GRAVITY } from "../quantity/index.ts";

/** The columns of fluid in the hole and of water in the ground. */
export interface FluidColumns {
  /** Depth below ground, straight down [m]. */
  readonly depth: number;
  /** Density of the drilling fluid in the hole, cuttings included if known [kg/m³]. */
  readonly fluidDensity: number;
  /** Depth of the standing water level in the ground [m]; default `DEFAULT_WATER_LEVEL`. */
  readonly waterLevel?: number;
  /** Depth of the top of the drilling fluid in the hole [m]; default 0, a full hole. */
  readonly fluidLevel?: number;
  /** Pressure lost up the annulus, which the hole bottom feels on top [Pa]; default 0. */
  readonly annulusLoss?: number;
  /** Density of the ground water [kg/m³]; default fresh water. */
  readonly groundWaterDensity?: number;
}

/**
 * Depth of the standing water level taken where nobody gave one, about 50 ft [m]. Matters little in rock: 15 m of water
 * is 0.15 MPa against strengths of tens of MPa.
 *
 * @source (c) a usual depth for house wells, no source
 */
export const DEFAULT_WATER_LEVEL = 15;

/**
 * Pressure by which the fluid in the hole presses on the bottom above the water in the rock.
 *
 * Δp = ρ_f g (z - z_f) + Δp_a - ρ_w g (z - z_w), each column from its own level down to depth z and never below 0, the
 * whole never below 0 (an underbalanced bottom gives no confinement). Columns at rest; ground water in open connection
 * with its level.
 *
 * @returns pressure difference [Pa]
 * @throws RangeError when an input is negative
 * @source (d) two hydrostatic columns
 * @example
 * bottomHolePressureDifference({ depth: 60, fluidDensity: 1030, waterLevel: 15 }) // → 165137
 */
export function bottomHolePressureDifference({
  depth,
  fluidDensity,
  waterLevel = DEFAULT_WATER_LEVEL,
  fluidLevel = 0,
  annulusLoss = 0,
  groundWaterDensity = FRESH_WATER_DENSITY,
}: FluidColumns): number {
  requireNotNegative({ depth, fluidDensity, waterLevel, fluidLevel, annulusLoss, groundWaterDensity });
  const inHole = fluidDensity * STANDARD_GRAVITY * Math.max(0, depth - fluidLevel) + annulusLoss;
  const inRock = groundWaterDensity * STANDARD_GRAVITY * Math.max(0, depth - waterLevel);
  return Math.max(0, inHole - inRock);
}
