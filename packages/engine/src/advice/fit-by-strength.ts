import { commonPractice, type Finding } from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import { CARE_STRENGTH, UNFIT_STRENGTH } from "./fit-limits.ts";
import type { FitRemark } from "./fit-remark.ts";
import type { Reason } from "./reason.ts";
import type { Verdict } from "./verdict.ts";

const RULE = "strength limit of a PDC bit";

function verdictAt(strength: number): Verdict {
  if (strength >= UNFIT_STRENGTH) return "unfit";
  return strength >= CARE_STRENGTH ? "fit-with-care" : "fit";
}

const SENTENCES: Readonly<Record<Verdict, string>> = {
  fit: "The rock is soft enough for the cutters to shear it at the weight a shallow rig has.",
  "fit-with-care": "The rock is hard: cutters still shear it, but they heat and chip when weight or speed is wrong.",
  unfit: "The rock is harder than PDC cutters can shear at the weight a shallow rig has.",
};

/**
 * What the confined strength says about the fit of a PDC bit. The best single value decides; where the band reaches
 * over a limit, that is said.
 *
 * @source (c) common practice, no source: with care from 100 MPa, unfit from 150 MPa in holes of 3 to 12 in
 */
export function fitByStrength(bed: AdvisedBed): FitRemark {
  const { low, mid, high } = bed.confinedStrength;
  const source = commonPractice();
  const atMid = verdictAt(mid);
  const reasons: Reason[] = [
    {
      sentence: SENTENCES[atMid],
      rule: RULE,
      value: mid,
      limit: atMid === "unfit" ? UNFIT_STRENGTH : CARE_STRENGTH,
      unit: "Pa",
      source,
    },
  ];
  const findings: Finding[] = [];
  for (const limit of [CARE_STRENGTH, UNFIT_STRENGTH]) {
    if (!(low < limit && limit <= high)) continue;
    const harder = mid < limit;
    const sentence = harder
      ? "Strength is known only within a band, and its hard side passes this limit."
      : "Strength is known only within a band, and its soft side stays under this limit.";
    reasons.push({ sentence, rule: `${RULE}, band`, value: harder ? high : low, limit, unit: "Pa", source });
    findings.push({
      code: limit === UNFIT_STRENGTH ? "strength-straddles-unfit" : "strength-straddles-care",
      severity: limit === UNFIT_STRENGTH ? "caution" : "note",
      where: bed.name,
      message: `${sentence} The first hole will tell: watch the rate against the weight, and correct the strength.`,
      value: harder ? high : low,
      limit,
      unit: "Pa",
      source,
    });
  }
  return {
    verdict: atMid,
    reasons,
    cautions:
      atMid === "fit" ? [] : ["Hard ground: full weight before full speed, and pull when the rate dies under weight."],
    findings,
    troubles: atMid === "fit" ? [] : ["hard"],
  };
}
