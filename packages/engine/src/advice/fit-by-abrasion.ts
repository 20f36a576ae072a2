import { type Band, recalledFrom, type Source } from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import { CARE_ABRASIVITY, CARE_CERCHAR, UNFIT_ABRASIVITY, UNFIT_CERCHAR } from "./fit-limits.ts";
import type { FitRemark } from "./fit-remark.ts";
import { isOverburden } from "./overburden.ts";
import type { Reason } from "./reason.ts";
import { type Verdict, worstVerdict } from "./verdict.ts";

interface IndexRule {
  readonly rule: string;
  readonly care: number;
  readonly unfit: number;
  readonly source: Source;
}

interface Look {
  readonly verdict: Verdict;
  readonly reasons: readonly Reason[];
}

const BY_STRENGTH_AND_QUARTZ: IndexRule = {
  rule: "rock abrasivity index",
  care: CARE_ABRASIVITY,
  unfit: UNFIT_ABRASIVITY,
  source: recalledFrom("Plinninger 2010, classes of the rock abrasivity index"),
};
const BY_SCRATCH: IndexRule = {
  rule: "CERCHAR abrasivity index",
  care: CARE_CERCHAR,
  unfit: UNFIT_CERCHAR,
  source: recalledFrom("ISRM suggested method for the CERCHAR index 2014, classes"),
};

const SENTENCES: Readonly<Record<Verdict, string>> = {
  fit: "The rock wears cutters little enough to count on many holes.",
  "fit-with-care": "The rock is very abrasive: count the footage, and look at the outer cutters at each trip.",
  unfit: "The rock is so abrasive that the edges go before the hole pays.",
};

function look(index: Band, { rule, care, unfit, source }: IndexRule): Look {
  const { low, mid, high } = index;
  const verdict: Verdict = mid >= unfit ? "unfit" : mid >= care ? "fit-with-care" : "fit";
  const limit = verdict === "unfit" ? unfit : care;
  const reasons: Reason[] = [{ sentence: SENTENCES[verdict], rule, value: mid, limit, unit: "-", source }];
  for (const edge of [care, unfit]) {
    if (!(low < edge && edge <= high)) continue;
    const [value, side] = mid < edge ? [high, "worn side passes"] : [low, "mild side stays under"];
    const sentence = `Abrasivity is known only within a band, and its ${side} this limit.`;
    reasons.push({ sentence, rule: `${rule}, band`, value, limit: edge, unit: "-", source });
  }
  return { verdict, reasons };
}

/**
 * What the abrasivity says about the fit of a PDC bit: by strength and quartz share, and by the scratch test where one
 * is known.
 *
 * @source (b) Plinninger 2010 and ISRM 2014, classes, recalled; where the tool ends, common practice
 */
export function fitByAbrasion(bed: AdvisedBed): FitRemark {
  const looks = isOverburden(bed)
    ? [lookAtLoose(bed.abrasivityIndex)]
    : [look(bed.abrasivityIndex, BY_STRENGTH_AND_QUARTZ), ...(bed.cerchar ? [look(bed.cerchar, BY_SCRATCH)] : [])];
  const verdict = worstVerdict(looks.map((each) => each.verdict));
  return {
    verdict,
    reasons: looks.flatMap((each) => each.reasons),
    cautions:
      verdict === "fit" ? [] : ["Abrasive ground: measure the gauge at each trip, and do not ream with this bit."],
    findings: [],
    troubles: verdict === "fit" ? [] : ["abrasive"],
  };
}

/** The stones of loose ground are hard, but nothing holds them against the edge, and no scratch test speaks of them. */
function lookAtLoose({ mid }: Band): Look {
  const { rule, care, source } = BY_STRENGTH_AND_QUARTZ;
  const wears = mid >= care;
  const sentence = wears
    ? "The stones grind body and gauge, though nothing holds them against the edges."
    : "Little in this ground wears a bit.";
  return {
    verdict: wears ? "fit-with-care" : "fit",
    reasons: [{ sentence, rule, value: mid, limit: care, unit: "-", source }],
  };
}
