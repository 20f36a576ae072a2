import type { BitLayout } from "../../bit/index.ts";

/** Which way a side force points, told by the wings. */
export interface WingDirection {
  /** Number of the wing nearest to where it points [-]. */
  readonly wing: number;
  /** How far it points ahead of that wing's outermost cutter, in the sense of rotation; behind is negative [rad]. */
  readonly aheadAngle: number;
  /** In words: `toward wing 3, 12° ahead of it`. */
  readonly words: string;
}

const DEGREE = Math.PI / 180;

/** Nearer than this it points at the wing, for all a shop can measure [rad]: our choice. */
const AT_THE_WING = 2 * DEGREE;

/**
 * The wing a side force points to: that whose outermost cutter is nearest in azimuth, for it is the outer end of the
 * wing that meets the wall. Undefined where no wing is known.
 *
 * @source (d) geometry of the layout
 */
export function wingDirection({
  layout,
  azimuth,
}: {
  readonly layout: BitLayout;
  /** Azimuth it points to [rad]. */
  readonly azimuth: number;
}): WingDirection | undefined {
  const outermost = new Map<number, { radius: number; azimuth: number }>();
  for (const cutter of layout.cutters) {
    if (!(cutter.wing > 0)) continue;
    const known = outermost.get(cutter.wing);
    if (!known || cutter.radius > known.radius) outermost.set(cutter.wing, cutter);
  }
  let nearest: { wing: number; aheadAngle: number } | undefined;
  for (const [wing, { azimuth: at }] of [...outermost].sort(([one], [other]) => one - other)) {
    const aheadAngle = Math.atan2(Math.sin(azimuth - at), Math.cos(azimuth - at));
    if (!nearest || Math.abs(aheadAngle) < Math.abs(nearest.aheadAngle) - 1e-12) nearest = { wing, aheadAngle };
  }
  return nearest && { ...nearest, words: wordsOf(nearest.wing, nearest.aheadAngle) };
}

function wordsOf(wing: number, aheadAngle: number): string {
  if (Math.abs(aheadAngle) < AT_THE_WING) return `toward wing ${wing}`;
  const degrees = Math.round(Math.abs(aheadAngle) / DEGREE);
  return `toward wing ${wing}, ${degrees}° ${aheadAngle > 0 ? "ahead of" : "behind"} it`;
}
