import { requirePositive } from "../quantity/index.ts";

/** What the face of a gauge pad is set with. */
export type PadProtection = "carbide" | "diamond" | "hardfacing";

/** The pads above the gauge cutters, one on each wing, that bear on the wall of the hole. */
export interface GaugePads {
  /** How many [-]. */
  readonly count: number;
  /** Length of one along the bit axis [m]. */
  readonly length: number;
  /** Width of one along travel [m]. */
  readonly width: number;
  readonly protection: PadProtection;
}

/**
 * Area of all gauge pads against the wall.
 *
 * A = n L w.
 *
 * @returns area [m²]
 * @throws RangeError when count, length or width is not positive
 * @source (d) geometry
 * @example
 * gaugePadArea({ count: 5, length: 0.019, width: 0.016 }) // → 0.00152
 */
export function gaugePadArea({ count, length, width }: Omit<GaugePads, "protection">): number {
  requirePositive({ padCount: count, padLength: length, padWidth: width });
  return count * length * width;
}
