import {
  commonPractice,
  type Finding,
  given,
  requireNotNegative,
  requirePositive,
  type Working,
} from "../quantity/index.ts";
import type { BedFit } from "./fit-of-bed.ts";
import type { Reason } from "./reason.ts";

/**
 * Length of casing set into competent rock below the ground it holds back [m]. Local codes often ask for more.
 *
 * @source (c) common practice, no source: 5 ft
 */
export const CASING_SEAT = 1.524;

/** A stretch of the hole. */
export interface DepthInterval {
  /** Where it begins [m]. */
  readonly top: number;
  /** Where it ends [m]. */
  readonly bottom: number;
}

/** What is drilled with this bit, what is not, and where casing parts the two. */
export interface CasingPoint {
  /**
   * - `none`: nothing in the hole has to be cased off or drilled otherwise
   * - `casing`: set casing at `depth`, drill on with the bit below it
   * - `change-tool`: unfit ground lies where casing is no answer; drill it with another tool
   */
  readonly answer: "casing" | "change-tool" | "none";
  /** Least depth of the casing shoe [m]; absent where the answer is not casing. */
  readonly depth?: number;
  /** Name of the competent bed that takes the shoe. */
  readonly seatBed?: string;
  /** Stretches that the PDC bit drills, from the top down; below the casing where there is one. */
  readonly bitIntervals: readonly DepthInterval[];
  /** Stretches for another tool, from the top down. */
  readonly otherIntervals: readonly DepthInterval[];
  readonly reasons: readonly Reason[];
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** What the casing advice looks at. */
export interface CasingPointInput {
  /** The fits of the beds, from the top down. */
  readonly fits: readonly BedFit[];
  /** Depth where the bit's hole begins [m]. */
  readonly from: number;
  /** Depth where the bit's hole ends [m]. */
  readonly to: number;
}

/** Depths closer than this differ by rounding of their units only [m]. */
const SAME_DEPTH = 1e-3;

const DEFERRAL = "Follow local code and licensed practice; they may ask for deeper casing. This is no casing design.";

/**
 * Where casing lets a PDC bit drill the rest of the hole, and which stretches belong to another tool.
 *
 * The deepest bed that is unfit or will not stand is cased off when a competent bed below it can take the shoe and more
 * good ground lies below it than above; the shoe then goes at least `CASING_SEAT` into that bed. Otherwise the unfit
 * stretch is drilled with another tool and the bit goes on below it, where anything is left for it.
 *
 * @throws RangeError when the hole has no length or the beds are out of order
 * @source (c) common practice, no source: case off what the bit cannot drill or the wall cannot hold
 */
export function casingPoint({ fits, from, to }: CasingPointInput): CasingPoint {
  requireNotNegative({ from });
  requirePositive({ length: to - from });
  requireDescending(fits);
  const met = fits.filter(({ bed }) => bed.bottom > from && bed.top < to);
  const shut = met.filter((fit) => fit.verdict === "unfit" || fit.caseOff);
  // Deepest first: one string of casing holds back every bed above its shoe.
  for (const held of [...shut].reverse()) {
    const seat = met.find((fit) => fit.bed.top >= held.bed.bottom && takesShoe(fit, to));
    if (!seat) continue;
    const above = goodLength(met, from, held.bed.top);
    const below = goodLength(met, held.bed.bottom, to);
    if (below > above) return cased({ met, held, seat, from, to });
  }
  const unfit = met.filter((fit) => fit.verdict === "unfit");
  const intervals = { from, to, unfit };
  const loose = shut.filter((fit) => fit.verdict !== "unfit").map(willNotStand);
  if (unfit.length === 0) {
    const reason: Reason = {
      sentence: "No bed of this hole has to be kept from the bit.",
      rule: "casing point",
      source: commonPractice(),
    };
    return { answer: "none", ...split(intervals), reasons: [reason], findings: loose, working: [] };
  }
  return {
    answer: "change-tool",
    ...split(intervals),
    reasons: [
      {
        sentence:
          "Unfit ground lies where casing would not free the rest of the hole for the bit; change the tool there.",
        rule: "casing point",
        source: commonPractice(),
      },
    ],
    findings: [...unfit.map((fit) => changeTool(fit, from)), ...loose],
    working: [],
  };
}

function requireDescending(fits: readonly BedFit[]): void {
  fits.forEach(({ bed }, at) => {
    const above = fits[at - 1]?.bed;
    if (above && bed.top < above.bottom - SAME_DEPTH) {
      throw new RangeError(`beds must lie in order of depth, got ${bed.name} at ${bed.top} below ${above.bottom}`);
    }
  });
}

function takesShoe({ bed, kind, verdict, caseOff }: BedFit, to: number): boolean {
  if (verdict === "unfit" || caseOff || kind === "soil" || kind === "unknown") return false;
  return Math.min(bed.bottom, to) - bed.top > CASING_SEAT;
}

function goodLength(fits: readonly BedFit[], top: number, bottom: number): number {
  return fits
    .filter((fit) => fit.verdict !== "unfit" && !fit.caseOff && fit.kind !== "soil")
    .reduce((sum, { bed }) => sum + Math.max(0, Math.min(bed.bottom, bottom) - Math.max(bed.top, top)), 0);
}

interface CasedInput {
  readonly met: readonly BedFit[];
  readonly held: BedFit;
  readonly seat: BedFit;
  readonly from: number;
  readonly to: number;
}

function cased({ met, held, seat, from, to }: CasedInput): CasingPoint {
  const depth = seat.bed.top + CASING_SEAT;
  const unfitBelow = met.filter((fit) => fit.verdict === "unfit" && fit.bed.top >= depth);
  const { bitIntervals, otherIntervals } = split({ from: depth, to, unfit: unfitBelow });
  const source = commonPractice();
  const why = held.verdict === "unfit" ? "which is no ground for a PDC bit" : "which will not stand open";
  return {
    answer: "casing",
    depth,
    seatBed: seat.bed.name,
    bitIntervals,
    otherIntervals: [{ top: from, bottom: depth }, ...otherIntervals],
    reasons: [
      {
        sentence: `${held.bed.name}, ${why}, is the deepest bed to hold back; ${seat.bed.name} below it can take the shoe.`,
        rule: "casing point",
        value: depth,
        unit: "m",
        source,
      },
    ],
    findings: [
      {
        code: "casing-point",
        severity: "caution",
        where: held.bed.name,
        message: `Drill through ${held.bed.name} with another tool and set casing at least this deep, into ${seat.bed.name}, before this bit goes in. ${DEFERRAL}`,
        value: depth,
        limit: held.bed.bottom,
        unit: "m",
        source,
      },
      ...unfitBelow.map((fit) => changeTool(fit, depth)),
    ],
    working: [
      {
        name: "least depth of the casing shoe",
        relation: "z = z_seat + s",
        inputs: [
          given("z_seat", `top of ${seat.bed.name}`, seat.bed.top, "m", "ground"),
          given("s", "length of casing in competent rock", CASING_SEAT, "m", "common practice, no source"),
        ],
        value: depth,
        unit: "m",
        source,
      },
    ],
  };
}

function changeTool(fit: BedFit, from: number): Finding {
  const { bed, insteadUse } = fit;
  const tools = insteadUse.map((use) => use.tool).join(", ");
  return {
    code: "unfit-in-hole",
    severity: "stop",
    where: bed.name,
    message: `Not with a PDC bit: stop at this depth and drill ${bed.name} with another tool (${tools}). ${DEFERRAL}`,
    value: Math.max(bed.top, from),
    unit: "m",
    source: commonPractice(),
  };
}

function willNotStand({ bed }: BedFit): Finding {
  return {
    code: "wall-will-not-stand",
    severity: "caution",
    where: bed.name,
    message: `The wall of ${bed.name} may fall in, and no casing point below it was found. ${DEFERRAL}`,
    value: bed.bottom,
    unit: "m",
    source: commonPractice(),
  };
}

function split({
  from,
  to,
  unfit,
}: {
  readonly from: number;
  readonly to: number;
  readonly unfit: readonly BedFit[];
}): {
  bitIntervals: DepthInterval[];
  otherIntervals: DepthInterval[];
} {
  const bitIntervals: DepthInterval[] = [];
  const otherIntervals: DepthInterval[] = [];
  let reached = from;
  for (const { bed } of unfit) {
    const top = Math.max(bed.top, reached);
    const bottom = Math.min(bed.bottom, to);
    if (top - reached > SAME_DEPTH) bitIntervals.push({ top: reached, bottom: top });
    if (bottom - top > SAME_DEPTH) otherIntervals.push({ top, bottom });
    reached = Math.max(reached, bottom);
  }
  if (to - reached > SAME_DEPTH) bitIntervals.push({ top: reached, bottom: to });
  return { bitIntervals, otherIntervals };
}
