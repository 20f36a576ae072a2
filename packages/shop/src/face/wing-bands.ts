import { type BitLayout, type PlacedCutter, plus, times, type Vector } from "@bitwright/engine";

/** A wing as the drawing shows it: a band of even thickness that follows its cutters. A picture, not a wing's design. */
export interface WingBand {
  readonly wing: number;
  /** Middle of the band from the centre outward, in the bit frame; the last point lies beyond the hole [m]. */
  readonly middle: readonly Vector[];
  /** Thickness [m]. */
  readonly thickness: number;
  /** Azimuth of its outermost cutter [rad]. */
  readonly azimuth: number;
}

/** How far the faces stand ahead of the band, as a share of the cutter's length. */
const FACE_STANDS_AHEAD = 0.15;
/** Metal behind the pockets, as a share of the face diameter. */
const WALL_BEHIND = 0.6;
/** Most of the way round that all wings together may take half-way out. */
const MOST_OF_THE_FACE = 0.45;

/** The wings of a layout; none where the wings are not known (wing 0). */
export function wingBands(layout: BitLayout): WingBand[] {
  const byWing = new Map<number, PlacedCutter[]>();
  for (const cutter of layout.cutters) {
    if (cutter.wing > 0) byWing.set(cutter.wing, [...(byWing.get(cutter.wing) ?? []), cutter]);
  }
  const holeRadius = layout.holeDiameter / 2;
  const room = (MOST_OF_THE_FACE * Math.PI * holeRadius) / Math.max(1, byWing.size);
  return [...byWing]
    .sort(([one], [other]) => one - other)
    .map(([wing, cutters]) => {
      const outward = [...cutters].sort((a, b) => a.radius - b.radius);
      const outermost = outward[outward.length - 1];
      const thickest = Math.max(...cutters.map((cutter) => cutter.length + WALL_BEHIND * cutter.faceDiameter));
      const thickness = Math.min(room, thickest);
      return {
        wing,
        thickness,
        azimuth: outermost.azimuth,
        middle: middleOf(outward, thickness, holeRadius),
      };
    });
}

function middleOf(outward: readonly PlacedCutter[], thickness: number, holeRadius: number): Vector[] {
  const points: Vector[] = [];
  for (const cutter of outward) {
    const behind = FACE_STANDS_AHEAD * cutter.length + thickness / 2;
    const at = plus(
      times(cutter.radius, radially(cutter.azimuth)),
      times(-behind, radially(cutter.azimuth + Math.PI / 2)),
    );
    const before = points.at(-1);
    if (before && Math.hypot(at[0] - before[0], at[1] - before[1]) < cutter.faceDiameter / 4) continue;
    points.push(at);
  }
  const first = points[0];
  const last = points[points.length - 1];
  const size = outward[0].faceDiameter;
  const start = points[1] ? unitStep(points[1], first) : unitStep(first, [0, 0, 0]);
  const inner = plus(first, times(Math.min(size / 2, outward[0].radius / 2), start));
  // On past the gauge, half as the wing runs and half straight out; the drawing cuts it off at the hole.
  const straight = unitStep([0, 0, 0], last);
  const before = points.at(-2);
  const run = before ? unitStep(before, last) : straight;
  const outer = plus(
    last,
    times(size + Math.max(0, holeRadius - outward[outward.length - 1].radius), plus(run, straight)),
  );
  return [inner, ...points, outer];
}

const radially = (azimuth: number): Vector => [Math.cos(azimuth), Math.sin(azimuth), 0];

function unitStep(from: Vector, to: Vector): Vector {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const size = Math.hypot(dx, dy);
  return size > 0 ? [dx / size, dy / size, 0] : [0, 0, 0];
}
