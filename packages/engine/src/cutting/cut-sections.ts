import type { EdgeTrace } from "./edge-trace.ts";
import type { Engagement } from "./engage.ts";

/** The crescent of rock that one cutter takes, as an unbroken run of radii. */
export interface CutSection {
  /** Index of the cutter in the layout [-]. */
  readonly cutter: number;
  /** Radii, rising [m]. */
  readonly radius: readonly number[];
  /** Lower rim: height of the edge on the bit, as if all cutters stood in one plane [m]. */
  readonly edge: readonly number[];
  /** Upper rim in the same plane: the rock as the cutter finds it [m]. */
  readonly rock: readonly number[];
  /** Lower rim as it stands in a fixed half-plane of the hole: edge less the advance over the azimuth [m]. */
  readonly edgeInHole: readonly number[];
  /** Upper rim in that half-plane [m]. */
  readonly rockInHole: readonly number[];
}

/**
 * What each cutter cuts, for drawing: all crescents turned into one plane, and the same as they lie in the hole.
 *
 * A cutter that takes rock in two places gives two sections. Heights are positive down-hole.
 *
 * @source (d) from the engaged depths of `engage`
 */
export function cutSections(trace: EdgeTrace, engagement: Engagement): CutSection[] {
  const perRadian = engagement.advance / (2 * Math.PI);
  const open = new Map<number, { lastCell: number; section: Growing }>();
  const sections: Growing[] = [];
  for (let cell = 0; cell < trace.cellRadius.length; cell++) {
    for (let k = trace.firstPass[cell]; k < trace.firstPass[cell + 1]; k++) {
      const depth = engagement.depth[k];
      if (!(depth > 0)) continue;
      const cutter = trace.cutter[k];
      const before = open.get(cutter);
      let section = before?.lastCell === cell - 1 ? before.section : undefined;
      if (!section) {
        section = { cutter, radius: [], edge: [], rock: [], edgeInHole: [], rockInHole: [] };
        sections.push(section);
      }
      open.set(cutter, { lastCell: cell, section });
      const edge = trace.height[k];
      const lag = perRadian * trace.azimuth[k];
      section.radius.push(trace.cellRadius[cell]);
      section.edge.push(edge);
      section.rock.push(edge - depth);
      section.edgeInHole.push(edge - lag);
      section.rockInHole.push(edge - lag - depth);
    }
  }
  return sections.sort((a, b) => a.cutter - b.cutter || a.radius[0] - b.radius[0]);
}

interface Growing extends CutSection {
  readonly radius: number[];
  readonly edge: number[];
  readonly rock: number[];
  readonly edgeInHole: number[];
  readonly rockInHole: number[];
}
