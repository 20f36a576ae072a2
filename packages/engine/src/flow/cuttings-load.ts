import { requireBetween, requireNotNegative, requirePositive } from "../quantity/index.ts";

/**
 * Share of cuttings in the rising fluid above which a hole no longer cleans [-].
 *
 * @source (b) Pigott 1941, Drilling and Production Practice, 5 %, recalled
 */
export const CUTTINGS_SHARE_LIMIT = 0.05;

/**
 * Transport ratio below which chips gather in the hole [-].
 *
 * @source (c) common practice, no source
 */
export const LEAST_TRANSPORT_RATIO = 0.5;

/** What `transportRatio` needs. */
export interface TransportRatioInput {
  /** Slip speed of the chips Vs [m/s]. */
  readonly slipSpeed: number;
  /** Uphole speed of the fluid V [m/s]. */
  readonly upholeSpeed: number;
}

/**
 * Speed at which chips rise over that of the fluid.
 *
 * F = 1 - Vs/V; zero or less means that chips of this size do not come up.
 *
 * @returns transport ratio [-]
 * @throws RangeError when the uphole speed is not positive or the slip is negative
 * @source (d) chips rise at V - Vs
 * @example
 * transportRatio({ slipSpeed: 0.28, upholeSpeed: 0.74 }) // → 0.62162
 */
export function transportRatio({ slipSpeed, upholeSpeed }: TransportRatioInput): number {
  requirePositive({ upholeSpeed });
  requireNotNegative({ slipSpeed });
  return 1 - slipSpeed / upholeSpeed;
}

/** The stream that carries the cuttings. */
export interface CarryingStream {
  /** Diameter of the hole D [m]. */
  readonly holeDiameter: number;
  /** Transport ratio F, above 0 [-]. */
  readonly transportRatio: number;
  /** Pump flow Q [m³/s]. */
  readonly flow: number;
}

/** What `cuttingsShare` needs. */
export interface CuttingsShareInput extends CarryingStream {
  /** Rate of penetration [m/s]. */
  readonly rate: number;
}

/**
 * Share of cuttings by volume in the rising fluid.
 *
 * c = rate · π D²/4/(F Q).
 *
 * @returns share of volume [-]
 * @throws RangeError when the rate is negative, or hole, flow or transport ratio is not positive
 * @source (b) Pigott 1941, recalled; constant derived again from units
 * @example
 * cuttingsShare({ rate: 0.00846667, holeDiameter: 0.155575, transportRatio: 0.6, flow: 0.00946353 }) // → 0.028345
 */
export function cuttingsShare({ rate, holeDiameter, transportRatio, flow }: CuttingsShareInput): number {
  requireNotNegative({ rate });
  requirePositive({ holeDiameter, transportRatio, flow });
  return (rate * (Math.PI / 4) * holeDiameter ** 2) / (transportRatio * flow);
}

/** What `rateCeilingByCleaning` needs. */
export interface RateCeilingByCleaningInput extends CarryingStream {
  /** Largest share of cuttings allowed c [-]. */
  readonly shareLimit: number;
}

/**
 * Rate of penetration at which cuttings reach their limit: what this pump can clean.
 *
 * rate = c F Q/(π D²/4); zero where chips do not rise (F zero or less).
 *
 * @returns rate of penetration [m/s]
 * @throws RangeError when hole or flow is not positive, or the limit lies outside 0 to 1
 * @source (b) Pigott 1941, recalled
 * @example
 * rateCeilingByCleaning({ shareLimit: 0.05, holeDiameter: 0.155575, transportRatio: 0.6, flow: 0.00946353 }) // → 0.014935
 */
export function rateCeilingByCleaning(input: RateCeilingByCleaningInput): number {
  const { shareLimit, holeDiameter, transportRatio, flow } = input;
  requirePositive({ holeDiameter, flow });
  requireBetween("shareLimit", shareLimit, 0, 1);
  return (shareLimit * Math.max(0, transportRatio) * flow) / ((Math.PI / 4) * holeDiameter ** 2);
}

/** What `upholeSpeedForRate` needs. */
export interface UpholeSpeedForRateInput {
  /** Rate of penetration to be cleaned [m/s]. */
  readonly rate: number;
  /** Slip speed of the chips Vs [m/s]. */
  readonly slipSpeed: number;
  /** Diameter of the hole D [m]. */
  readonly holeDiameter: number;
  /** Diameter of the pipe d [m]. */
  readonly pipeDiameter: number;
  /** Largest share of cuttings allowed c [-]. */
  readonly shareLimit: number;
}

/**
 * Uphole speed that holds the cuttings at their limit for a rate: the ceiling read the other way.
 *
 * V = Vs + rate D²/(c (D² - d²)).
 *
 * @returns uphole speed [m/s]
 * @throws RangeError when a diameter or the limit is not positive, the pipe does not fit, or rate or slip is negative
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems
 * @example
 * upholeSpeedForRate({ rate: 0.015, slipSpeed: 0.28, holeDiameter: 0.155575, pipeDiameter: 0.0889, shareLimit: 0.05 }) // → 0.72545
 */
export function upholeSpeedForRate(input: UpholeSpeedForRateInput): number {
  const { rate, slipSpeed, holeDiameter, pipeDiameter, shareLimit } = input;
  requireNotNegative({ rate, slipSpeed });
  requirePositive({ pipeDiameter, shareLimit, "room between hole and pipe": holeDiameter - pipeDiameter });
  return slipSpeed + (rate * holeDiameter ** 2) / (shareLimit * (holeDiameter ** 2 - pipeDiameter ** 2));
}
