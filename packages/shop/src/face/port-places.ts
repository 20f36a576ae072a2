import { type BitLayout, cutterFrame, minus, times, type Vector, wrapped } from "@bitwright/engine";
import type { WingBand } from "./wing-bands.ts";

/** The ports of a bit: how many of which size. */
export interface DrawnPorts {
  /** How many [-]. */
  readonly count: number;
  /** Diameter of one [m]. */
  readonly diameter: number;
}

const LEAST_GAP = 1.5e-3;
const STEPS = 60;

/**
 * Where the drawing puts the ports: one slot after the other, as near the centre as cutters and wings let them. Where
 * they really go is for the floor; none are placed where the wings are not known.
 */
export function portPlaces(layout: BitLayout, bands: readonly WingBand[], ports: DrawnPorts): Vector[] {
  if (bands.length === 0) return [];
  const inTurn = [...bands].sort((a, b) => wrapped(a.azimuth) - wrapped(b.azimuth));
  const holeRadius = layout.holeDiameter / 2;
  const metal = [...layout.cutters.flatMap(cylinderPoints), ...bands.flatMap(bandPoints)];
  const places: Vector[] = [];
  for (let port = 0; port < ports.count; port++) {
    const slot = ports.count <= bands.length ? Math.floor((port * bands.length) / ports.count) : port % bands.length;
    const behind = inTurn[slot];
    const ahead = inTurn[(slot + 1) % inTurn.length];
    let best: { at: Vector; gap: number } | undefined;
    for (let k = 8; k <= 0.8 * STEPS; k++) {
      const radius = (k / STEPS) * holeRadius;
      const at = middleOfSlot(behind, ahead, radius, bands.length);
      const gap = Math.min(
        ...metal.map(({ at: point, reach }) => distance(at, point) - reach - ports.diameter / 2),
        ...places.map((other) => distance(at, other) - ports.diameter),
      );
      if (!best || gap > best.gap) best = { at, gap };
      if (gap >= LEAST_GAP) break;
    }
    if (best) places.push(best.at);
  }
  return places;
}

interface Metal {
  readonly at: Vector;
  readonly reach: number;
}

function cylinderPoints(cutter: BitLayout["cutters"][number]): Metal[] {
  const { centre, faceNormal } = cutterFrame(cutter);
  return [0, 0.5, 1].map((share) => ({
    at: minus(centre, times(share * cutter.length, faceNormal)),
    reach: cutter.faceDiameter / 2,
  }));
}

function bandPoints({ middle, thickness }: WingBand): Metal[] {
  return middle.slice(1).flatMap((to, k) =>
    [0, 0.25, 0.5, 0.75, 1].map((share) => ({
      at: [middle[k][0] + share * (to[0] - middle[k][0]), middle[k][1] + share * (to[1] - middle[k][1]), 0] as const,
      reach: thickness / 2,
    })),
  );
}

/** Half-way round from one wing to the next at a radius, both taken as they lie at that radius. */
function middleOfSlot(behind: WingBand, ahead: WingBand, radius: number, wings: number): Vector {
  const from = azimuthAt(behind, radius);
  const turn = wings === 1 ? 2 * Math.PI : wrapped(azimuthAt(ahead, radius) - from);
  const azimuth = from + turn / 2;
  return [radius * Math.cos(azimuth), radius * Math.sin(azimuth), 0];
}

function azimuthAt({ middle }: WingBand, radius: number): number {
  const nearest = [...middle].sort((a, b) => Math.abs(out(a) - radius) - Math.abs(out(b) - radius))[0];
  return Math.atan2(nearest[1], nearest[0]);
}

const out = (point: Vector): number => Math.hypot(point[0], point[1]);
const distance = (a: Vector, b: Vector): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
