import type { Workup } from "./workup.ts";

/**
 * What stands behind a drawing and is large: the grid of edges, raw states and loads, the lands of the wings, marches in
 * time and curves along a crossing. All of it is made again from the layout in a moment.
 */
const LEFT_OUT: ReadonlySet<string> = new Set(["trace", "state", "loads", "lands", "series", "curve"]);

/** A workup as JSON text: all figures, findings and workings in SI, without the grids and curves they were summed on. */
export function workupJson(workup: Workup): string {
  const plain = (key: string, value: unknown) => {
    if (LEFT_OUT.has(key)) return undefined;
    return value instanceof Float64Array || value instanceof Int32Array ? [...value] : value;
  };
  return `${JSON.stringify(workup, plain, 2)}\n`;
}
