import { requireBetween, requireNotNegative } from "../quantity/index.ts";

/** What grinds: how strong the rock is and how much hard mineral it holds. */
export interface AbrasiveRock {
  /** Unconfined compressive strength [Pa]. */
  readonly ucs: number;
  /** All minerals counted by their grinding hardness against quartz [-]. */
  readonly equivalentQuartz: number;
}

/** Words for the rock abrasivity index, least first. */
export type AbrasivityClass =
  | "not abrasive"
  | "slightly abrasive"
  | "moderately abrasive"
  | "very abrasive"
  | "extremely abrasive";

/** Words for the CERCHAR index, least first. */
export type CercharClass = "extremely low" | "very low" | "low" | "medium" | "high" | "very high" | "extreme";

const ABRASIVITY_LIMITS: readonly (readonly [number, AbrasivityClass])[] = [
  [10, "not abrasive"],
  [30, "slightly abrasive"],
  [60, "moderately abrasive"],
  [120, "very abrasive"],
];

const CERCHAR_LIMITS: readonly (readonly [number, CercharClass])[] = [
  [0.5, "extremely low"],
  [1, "very low"],
  [2, "low"],
  [3, "medium"],
  [4, "high"],
  [5, "very high"],
];

const PASCALS_PER_INDEX = 1e6;

/**
 * Rock abrasivity index.
 *
 * RAI = UCS in MPa × equivalent quartz share; made for intact rock, says little about loose sand and gravel, whose
 * stones must be taken instead of the bulk.
 *
 * @returns index, by custom the strength in MPa times a share [-]
 * @throws RangeError when the strength is negative or the share is outside 0 to 1
 * @source (b) Plinninger 2010, recalled
 * @example
 * rockAbrasivityIndex({ ucs: 150e6, equivalentQuartz: 0.55 }) // → 82.5
 */
export function rockAbrasivityIndex({ ucs, equivalentQuartz }: AbrasiveRock): number {
  requireNotNegative({ ucs });
  requireBetween("equivalentQuartz", equivalentQuartz, 0, 1);
  return (ucs / PASCALS_PER_INDEX) * equivalentQuartz;
}

/**
 * The word for a rock abrasivity index: under 10 not, to 30 slightly, to 60 moderately, to 120 very, above extremely
 * abrasive.
 *
 * @throws RangeError when the index is negative
 * @source (b) Plinninger 2010, class limits recalled
 * @example
 * abrasivityClass(82.5) // → "very abrasive"
 */
export function abrasivityClass(index: number): AbrasivityClass {
  requireNotNegative({ index });
  return ABRASIVITY_LIMITS.find(([limit]) => index < limit)?.[1] ?? "extremely abrasive";
}

/**
 * The word for a CERCHAR index: under 0.5 extremely low, 1 very low, 2 low, 3 medium, 4 high, 5 very high, from there
 * extreme.
 *
 * @throws RangeError when the index is negative
 * @source (b) ISRM 2014 suggested method, class limits recalled; test as in ASTM D7625-10
 * @example
 * cercharClass(2.5) // → "medium"
 */
export function cercharClass(index: number): CercharClass {
  requireNotNegative({ index });
  return CERCHAR_LIMITS.find(([limit]) => index < limit)?.[1] ?? "extreme";
}
