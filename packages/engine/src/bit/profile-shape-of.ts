import { requirePositive } from "../quantity/index.ts";
import { cuttingTip } from "./face-on-profile.ts";
import type { BitLayout } from "./placed-cutter.ts";
import type { ProfileShape } from "./profile.ts";

/** Rise from the nose to the highest tip outside it, over the hole diameter, up to which a profile counts as each shape. */
const BORDERS: readonly (readonly [most: number, shape: ProfileShape])[] = [
  [0.16, "short parabolic"],
  [0.33, "medium parabolic"],
];
/** Tips that differ less in height than this share of the hole diameter over the inner face make it flat [-]. */
const FLAT = 0.015;
/** Share of the hole radius that counts as inner face [-]. */
const INNER = 0.7;

/**
 * The shape that a measured bit's profile comes nearest to: flat where the tips of its inner face stand level, else by how
 * far the tips rise from the nose to the gauge.
 *
 * @throws RangeError when there is no cutter or the hole has no size
 * @source (c) no source: level within 0.015, short to 0.16, medium to 0.33 of the hole diameter, our choice
 */
export function profileShapeOf({ holeDiameter, cutters }: BitLayout): ProfileShape {
  requirePositive({ holeDiameter, "number of cutters": cutters.length });
  const tips = cutters.map(cuttingTip);
  const nose = tips.reduce((lowest, tip) => (tip.height > lowest.height ? tip : lowest));
  const rise =
    nose.height - Math.min(...tips.filter(({ radius }) => radius >= nose.radius).map(({ height }) => height));
  const inner = tips.filter(({ radius }) => radius <= (INNER * holeDiameter) / 2).map(({ height }) => height);
  if (inner.length > 1 && Math.max(...inner) - Math.min(...inner) < FLAT * holeDiameter && rise < 0.12 * holeDiameter) {
    return "flat";
  }
  return BORDERS.find(([most]) => rise <= most * holeDiameter)?.[1] ?? "long parabolic";
}
