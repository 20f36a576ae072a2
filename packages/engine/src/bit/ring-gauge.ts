import { INCH, requireNotNegative, requirePositive } from "../quantity/index.ts";
import { gaugeTolerance } from "./gauge-tolerance.ts";

/**
 * Growth of steel with warmth [1/K]: 6.5 millionths for each °F.
 *
 * @source (b) any table of metals, recalled
 */
const STEEL_EXPANSION = 6.5e-6 * 1.8;

/** A worn bit in a ring. */
export interface RungBit {
  /** Radius of the ring, that of the bit when new [m]. */
  readonly ringRadius: number;
  /** Wear of every wing at gauge, over the radius [m]. */
  readonly radialWear: number;
  /** Wings, evenly round [-]. */
  readonly wings: number;
}

/**
 * Gap at the far wing when a ring is pushed against the wings on the other side, worn all alike.
 *
 * G = e + w, e the way of the ring until it meets one wing (even n: e = w) or the two beside the line (odd n:
 * e = √(R² - ρ² sin²(π/n)) - ρ cos(π/n), ρ = R - w).
 *
 * @returns gap [m]
 * @throws RangeError when the ring or the number of wings is not positive, or the wear is negative or takes all
 * @source (d) circles and chords
 * @example
 * ringGap({ ringRadius: 0.0762, radialWear: 0.000254, wings: 3 }) // → 7.5948e-4
 */
export function ringGap({ ringRadius, radialWear, wings }: RungBit): number {
  requirePositive({ ringRadius, wings, "radius left": ringRadius - radialWear });
  requireNotNegative({ radialWear });
  if (wings % 2 === 0) return 2 * radialWear;
  const worn = ringRadius - radialWear;
  const half = Math.PI / wings;
  const way = Math.sqrt(ringRadius ** 2 - (worn * Math.sin(half)) ** 2) - worn * Math.cos(half);
  return way + radialWear;
}

/**
 * Undergauge of a worn bit over the gap that its ring shows: odd wings cannot be read across with a caliper.
 *
 * δ/G = 1 for even n, 2/(1 + 1/cos(π/n)) for odd n: two thirds for three wings. For wear small against the radius, all wings
 * worn alike.
 *
 * @returns undergauge over the diameter for each gap [-]
 * @throws RangeError when there are fewer than two wings
 * @source (d) circles and chords
 * @example
 * undergaugeOverGap(3) // → 0.66667
 */
export function undergaugeOverGap(wings: number): number {
  requirePositive({ "wings beyond one": wings - 1 });
  return wings % 2 === 0 ? 1 : 2 / (1 + 1 / Math.cos(Math.PI / wings));
}

/** Bores of the two rings of a bit size. */
export interface RingSizes {
  /** Smallest bore of the ring that has to slip over the bit [m]. */
  readonly smallestGo: number;
  /** Largest bore of the ring that has to slip over the bit [m]. */
  readonly largestGo: number;
  /** Smallest bore of the ring that may not [m]. */
  readonly smallestNoGo: number;
  /** Largest bore of the ring that may not [m]. */
  readonly largestNoGo: number;
}

/** Play of a ring over or under the size it stands for, and what its maker may be off by [m]. */
const [RING_PLAY, RING_MAKE] = [0.002 * INCH, 0.003 * INCH];

/**
 * Bores of the go and no-go rings of a fixed-cutter bit: nominal + 0.002 in (+0.003/-0), and the smallest gauge
 * - 0.002 in (+0/-0.003).
 *
 * @throws RangeError when the diameter is not positive
 * @source (b) ring practice of API Spec 7, recalled
 */
export function ringSizes(nominalDiameter: number): RingSizes {
  const smallestGo = nominalDiameter + RING_PLAY;
  const largestNoGo = nominalDiameter - gaugeTolerance(nominalDiameter) - RING_PLAY;
  return { smallestGo, largestGo: smallestGo + RING_MAKE, smallestNoGo: largestNoGo - RING_MAKE, largestNoGo };
}

/** What `thermalGrowth` needs. */
export interface ThermalGrowthInput {
  /** Diameter [m]. */
  readonly diameter: number;
  /** How much warmer, or colder below zero [K]. */
  readonly warming: number;
}

/**
 * Growth of a steel bit or ring with warmth; measure both at one temperature.
 *
 * ΔD = α D ΔT, α 11.7 millionths for each kelvin.
 *
 * @returns growth of the diameter [m]
 * @throws RangeError when the diameter is not positive
 * @source (d) linear growth; coefficient recalled
 * @example
 * thermalGrowth({ diameter: 0.15875, warming: 11.1111 }) // → 2.0638e-5
 */
export function thermalGrowth({ diameter, warming }: ThermalGrowthInput): number {
  requirePositive({ diameter });
  return STEEL_EXPANSION * diameter * warming;
}
