import {
  type BitLayout,
  cutSections,
  cutterFrame,
  type EdgeTrace,
  type Engagement,
  type PlacedCutter,
} from "@bitwright/engine";

/** A line in the plane: distances from the bit axis and heights, positive down-hole. */
export interface PlaneLine {
  /** Distance from the bit axis [m]. */
  readonly radius: readonly number[];
  /** Height, positive down-hole [m]. */
  readonly height: readonly number[];
}

/** What one cutter takes, between its own edge and the rock it finds. */
export interface Crescent {
  /** Index of the cutter in the layout [-]. */
  readonly cutter: number;
  /** Middles of the radial cells, rising [m]. */
  readonly radius: readonly number[];
  /** The cutter's edge [m]. */
  readonly lower: readonly number[];
  /** The rock it finds [m]. */
  readonly upper: readonly number[];
}

/**
 * All cutters as they go through one fixed half-plane of the hole in one turn: each stands as much higher as the bit has
 * still to come down when it passes. Only so do the crescents lie on one another without overlapping.
 */
export interface PassingPlane {
  /** Outline of each cutter's face, closed, ground to the gauge. */
  readonly outlines: readonly PlaneLine[];
  readonly crescents: readonly Crescent[];
  /** Width of a radial cell [m]. */
  readonly cellWidth: number;
}

const TURN = 2 * Math.PI;
const OUTLINE_POINTS = 120;

/** The cutters and their crescents in one plane. Without an engagement nothing is shifted and nothing is cut. */
export function passingPlane(trace: EdgeTrace, engagement?: Engagement): PassingPlane {
  const { layout, holeRadius, cellWidth } = trace;
  const perRadian = (engagement?.advance ?? 0) / TURN;
  const start = widestGap(layout);
  // Azimuth of each face centre past the plane; a cutter is kept whole even where it straddles the plane.
  const past = layout.cutters.map(({ azimuth }) => wrapped(azimuth - start));
  const outlines = layout.cutters.map((cutter, k) => outline(cutter, { holeRadius, perRadian, past: past[k] }));
  const sections = engagement ? cutSections(trace, engagement) : [];
  const crescents = sections.map(({ cutter, radius, edge, rock, edgeInHole }): Crescent => {
    const centre = layout.cutters[cutter].azimuth;
    const lag = edge.map((height, k) => {
      const azimuth = perRadian > 0 ? (height - edgeInHole[k]) / perRadian : 0;
      return perRadian * (past[cutter] + shortWay(azimuth - centre));
    });
    const lagged = (heights: readonly number[]) => heights.map((height, k) => height - lag[k]);
    return { cutter, radius, lower: lagged(edge), upper: lagged(rock) };
  });
  return { outlines, crescents, cellWidth };
}

/** The middle of the widest gap between face centres: where the plane cuts through the fewest cutters. */
function widestGap(layout: BitLayout): number {
  const azimuths = layout.cutters.map(({ azimuth }) => wrapped(azimuth)).sort((a, b) => a - b);
  let widest = 0;
  let middle = 0;
  azimuths.forEach((azimuth, k) => {
    const next = azimuths[k + 1] ?? azimuths[0] + TURN;
    if (next - azimuth > widest) {
      widest = next - azimuth;
      middle = azimuth + widest / 2;
    }
  });
  return middle;
}

/** The edge of one face turned into the plane, its worn part cut off along the chord. */
function outline(
  cutter: PlacedCutter,
  plane: { readonly holeRadius: number; readonly perRadian: number; readonly past: number },
): PlaneLine {
  const { centre, faceAcross, faceDown } = cutterFrame({ ...cutter, azimuth: 0 });
  const faceRadius = cutter.faceDiameter / 2;
  const radius: number[] = [];
  const height: number[] = [];
  for (let k = 0; k < OUTLINE_POINTS; k++) {
    const phi = (TURN * k) / OUTLINE_POINTS;
    const across = faceRadius * Math.cos(phi);
    const down = Math.min(faceRadius * Math.sin(phi), faceRadius - cutter.wornHeight);
    const x = centre[0] + across * faceAcross[0] + down * faceDown[0];
    const y = across * faceAcross[1] + down * faceDown[1];
    const z = centre[2] + across * faceAcross[2] + down * faceDown[2];
    radius.push(Math.min(plane.holeRadius, Math.hypot(x, y)));
    height.push(z - plane.perRadian * (plane.past + Math.atan2(y, x)));
  }
  return { radius, height };
}

const wrapped = (angle: number): number => angle - TURN * Math.floor(angle / TURN);
const shortWay = (angle: number): number => wrapped(angle + Math.PI) - Math.PI;
