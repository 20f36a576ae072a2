import { requirePositive } from "../quantity/index.ts";
import { LARGEST_LUMP_OVER_PORT, LEAST_PORT_DIAMETER, LEAST_PORT_DIAMETER_UNSCREENED } from "./flow-limits.ts";

/** An opening that lumps have to pass. */
export interface Passage {
  /** Which it is: `port 2`, `slot 1`. */
  readonly where: string;
  /** Width of its narrowest place [m]. */
  readonly width: number;
}

/** How soon a bit plugs. */
export interface PlugRisk {
  readonly level: "rarely" | "may bridge" | "will plug";
  /** The passage that decides. */
  readonly narrowest: Passage;
  /** Lump that was held against it; absent where nobody knows [m]. */
  readonly lump?: number;
  /** Lump over the narrowest passage, or the least width of practice over it where no lump is known [-]. */
  readonly ratio: number;
  /** Why, in a sentence without figures. */
  readonly reason: string;
}

/**
 * Whether the largest lump that pump and ground can bring passes every port and slot.
 *
 * A lump as wide as the narrowest passage plugs it; from half of it on two lumps together bridge it. Where no lump is known,
 * a passage under 3/8 in plugs and one under 1/2 in may.
 *
 * @throws RangeError when there is no passage, or a lump is not positive
 * @source (c) common practice, no source: screen openings at most half the smallest port, no slot narrower than a lump
 */
export function plugRisk(passages: readonly Passage[], lumps: readonly number[]): PlugRisk {
  requirePositive({ "number of passages": passages.length });
  for (const lump of lumps) requirePositive({ lump });
  const narrowest = passages.reduce((least, next) => (next.width < least.width ? next : least));
  const { where, width } = narrowest;
  if (lumps.length === 0) {
    const ratio = LEAST_PORT_DIAMETER / width;
    const reason = `No lump size is known: judged by the least width of practice at ${where}.`;
    const level =
      width < LEAST_PORT_DIAMETER * ROUNDING
        ? "will plug"
        : width < LEAST_PORT_DIAMETER_UNSCREENED * ROUNDING
          ? "may bridge"
          : "rarely";
    return { level, narrowest, ratio, reason };
  }
  const lump = Math.max(...lumps);
  const ratio = lump / width;
  const [level, reason] = (() => {
    if (ratio >= 1) return ["will plug", `The largest lump does not pass ${where}.`] as const;
    if (ratio > LARGEST_LUMP_OVER_PORT) return ["may bridge", `Two of the largest lumps bridge ${where}.`] as const;
    return ["rarely", `Two of the largest lumps pass side by side even at ${where}.`] as const;
  })();
  return { level, narrowest, lump, ratio, reason };
}

/** Not under a limit for a rounding error [-]. */
const ROUNDING = 1 - 1e-9;
