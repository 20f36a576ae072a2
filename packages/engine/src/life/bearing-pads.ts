import { type GaugePads, gaugePadArea } from "../bit/index.ts";
import { PAD_FACES } from "./pad-protection.ts";

/** What of the gauge pads rubs on the wall, and how it wears. */
export interface BearingPads {
  /** Area that bears, all pads together [m²]. */
  readonly area: number;
  /** Wear against that of diamond cutters in the same rock [-]. */
  readonly wearMultiple: number;
}

/**
 * The bearing area of gauge pads, with the wear of their protection or one that is asked for.
 *
 * @throws RangeError when count, length or width is not positive
 * @source (c) share that bears and wear of each protection: see `PAD_FACES`
 */
export function bearingPads(pads: GaugePads, wearMultiple?: number): BearingPads {
  const face = PAD_FACES[pads.protection];
  return { area: face.bearingShare * gaugePadArea(pads), wearMultiple: wearMultiple ?? face.wearMultiple.mid };
}
