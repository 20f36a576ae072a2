import {
  bitBody,
  type Coverage,
  coverage,
  cuttingTip,
  type GeneratedBit,
  gapsBetweenWings,
  LEAST_POCKET_WALL,
  type PocketWalls,
  pocketWalls,
  sweptInterval,
} from "../../bit/index.ts";
import type { CuttingKernel } from "../cutting-kernel.ts";
import { type BitInRock, drillAtAdvance } from "../drilled-state.ts";
import { edgeLoads } from "../edge-loads.ts";
import { traceEdges } from "../trace-edges.ts";
import { type CoveringFace, type CoverShortfall, coverShortfall } from "./candidate-cover.ts";
import { evenSpread } from "./even-spread.ts";
import type { TwoAims } from "./pareto-list.ts";
import { slotRoom } from "./slot-room.ts";
import { FIRST_FLAT, type SolverSetting } from "./solver-setting.ts";

/** A bit as far as it is judged: where its cutters stand and what each is there for. */
export type JudgedBit = Pick<GeneratedBit, "layout" | "places" | "profile" | "wingAngles">;

/** What a layout is judged by, on the usual grid; the worst over the advances where it depends on them. */
export interface LayoutFigures extends TwoAims {
  /** Deviation of the measure over its mean, over all cutters but the centre one [-]. */
  readonly evenness: number;
  /** Largest of the measure over its mean [-]. */
  readonly peak: number;
  /** Side force as a share of the weight [-]. */
  readonly imbalance: number;
  /** Thinnest wall between pockets [m]. */
  readonly thinnestWall: number;
  /** Width of all rings that no cutter sweeps [m]. */
  readonly uncutWidth: number;
  /** Least share of a face by which neighbours along the profile overlap; negative where they stand apart [-]. */
  readonly leastOverlap: number;
  /** Largest port in the narrowest slot [m]. */
  readonly largestPort: number;
  /** Measure of each cutter over the mean, in the order of the layout, at the last advance [-]. */
  readonly overMean: readonly number[];
}

/** A layout with its figures and what they were read from. */
export interface FiguredLayout {
  readonly figures: LayoutFigures;
  readonly cover: CoverShortfall;
  readonly walls: PocketWalls;
  readonly coverage: Coverage;
}

/**
 * The figures of a layout by the same trace and force law as everything else, on the usual grid.
 *
 * @throws RangeError when the layout is not sound
 * @source (d) the sums of `engage` and `edgeLoads`; geometry of the poses
 */
export function figuredLayout(setting: SolverSetting, bit: JudgedBit, kernel?: CuttingKernel): FiguredLayout {
  const { spec, advances, mostApart, portDiameter } = setting;
  const { layout, places, wingAngles } = bit;
  const trace = traceEdges(layout);
  const counts = (at: number) => places[at].role !== "centre";
  let [evenness, peak, imbalance] = [0, 0, 0];
  let overMean: readonly number[] = [];
  for (const advance of advances) {
    const measured = measureOfCutters(setting, { trace, kernel }, advance);
    const spread = evenSpread(measured.values, counts);
    evenness = Math.max(evenness, spread.deviation);
    peak = Math.max(peak, spread.peak);
    imbalance = Math.max(imbalance, measured.lateralShare);
    overMean = measured.values.map((value) => (spread.mean > 0 ? value / spread.mean : 0));
  }
  const walls = pocketWalls({
    layout,
    material: spec.material,
    leastWall: spec.leastWall ?? LEAST_POCKET_WALL[spec.material],
    ...(spec.clearance === undefined ? {} : { clearance: spec.clearance }),
  });
  const covered = coverage(layout);
  const cover = coverShortfall(stationsOf(bit), { faceDiameter: spec.cutter.faceDiameter, mostApart });
  const wings = spec.wings.wings;
  const body = bitBody({ layout, material: spec.material, wings, ports: { count: 1, diameter: portDiameter } });
  const figures: LayoutFigures = {
    evenness,
    peak,
    imbalance,
    thinnestWall: walls.walls[0]?.wall ?? Number.POSITIVE_INFINITY,
    uncutWidth: covered.uncutRings.reduce((sum, [from, to]) => sum + to - from, 0),
    leastOverlap: 1 - cover.widest,
    largestPort: slotRoom({ ...body, gap: Math.min(...gapsBetweenWings(wingAngles)) }),
    overMean,
  };
  return { figures, cover, walls, coverage: covered };
}

/** The measure of every cutter at an advance, and the side force there. */
function measureOfCutters(
  { measure, response }: SolverSetting,
  { trace, kernel }: Pick<BitInRock, "trace" | "kernel">,
  advance: number,
) {
  const { engagement, loads, bit } = drillAtAdvance({ trace, response, kernel }, advance);
  const { lateralShare } = bit;
  if (measure === "area") return { values: [...engagement.area], lateralShare };
  if (measure === "work") return { values: [...loads.torque], lateralShare };
  const flatLength = trace.flatLength.map((length) => Math.max(length, FIRST_FLAT));
  const { contactNormal } = edgeLoads({ ...trace, flatLength }, engagement, response);
  const tips = trace.layout.cutters.map((cutter) => cuttingTip(cutter).radius);
  return { values: tips.map((radius, at) => radius * contactNormal[at]), lateralShare };
}

/** The cutters of a layout as stations: the order along the profile is that of the tips. */
function stationsOf({ layout, places }: JudgedBit): CoveringFace[] {
  // The radii of tips grow along the profile, so they stand for lengths along it.
  return layout.cutters.map((pose, at) => ({ pose, arc: places[at].tipRadius, swept: sweptInterval(pose) }));
}
