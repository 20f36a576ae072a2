import type { Workup } from "./workup.ts";

/** The grid of edges and the raw state behind a drawing: large, and made again from the layout in a moment. */
const LEFT_OUT: ReadonlySet<string> = new Set(["trace", "state"]);

/** A workup as JSON text: all figures, findings and workings in SI, without the radial grids they were summed on. */
export function workupJson(workup: Workup): string {
  const plain = (key: string, value: unknown) => {
    if (LEFT_OUT.has(key)) return undefined;
    return value instanceof Float64Array || value instanceof Int32Array ? [...value] : value;
  };
  return `${JSON.stringify(workup, plain, 2)}\n`;
}
