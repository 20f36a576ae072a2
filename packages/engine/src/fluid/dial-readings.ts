import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import type { BinghamFluid, HerschelBulkleyFluid, PowerLawFluid } from "./drilling-fluid.ts";

/**
 * Shear stress that turns the standard viscometer's dial by one degree [Pa]: 1.066 lbf per 100 ft².
 *
 * @source (b) API RP 13D, factor 1.066, recalled
 */
export const DIAL_DEGREE_STRESS = 0.510404;

/**
 * Rate of shear at the bob of the standard viscometer at its 300 setting [1/s]; twice this at 600.
 *
 * @source (b) API RP 13D, recalled
 */
export const DIAL_300_SHEAR_RATE = 511;

/** Two readings of the standard six-speed viscometer. */
export interface TwoDialReadings {
  /** Density [kg/m³]. */
  readonly density: number;
  /** Dial at the 600 setting [deg of dial]. */
  readonly at600: number;
  /** Dial at the 300 setting [deg of dial]. */
  readonly at300: number;
}

/** Four readings of the standard six-speed viscometer. */
export interface FourDialReadings extends TwoDialReadings {
  /** Dial at the 6 setting [deg of dial]. */
  readonly at6: number;
  /** Dial at the 3 setting [deg of dial]. */
  readonly at3: number;
}

/**
 * Plastic viscosity and yield point from two dial readings.
 *
 * PV = (τ600 - τ300)/511 s⁻¹ and YP = τ300 - 511 PV, with τ the dial times 0.5104 Pa. The mud engineer's short form
 * (PV in cp = θ600 - θ300, YP in lbf/100 ft² = θ300 - PV) takes a degree for one lbf/100 ft² and so gives a yield
 * point 6 % lower.
 *
 * @throws RangeError when density is not positive, or the readings are not positive and rising with speed
 * @source (d) the Bingham law through two readings; conversion after API RP 13D
 * @example
 * binghamFromDial({ density: 1054, at600: 24, at300: 16 }).plasticViscosity // → 0.007991
 */
export function binghamFromDial({ density, at600, at300 }: TwoDialReadings): BinghamFluid {
  requirePositive({ density, at300, rise: at600 - at300 });
  const plasticViscosity = (DIAL_DEGREE_STRESS * (at600 - at300)) / DIAL_300_SHEAR_RATE;
  const yieldPoint = Math.max(0, DIAL_DEGREE_STRESS * (2 * at300 - at600));
  return { model: "bingham", density, plasticViscosity, yieldPoint };
}

/**
 * Power law from two dial readings.
 *
 * n = log₂(θ600/θ300), K = τ300/511ⁿ.
 *
 * @throws RangeError when density is not positive, or the readings are not positive and rising with speed
 * @source (b) Guo & Liu 2011, Applied Drilling Circulation Systems; the printed 3.32 is 1/log₁₀ 2
 * @example
 * powerLawFromDial({ density: 1138, at600: 60, at300: 40 }).flowIndex // → 0.58496
 */
export function powerLawFromDial({ density, at600, at300 }: TwoDialReadings): PowerLawFluid {
  requirePositive({ density, at300, rise: at600 - at300 });
  const flowIndex = Math.log2(at600 / at300);
  const consistency = (DIAL_DEGREE_STRESS * at300) / DIAL_300_SHEAR_RATE ** flowIndex;
  return { model: "power-law", density, flowIndex, consistency };
}

/**
 * Yield stress, consistency and flow index from four dial readings.
 *
 * τy = 2 τ3 - τ6 (not below zero), n = log₂((τ600 - τy)/(τ300 - τy)), K = (τ300 - τy)/511ⁿ.
 *
 * @throws RangeError when density is not positive, a reading is negative, or the readings do not rise above the yield
 * @source (b) API RP 13D form, recalled
 * @example
 * herschelBulkleyFromDial({ density: 1054.5, at600: 24, at300: 16, at6: 5, at3: 4 }).flowIndex // → 0.69188
 */
export function herschelBulkleyFromDial({ density, at600, at300, at6, at3 }: FourDialReadings): HerschelBulkleyFluid {
  requirePositive({ density, at300, rise: at600 - at300 });
  requireNotNegative({ at6, at3 });
  const yieldReading = Math.max(0, 2 * at3 - at6);
  requirePositive({ "at300 above the yield": at300 - yieldReading });
  const flowIndex = Math.log2((at600 - yieldReading) / (at300 - yieldReading));
  const consistency = (DIAL_DEGREE_STRESS * (at300 - yieldReading)) / DIAL_300_SHEAR_RATE ** flowIndex;
  const yieldStress = DIAL_DEGREE_STRESS * yieldReading;
  return { model: "herschel-bulkley", density, yieldStress, consistency, flowIndex };
}
