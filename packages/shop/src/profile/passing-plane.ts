import {
  type BitLayout,
  cutSections,
  cutterFrame,
  type EdgeTrace,
  type Engagement,
  type PlacedCutter,
  wrapped,
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
  const passes = sections.flatMap(({ cutter, radius, edge, rock, edgeInHole }) =>
    radius.map((at, k): EdgePass => {
      const azimuth = perRadian > 0 ? (edge[k] - edgeInHole[k]) / perRadian : 0;
      const turn = shortWay(azimuth - layout.cutters[cutter].azimuth);
      // A face that reaches over the axis passes the radii next to it twice, the second time half a turn later.
      const beyondAxis = Math.abs(turn) > Math.PI / 2;
      const lag = perRadian * (past[cutter] + (beyondAxis ? wrapped(turn) : turn));
      return { cutter, beyondAxis, radius: at, lower: edge[k] - lag, upper: rock[k] - lag };
    }),
  );
  return { outlines, crescents: runsOf(passes, cellWidth), cellWidth };
}

/** One cutter at one radius. */
interface EdgePass {
  readonly cutter: number;
  readonly beyondAxis: boolean;
  readonly radius: number;
  readonly lower: number;
  readonly upper: number;
}

/** The passes strung into unbroken crescents, each side of the axis by itself. */
function runsOf(passes: readonly EdgePass[], cellWidth: number): Crescent[] {
  const inOrder = [...passes].sort(
    (a, b) => a.cutter - b.cutter || Number(a.beyondAxis) - Number(b.beyondAxis) || a.radius - b.radius,
  );
  const runs: EdgePass[][] = [];
  for (const pass of inOrder) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    const goesOn =
      last?.cutter === pass.cutter &&
      last.beyondAxis === pass.beyondAxis &&
      pass.radius - last.radius < 1.5 * cellWidth;
    if (run && goesOn) run.push(pass);
    else runs.push([pass]);
  }
  return runs.map((run) => ({
    cutter: run[0].cutter,
    radius: run.map(({ radius }) => radius),
    lower: run.map(({ lower }) => lower),
    upper: run.map(({ upper }) => upper),
  }));
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
    height.push(z - plane.perRadian * (plane.past + ahead(Math.atan2(y, x))));
  }
  return { radius, height };
}

/**
 * How far ahead of the face centre a point of an outline is taken to pass. Where a face reaches over the bit axis its
 * azimuth swings through half a turn within a hair; there the point is taken with the centre, for a line that can be read.
 */
function ahead(turn: number): number {
  const size = Math.abs(turn);
  if (size <= Math.PI / 4) return turn;
  return size < Math.PI / 2 ? Math.sign(turn) * (Math.PI / 2 - size) : 0;
}

const shortWay = (angle: number): number => wrapped(angle + Math.PI) - Math.PI;
