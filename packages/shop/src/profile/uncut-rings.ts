import type { EdgeTrace } from "@bitwright/engine";

/** A ring of the hole that no cutter sweeps. */
export interface UncutRing {
  /** Inner radius [m]. */
  readonly from: number;
  /** Outer radius [m]. */
  readonly to: number;
}

/** The rings that no cutter of a trace passes, from the axis outward. */
export function uncutRings({ cellRadius, firstPass, cellWidth }: EdgeTrace): UncutRing[] {
  const rings: { from: number; to: number }[] = [];
  cellRadius.forEach((middle, cell) => {
    if (firstPass[cell + 1] > firstPass[cell]) return;
    const from = middle - cellWidth / 2;
    const last = rings.at(-1);
    if (last && Math.abs(last.to - from) < cellWidth / 2) last.to = middle + cellWidth / 2;
    else rings.push({ from, to: middle + cellWidth / 2 });
  });
  return rings;
}
