import { commonPractice } from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import type { FitRemark, Trouble } from "./fit-remark.ts";
import { type GroundKind, groundKind } from "./ground-kind.ts";
import type { Verdict } from "./verdict.ts";

interface KindRule {
  readonly verdict: Verdict;
  readonly sentence: string;
  readonly trouble?: Trouble;
  readonly caution?: string;
}

const RULES: Readonly<Record<GroundKind, KindRule>> = {
  soil: {
    verdict: "fit",
    sentence: "Soft ground cuts freely with a PDC bit, but a drag blade does the same for less money.",
    trouble: "soil",
    caution: "Clay packs the slots: keep the flow up and lift to clear the face when the rate dies.",
  },
  sand: {
    verdict: "fit-with-care",
    sentence: "A PDC bit drills loose sand, but the wall will not stand: case it off before going deeper.",
    trouble: "loose",
    caution: "Do not stop the pump in loose sand; it settles round the bit and packs the ports.",
  },
  gravel: {
    verdict: "unfit",
    sentence: "Loose stones roll under the bit and strike the cutters edge-on: they chip and break in a few turns.",
    trouble: "lumps",
  },
  shale: { verdict: "fit", sentence: "Shale shears well; it is what PDC cutters do best." },
  carbonate: { verdict: "fit", sentence: "Limestone and dolomite shear well and wear cutters little." },
  sandstone: {
    verdict: "fit",
    sentence: "Sandstone shears well while it is not too hard; its quartz is what wears the cutters.",
  },
  evaporite: { verdict: "fit", sentence: "Gypsum, anhydrite and salt shear well and wear cutters little." },
  coal: { verdict: "fit", sentence: "Coal is soft and wears cutters little." },
  tuff: { verdict: "fit", sentence: "Weak volcanic rock shears well; its glass and crystals wear the cutters." },
  slate: {
    verdict: "fit-with-care",
    sentence: "Slate and schist split along their leaves: they shear, but the load jumps and the hole wanders.",
    caution: "Hold the weight down where the leaves stand steep; the hole will follow them.",
  },
  chert: {
    verdict: "unfit",
    sentence: "Chert, flint, vein quartz and quartzite break in sharp blows that chip the edge of the diamond.",
    trouble: "hard",
  },
  crystalline: {
    verdict: "unfit",
    sentence:
      "Granite, gneiss, basalt and their like need more weight on each cutter than a shallow rig has; the edges rub and burn.",
    trouble: "hard",
  },
  unknown: {
    verdict: "fit-with-care",
    sentence: "The log does not say what this ground is; nobody can promise that a PDC bit suits it.",
    trouble: "unknown",
    caution: "Ask for the cuttings or a neighbour's log before the bit goes in.",
  },
};

/**
 * What the kind of ground alone says about the fit of a PDC bit.
 *
 * @source (c) common practice, no source: PDC suits shale, limestone and sandstone, not gravel, quartz or granite
 */
export function fitByKind(bed: AdvisedBed): FitRemark {
  const kind = groundKind(bed);
  const { verdict, sentence, trouble, caution } = RULES[kind];
  const source = commonPractice();
  return {
    verdict,
    reasons: [{ sentence, rule: "kind of ground", source }],
    cautions: caution === undefined ? [] : [caution],
    findings: [],
    troubles: trouble === undefined ? [] : [trouble],
  };
}
