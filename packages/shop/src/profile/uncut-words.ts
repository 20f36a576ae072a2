import { formatQuantity, type UnitSystem } from "@bitwright/traveler";

/** Rings that no cutter sweeps, from the axis outward, as inner and outer radius [m]. */
export type UncutRings = readonly (readonly [from: number, to: number])[];

/** Width under which two radii of three figures would read the same [m]. */
const NARROW = 2e-4;

/** The uncut rings in one sentence. */
export function uncutWords(uncut: UncutRings, units: UnitSystem): string {
  if (uncut.length === 0) return "Every radius of the hole is swept by a cutter.";
  const length = (value: number) => formatQuantity("length", value, units, { figures: 3 });
  const rings = uncut.map(([from, to]) => {
    if (from === 0) return `core to ${length(to)} radius`;
    return to - from < NARROW
      ? `${length(to - from)} wide at ${length(from)} radius`
      : `${length(from)} to ${length(to)} radius`;
  });
  return `Hatched, no cutter sweeps it: ${rings.join("; ")}.`;
}
