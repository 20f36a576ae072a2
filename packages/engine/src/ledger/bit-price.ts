import type { BitMaterial } from "../bit/index.ts";
import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import type { CutterPrice, PriceSheet } from "./price-sheet.ts";

/** A bit as far as its price asks after it. */
export interface PricedBit {
  readonly material: BitMaterial;
  /** Diameter of the diamond face of each cutter [m]. */
  readonly faceDiameters: readonly number[];
}

/**
 * What a new bit costs: its body, its cutters with the labour of seating them, its hardfacing.
 *
 * B = B_body + Σ (b + s) + B_h; b the cutter, s the labour of its pocket.
 *
 * @returns price of the bit [money]
 * @throws RangeError when a face has no size, a price is negative or the sheet names no cutter
 * @source (d) sum of the parts; their prices are those of the sheet
 * @example
 * bitPrice({ bit: { material: "steel", faceDiameters: [0.013, 0.013] }, sheet: { bodyPrices: { steel: 600 }, cutterPrices: [{ faceDiameter: 0.013, cutterPrice: 25 }], pocketPrice: 10, hardfacingPrice: 110 } }) // → 780
 */
export function bitPrice({
  bit: { material, faceDiameters },
  sheet: { bodyPrices, cutterPrices, pocketPrice, hardfacingPrice },
}: {
  readonly bit: PricedBit;
  readonly sheet: Pick<PriceSheet, "bodyPrices" | "cutterPrices" | "pocketPrice" | "hardfacingPrice">;
}): number {
  requireNotNegative({ pocketPrice, hardfacingPrice, [`price of a ${material} body`]: bodyPrices[material] });
  const cutters = faceDiameters.reduce(
    (sum, faceDiameter) => sum + cutterPriceOf(cutterPrices, faceDiameter) + pocketPrice,
    0,
  );
  return bodyPrices[material] + cutters + hardfacingPrice;
}

/**
 * Price of a cutter: that of the face nearest in size on the sheet.
 *
 * @returns price of one cutter [money]
 * @throws RangeError when the face has no size, or the sheet names no cutter
 * @source (d) look-up in the sheet
 * @example
 * cutterPriceOf([{ faceDiameter: 0.013, cutterPrice: 25 }, { faceDiameter: 0.016, cutterPrice: 36 }], 0.0155) // → 36
 */
export function cutterPriceOf(cutterPrices: readonly CutterPrice[], faceDiameter: number): number {
  requirePositive({ faceDiameter, "cutters with a price": cutterPrices.length });
  const nearest = cutterPrices.reduce((best, one) =>
    Math.abs(one.faceDiameter - faceDiameter) < Math.abs(best.faceDiameter - faceDiameter) ? one : best,
  );
  requireNotNegative({ cutterPrice: nearest.cutterPrice });
  return nearest.cutterPrice;
}
