import type { RockResponse } from "../../ground/index.ts";
import { requireFinite, requirePositive } from "../../quantity/index.ts";

/** A bed as the bit goes through it: it lies between its top and that of the next. */
export interface CrossedBed {
  /** Depth on the bit axis at which it begins; nothing lies above the first bed, whatever its top [m]. */
  readonly top: number;
  readonly response: RockResponse;
}

/**
 * Ground of thin beds from an answer of the rock that changes with depth: beds of one thickness, each taken at its middle.
 *
 * @throws RangeError when the depths do not ascend or the thickness is not positive
 * @source (d) a stepped line in place of a smooth one
 */
export function thinBeds({
  from,
  to,
  thickness,
  responseAt,
}: {
  /** Depth of the first top [m]. */
  readonly from: number;
  /** Depth that the last bed reaches at least [m]. */
  readonly to: number;
  /** Thickness of a bed along the hole [m]. */
  readonly thickness: number;
  /** How the rock answers at a depth [m]. */
  readonly responseAt: (depth: number) => RockResponse;
}): CrossedBed[] {
  requireFinite({ from, to });
  requirePositive({ thickness, length: to - from });
  const count = Math.ceil((to - from) / thickness - 1e-9);
  return Array.from({ length: count }, (_, k) => {
    const top = from + k * thickness;
    return { top, response: responseAt(top + thickness / 2) };
  });
}
