import type { PadProtection } from "../bit/index.ts";
import type { Band } from "../quantity/index.ts";

/** How a face of a gauge pad stands up to the wall. */
export interface ProtectedFace {
  /** Wear of what bears, against that of diamond cutters in the same rock [-]. */
  readonly wearMultiple: Band;
  /** Share of the pad's face that bears: the inserts stand out, what is between them does not [-]. */
  readonly bearingShare: number;
}

/**
 * How hard the faces of gauge pads wear, against diamond.
 *
 * Tests that run sand under a rubber wheel take some 3 mm³ off cemented carbide and 12 mm³ off a weld of tungsten carbide in
 * 4,309 m under 130 N: about 20 and 70 times what the wear coefficient takes off diamond. That the wall of a hole grinds a
 * pad as sand does is our assumption, so each band is a factor of five either way. Diamond inserts wear as the cutters do.
 *
 * @source (b) sizes of loss in the dry sand and rubber wheel test, ASTM G65, weak memory; (c) what they say of a gauge pad and
 *   how much of its face inserts cover: common practice, no source
 */
export const PAD_FACES: Readonly<Record<PadProtection, ProtectedFace>> = {
  hardfacing: { wearMultiple: { low: 14, mid: 70, high: 350 }, bearingShare: 1 },
  carbide: { wearMultiple: { low: 4, mid: 20, high: 100 }, bearingShare: 0.5 },
  diamond: { wearMultiple: { low: 0.2, mid: 1, high: 5 }, bearingShare: 0.2 },
};
