import { type Finding, recalledFrom, requirePositive } from "../quantity/index.ts";
import type { RegularThread } from "./connection-list.ts";
import { inches } from "./field-sizes.ts";

/** The pin that belongs to a bit size, or the candidates when sources disagree. */
export type PinChoice =
  | { readonly decision: "settled"; readonly thread: RegularThread }
  | { readonly decision: "ask"; readonly candidates: readonly RegularThread[] };

/** Largest bit of each thread [in]. Between 5 and 5 1/2 in the standard and a reprint of it part. */
const BANDS: readonly (readonly [largestInch: number, choice: PinChoice])[] = [
  [4.5, { decision: "settled", thread: "2 3/8 REG" }],
  [5, { decision: "settled", thread: "2 7/8 REG" }],
  [5.5, { decision: "ask", candidates: ["2 7/8 REG", "3 1/2 REG"] }],
  [7.375, { decision: "settled", thread: "3 1/2 REG" }],
  [9.375, { decision: "settled", thread: "4 1/2 REG" }],
  [14.5, { decision: "settled", thread: "6 5/8 REG" }],
];

/** Room for the last digits of an inch turned into metres [m]. */
const EDGE = 1e-6;

/**
 * The regular pin for a bit diameter [m]; never decided where the sources disagree (above 5 to 5 1/2 in) or where the
 * list ends (above 14 1/2 in): then ask the driller what the string has.
 *
 * @throws RangeError when the diameter is not positive
 * @source (b) API Spec 7-1 size bands, recalled; smaller bands agree with a trade reprint
 * @example
 * pinForBitSize(0.155575) // → { decision: "settled", thread: "3 1/2 REG" }
 * pinForBitSize(0.130175) // → { decision: "ask", candidates: ["2 7/8 REG", "3 1/2 REG"] }
 */
export function pinForBitSize(bitDiameter: number): PinChoice {
  requirePositive({ bitDiameter });
  const band = BANDS.find(([largest]) => bitDiameter <= inches(largest) + EDGE);
  return band ? band[1] : { decision: "ask", candidates: [] };
}

/** What `pinFindings` needs. */
export interface PinFindingsInput {
  /** Diameter of the bit [m]. */
  readonly bitDiameter: number;
  /** Thread the driller says the string has, if known. */
  readonly thread?: RegularThread;
}

/**
 * What to remark on the pin of a bit.
 *
 * @throws RangeError when the diameter is not positive
 * @source (b) API Spec 7-1 size bands, recalled
 */
export function pinFindings({ bitDiameter, thread }: PinFindingsInput): Finding[] {
  const choice = pinForBitSize(bitDiameter);
  const base = {
    where: "pin",
    value: bitDiameter,
    unit: "m",
    source: recalledFrom("API Spec 7-1 size bands against a trade reprint"),
  };
  if (choice.decision === "ask" && thread === undefined) {
    const message =
      "The usual pin for this bit diameter is not settled: sources disagree. Ask the driller which thread the string has.";
    return [{ ...base, code: "string.pin-unsettled", severity: "caution", message }];
  }
  const usual = choice.decision === "settled" ? [choice.thread] : choice.candidates;
  if (thread !== undefined && usual.length > 0 && !usual.includes(thread)) {
    const message = `${thread} is not the usual pin for this bit diameter (${usual.join(" or ")}). Make sure of it, or plan a crossover sub.`;
    return [{ ...base, code: "string.pin-unusual", severity: "note", message }];
  }
  return [];
}
