import { requirePositive } from "../quantity/index.ts";
import type { BitLayout } from "./placed-cutter.ts";
import type { ProfileShape } from "./profile.ts";

/** Height of the face over the hole diameter up to which a profile counts as each shape; (c) no source, our borders. */
const BORDERS: readonly (readonly [most: number, shape: ProfileShape])[] = [
  [0.1, "flat"],
  [0.25, "short parabolic"],
  [0.45, "medium parabolic"],
];

/**
 * The shape that a measured bit's profile comes nearest to, by the height between its lowest and its highest face centre
 * outside of the lowest.
 *
 * @throws RangeError when there is no cutter or the hole has no size
 * @source (c) no source: borders at 0.10, 0.25 and 0.45 of the hole diameter, our choice
 */
export function profileShapeOf({ holeDiameter, cutters }: BitLayout): ProfileShape {
  requirePositive({ holeDiameter, "number of cutters": cutters.length });
  const lowest = cutters.reduce((nose, cutter) => (cutter.height > nose.height ? cutter : nose));
  const outside = cutters.filter(({ radius }) => radius >= lowest.radius);
  const rise = lowest.height - Math.min(...outside.map(({ height }) => height));
  return BORDERS.find(([most]) => rise <= most * holeDiameter)?.[1] ?? "long parabolic";
}
