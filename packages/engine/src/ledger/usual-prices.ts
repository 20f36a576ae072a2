import type { BitMaterial } from "../bit/index.ts";
import { catalogCutter } from "../cutter/index.ts";
import { requirePositive } from "../quantity/index.ts";
import type { CutterPrice } from "./price-sheet.ts";

const HOUR = 3600;
const GALLON = 231 * 0.0254 ** 3;

/**
 * Rig with its crew where nobody gave a price [money/s]: 350 US dollars an hour.
 *
 * @source (c) common practice, no source: 200 to 500 an hour
 */
export const USUAL_RIG_PRICE = 350 / HOUR;

/**
 * Fuel where nobody gave a price [money/m³]: 4 US dollars a gallon.
 *
 * @source (c) no source: a planning value
 */
export const USUAL_FUEL_PRICE = 4 / GALLON;

/**
 * Fuel of a mud rig where nobody gave it [m³/s]: 7 gallons an hour.
 *
 * @source (c) common practice, no source: 4 to 9 gallons an hour
 */
export const USUAL_FUEL_FLOW = (7 * GALLON) / HOUR;

/**
 * Tripping and handling of one hole where nobody gave it [s]: an hour and a half.
 *
 * @source (c) no source: a planning value for a hole of 300 ft
 */
export const USUAL_TRIP_TIME = 1.5 * HOUR;

/**
 * Adding a joint where nobody gave it [s]: two minutes.
 *
 * @source (c) no source: a planning value
 */
export const USUAL_CONNECTION_TIME = 120;

/**
 * Labour of seating one cutter [money].
 *
 * @source (c) common practice, no source: 5 to 20 US dollars
 */
export const USUAL_POCKET_PRICE = 10;

/**
 * Hardfacing and gauge of a bit [money].
 *
 * @source (c) common practice, no source: 50 to 250 US dollars
 */
export const USUAL_HARDFACING_PRICE = 110;

/**
 * Cutters where nobody gave a price, by the faces of the catalog: the middle, by ratio, of what two lists that disagree
 * span together: 8 to 80 US dollars for 13 mm, 12 to 110 for 16 mm, 50 to 150 for 19 mm. Smaller ones are taken as dear
 * as 13 mm, for want of any figure.
 */
export const USUAL_CUTTER_PRICES: readonly CutterPrice[] = [
  { faceDiameter: catalogCutter("0808").faceDiameter, cutterPrice: 25 },
  { faceDiameter: catalogCutter("1008").faceDiameter, cutterPrice: 25 },
  { faceDiameter: catalogCutter("1308").faceDiameter, cutterPrice: 25 },
  { faceDiameter: catalogCutter("1608").faceDiameter, cutterPrice: 36 },
  { faceDiameter: catalogCutter("1908").faceDiameter, cutterPrice: 87 },
];

/** Steel body of a 6 in bit [money], and what a matrix body costs over it [-]; (c) no source. */
const [BODY_OF_SIX_INCH, MATRIX_OVER_STEEL] = [600, 1.5];
const SIX_INCHES = 6 * 0.0254;

/**
 * Price of a body where nobody gave one: what a 6 in steel bit of 600 to 2,500 US dollars leaves for it after its cutters,
 * with the cross-section of the hole; half as much again in matrix.
 *
 * B = 600 (D/6 in)² in steel, 900 (D/6 in)² in matrix.
 *
 * @returns body without cutters [money]
 * @throws RangeError when the diameter is not positive
 * @source (c) no source: the price of whole bits is common practice, how it parts and grows is our choice
 * @example
 * usualBodyPrice({ holeDiameter: 0.3048, material: "steel" }) // → 2400
 */
export function usualBodyPrice({
  holeDiameter,
  material,
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly material: BitMaterial;
}): number {
  requirePositive({ holeDiameter });
  const steel = BODY_OF_SIX_INCH * (holeDiameter / SIX_INCHES) ** 2;
  return material === "matrix" ? MATRIX_OVER_STEEL * steel : steel;
}
