import { type Band, band, FRESH_WATER_DENSITY, requirePositive } from "../quantity/index.ts";

/** What `funnelViscosity` needs. */
export interface FunnelViscosityInput {
  /** Density of the mud [kg/m³]. */
  readonly density: number;
  /** Time for one US quart to run out of the mud funnel [s]. */
  readonly funnelTime: number;
}

/**
 * Effective viscosity guessed from the time of the mud funnel. A poor measure: the funnel sees one rate of shear that
 * changes as it empties, so the band spans half to double. Use a viscometer wherever pressure or cleaning is close.
 *
 * μ ≈ (ρ/ρw)(t - 25 s) in mPa s; for water t is 26 s.
 *
 * @returns effective viscosity [Pa s], low side half and high side double the middle
 * @throws RangeError when density is not positive or the time is not above 25 s
 * @source (b) Pitt 2000, SPE Drilling & Completion 15:1, recalled; the width of the band is common practice
 * @example
 * funnelViscosity({ density: 1050, funnelTime: 40 }).mid // → 0.01576
 */
export function funnelViscosity({ density, funnelTime }: FunnelViscosityInput): Band {
  requirePositive({ density, "funnelTime above 25 s": funnelTime - FUNNEL_EMPTYING_TIME });
  const mid = 1e-3 * (density / FRESH_WATER_DENSITY) * (funnelTime - FUNNEL_EMPTYING_TIME);
  return band(mid / 2, mid, 2 * mid);
}

/** Time at which a liquid without viscosity would empty the funnel [s]. */
const FUNNEL_EMPTYING_TIME = 25;
