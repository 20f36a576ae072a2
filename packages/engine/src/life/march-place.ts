import type { EdgeWear } from "../cutting/index.ts";
import type { HeldGauge } from "./held-gauge.ts";
import type { LifeBed } from "./life-input.ts";
import type { LifeEnd } from "./life-step.ts";
import type { WearState } from "./wear-state.ts";

/** Where a march stands and how worn the bit is there. */
export interface MarchPlace {
  /** Number of the hole, from 1 [-]. */
  hole: number;
  /** Number of the bed, from 0 [-]. */
  bed: number;
  /** Depth in the hole [m]. */
  depth: number;
  /** Hole drilled so far [m]. */
  footage: number;
  /** Time on bottom so far [s]. */
  time: number;
  wear: EdgeWear[];
  worn: WearState;
  gauge: HeldGauge;
  /** What the law has worn off each cutter [m³]. */
  wornVolumes: Float64Array;
}

/** A copy that later steps leave alone. */
export function copyOfPlace(place: MarchPlace): MarchPlace {
  return { ...place, wear: place.wear.map((row) => row.slice()), wornVolumes: place.wornVolumes.slice() };
}

/** Moves on by a length of hole. */
export function goDown(place: MarchPlace, length: number, rate: number): void {
  place.depth += length;
  place.footage += length;
  place.time += length / rate;
}

/** A bed ends where less than this is left of it [m]. */
const SAME_DEPTH = 1e-9;

/** Whether the bit stands at the bottom of its bed. */
export function isThrough({ bed, depth }: MarchPlace, beds: readonly LifeBed[]): boolean {
  return depth >= beds[bed].bottom - SAME_DEPTH;
}

/** Holes drilled to their end. */
export function holesDrilled(place: MarchPlace, beds: readonly LifeBed[]): number {
  return place.bed === beds.length - 1 && isThrough(place, beds) ? place.hole : place.hole - 1;
}

/** Wears every edge by what a length of hole takes; a negative length takes it back. */
export function lowerEdges(place: MarchPlace, lowering: readonly Float64Array[], length: number): void {
  place.wear.forEach((row, i) => {
    const by = lowering[i];
    for (let j = 0; j < row.length; j++) row[j] += by[j] * length;
  });
}

/** Goes on to the next bed, or to the top bed of the next hole; gives the end where all holes are drilled. */
export function enterNextBed(place: MarchPlace, beds: readonly LifeBed[], holes: number): LifeEnd | undefined {
  if (place.bed + 1 < beds.length) place.bed++;
  else if (place.hole === holes) return { by: "holes drilled", value: holes, limit: holes, unit: "-" };
  else {
    place.hole++;
    place.bed = 0;
  }
  place.depth = beds[place.bed].top;
  return undefined;
}
