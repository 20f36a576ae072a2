import { INCH, requirePositive } from "../quantity/index.ts";
import type { BitMaterial } from "./bit-material.ts";
import type { PlacedCutter } from "./placed-cutter.ts";
import type { ProfileShape } from "./profile.ts";

/** What the code is read from. */
export interface ClassifiedBit {
  readonly body: BitMaterial;
  readonly cutters: readonly Pick<PlacedCutter, "faceDiameter">[];
  readonly profile: ProfileShape;
}

/** Half an inch, the cutter that density is counted in [m]. */
const HALF_INCH = INCH / 2;
const MM = 1e-3;

const PROFILE_DIGIT: Readonly<Record<ProfileShape, 1 | 2 | 3 | 4>> = {
  flat: 1,
  step: 1,
  "short parabolic": 2,
  "medium parabolic": 3,
  "long parabolic": 4,
};

const DENSITY_WORDS = [
  "up to 30 cutters, counted as half-inch ones",
  "31 to 40 cutters, counted as half-inch ones",
  "41 to 49 cutters, counted as half-inch ones",
  "50 cutters or more, counted as half-inch ones",
] as const;
const SIZE_WORDS = ["over 24 mm", "over 14 to 24 mm", "over 8 to 14 mm", "8 mm or less"] as const;
const PROFILE_WORDS = ["fishtail or flat", "short", "medium", "long"] as const;

/**
 * Digit for cutter density of the 1992 IADC fixed-cutter code, by the number of cutters counted as half-inch ones: 1 to
 * 30, 2 to 40, 3 under 50, 4 from 50. The sources' bands overlap at their edges; this is our reading of them.
 *
 * @returns digit [-]
 * @throws RangeError when the count is not positive
 * @source (b) SPE 23940 (1992) as restated in handbooks and trade pages, recalled
 * @example
 * densityDigit(31) // → 2
 */
export function densityDigit(cutters: number): number {
  requirePositive({ cutters });
  if (cutters <= 30) return 1;
  if (cutters <= 40) return 2;
  return cutters < 50 ? 3 : 4;
}

/**
 * Number of half-inch cutters with the same area of face. The rule of the code for this was not seen; equal face area is
 * our assumption.
 *
 * n = Σ (D / 12.7 mm)².
 *
 * @returns equivalent number of cutters [-]
 * @throws RangeError when a face has no size
 * @source (d) areas of circles, on our assumption
 * @example
 * halfInchEquivalents([0.0127, 0.0254]) // → 5
 */
export function halfInchEquivalents(faceDiameters: readonly number[]): number {
  let count = 0;
  for (const faceDiameter of faceDiameters) {
    requirePositive({ faceDiameter });
    count += (faceDiameter / HALF_INCH) ** 2;
  }
  return count;
}

function sizeDigit(faceDiameter: number): 1 | 2 | 3 | 4 {
  if (faceDiameter > 24 * MM) return 1;
  if (faceDiameter > 14 * MM) return 2;
  return faceDiameter > 8 * MM ? 3 : 4;
}

/**
 * The four characters of the 1992 IADC fixed-cutter classification: body, density, cutter size, profile. It says nothing
 * of ground or flow, and on small drag bits its second digit is nearly always 1: a label, nothing to choose by.
 *
 * @throws RangeError when there is no cutter
 * @source (b) SPE 23940 (1992) as restated in handbooks and trade pages, recalled; size bands in mm recalled
 * @example
 * classificationCode({ body: "steel", cutters: Array(12).fill({ faceDiameter: 0.01344 }), profile: "short parabolic" }) // → "S132"
 */
export function classificationCode({ body, cutters, profile }: ClassifiedBit): string {
  const { density, size } = digits(cutters);
  return `${body === "matrix" ? "M" : "S"}${density}${size}${PROFILE_DIGIT[profile]}`;
}

/**
 * What each character of a bit's classification means, in words.
 *
 * @throws RangeError when there is no cutter
 * @source (b) SPE 23940 (1992) as restated in handbooks and trade pages, recalled
 */
export function classificationMeaning({ body, cutters, profile }: ClassifiedBit): string {
  const { density, size } = digits(cutters);
  return `${body} body; ${DENSITY_WORDS[density - 1]}; main cutters ${SIZE_WORDS[size - 1]}; profile ${PROFILE_WORDS[PROFILE_DIGIT[profile] - 1]}`;
}

function digits(cutters: ClassifiedBit["cutters"]): { density: number; size: number } {
  requirePositive({ "number of cutters": cutters.length });
  const diameters = cutters.map(({ faceDiameter }) => faceDiameter).sort((a, b) => a - b);
  return {
    density: densityDigit(halfInchEquivalents(diameters)),
    size: sizeDigit(diameters[Math.floor(diameters.length / 2)]),
  };
}
