import type { Hazard } from "../ground/index.ts";
import { commonPractice } from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import type { FitRemark, Trouble } from "./fit-remark.ts";
import { type Verdict, worstVerdict } from "./verdict.ts";

interface HazardRule {
  readonly verdict: Verdict;
  readonly sentence: string;
  readonly caution: string;
  readonly trouble?: Trouble;
}

const RULES: Readonly<Record<Hazard, HazardRule>> = {
  impact: {
    verdict: "fit-with-care",
    sentence: "Stones or nodules in the bed strike the cutters edge-on.",
    caution: "Ease weight and speed through the stony part; stop feeding if the rotation jumps.",
    trouble: "lumps",
  },
  "hard-stringers": {
    verdict: "fit-with-care",
    sentence: "Thin hard bands load a few cutters at a time when the bit crosses them.",
    caution: "When the rate drops or the torque jumps, slow the rotation before adding weight.",
  },
  abrasion: {
    verdict: "fit",
    sentence: "The ground grinds flats on the cutters; how fast is for the abrasivity index to say.",
    caution: "Look at the outer cutters and the gauge at each trip.",
  },
  sticky: {
    verdict: "fit",
    sentence: "Sticky ground balls on the face; it does not hurt the cutters.",
    caution: "Rate dead with the torque flat: lift, spin and wash before feeding again.",
  },
  caving: {
    verdict: "fit",
    sentence: "The wall may fall in behind the bit; it does not hurt the cutters.",
    caution: "Keep the hole full and the fluid moving; case the bed off if it will not stand.",
    trouble: "loose",
  },
  "lost-circulation": {
    verdict: "fit",
    sentence: "Open joints may take the fluid that cools the cutters and lifts the chips.",
    caution: "No returns, no drilling: heal the loss or change the fluid first.",
  },
  swelling: {
    verdict: "fit",
    sentence: "The wall takes up water and closes on the string; it does not hurt the cutters.",
    caution: "Wipe the hole before each joint; a tight pull means that the wall is closing.",
  },
  "silica-dust": {
    verdict: "fit",
    sentence: "The cuttings hold fine quartz, a danger to lungs and none to the bit.",
    caution: "Keep the cuttings wet or collected.",
  },
  gas: {
    verdict: "fit",
    sentence: "The bed may give off gas, a danger to the crew and none to the bit.",
    caution: "Test the air, keep flames away, and have the plan for gas ready before this bed is opened.",
  },
};

/**
 * What the hazards of the bed say about the fit of a PDC bit; fit where there are none.
 *
 * @source (c) common practice, no source
 */
export function fitByHazard(bed: AdvisedBed): FitRemark {
  const told = bed.hazards.map((hazard) => ({ hazard, ...RULES[hazard] }));
  const verdict = worstVerdict(told.map((rule) => rule.verdict));
  // What decided is said first: a bed that asks for care is not explained by a hazard that does not hurt the bit.
  const rules = [
    ...told.filter((rule) => rule.verdict === verdict),
    ...told.filter((rule) => rule.verdict !== verdict),
  ];
  return {
    verdict,
    reasons: rules.map(({ hazard, sentence }) => ({ sentence, rule: `hazard: ${hazard}`, source: commonPractice() })),
    cautions: rules.map((rule) => rule.caution),
    findings: [],
    troubles: rules.flatMap(({ trouble }) => (trouble === undefined ? [] : [trouble])),
  };
}
