import type { Crescent } from "./passing-plane.ts";

/** Cell by cell the lowest rock once all cutters have passed, for each radius that is cut [m], keyed by cell. */
export function holeBottom(crescents: readonly Crescent[], cellWidth: number): ReadonlyMap<number, number> {
  const bottom = new Map<number, number>();
  for (const { radius, lower } of crescents) {
    radius.forEach((at, k) => {
      const cell = Math.floor(at / cellWidth);
      bottom.set(cell, Math.max(bottom.get(cell) ?? Number.NEGATIVE_INFINITY, lower[k]));
    });
  }
  return new Map([...bottom].sort(([one], [other]) => one - other));
}
