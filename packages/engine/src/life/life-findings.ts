import { USUAL_TABLE_THICKNESS } from "../cutter/index.ts";
import { COBALT_TABLE_LIMIT, type RateLimitName, WEAR_QUICKENS_TEMPERATURE } from "../cutting/index.ts";
import { commonPractice, derivedFrom, type Finding, largest, recalledFrom, type Severity } from "../quantity/index.ts";
import { gaugeFindings } from "./gauge-findings.ts";
import type { LifeFigures } from "./life-figures.ts";
import type { LifeInput } from "./life-input.ts";
import type { LifeEndName, LifeStep } from "./life-step.ts";
import { WEAR_COEFFICIENT } from "./wear-law.ts";

const END_WORDS: Readonly<Record<LifeEndName, string>> = {
  "inner grade": "the inner cutters are worn to the grade at which a bit is pulled",
  "outer grade": "the outer cutters are worn to the grade at which a bit is pulled",
  gauge: "the gauge has lost as much as is allowed",
  rate: "the rate is no longer worth drilling",
  heat: "a cutter gets hotter than its diamond table bears",
  "holes drilled": "All holes asked for are drilled and the bit is still within its limits",
  stopped: "The reckoning was stopped before anything ended the bit; the figures are those so far",
};

const HELD_WORDS: Readonly<Record<RateLimitName, string>> = {
  weight: "at the weight kept on it",
  torque: "held by the torque of the rotary",
  power: "held by the power of the rotary",
  advance: "held to an advance for each turn",
  exposure: "because the wings rub behind cutters so far worn",
  rate: "held by what the flow cleans",
  contactTemperature: "held by heat",
};

/**
 * Remarks on a life: what ended it, when the gauge left the tolerance of a new bit, when carbide came to rub, when wear
 * quickened by heat, and how little the wear coefficient is known.
 *
 * @source (d) from the steps of the march; each limit names its own
 */
export function lifeFindings(input: LifeInput, figures: LifeFigures): Finding[] {
  return [
    endFinding(input, figures),
    ...gaugeFindings(input, figures),
    ...carbideFindings(input, figures),
    ...heatFindings(input, figures),
    ...skinFindings(input, figures),
    coefficientFinding(input),
    ...(input.films ? [] : [coolingFinding()]),
  ];
}

function endFinding({ beds }: LifeInput, { end, bedIndex, footage }: LifeFigures): Finding {
  const severity: Severity = end.by === "holes drilled" ? "note" : end.by === "heat" ? "stop" : "caution";
  const held = end.binds ? `, ${HELD_WORDS[end.binds]}` : "";
  const named = end.cutter === undefined ? "" : ` (cutter ${end.cutter})`;
  const ended = end.by !== "holes drilled" && end.by !== "stopped";
  return {
    code: `life-ends-${end.by.replace(/ /g, "-")}`,
    severity,
    where: beds[bedIndex].name,
    message: `${ended ? "The life ends here: " : ""}${END_WORDS[end.by]}${named}${held}.`,
    ...(end.value === undefined || end.by === "holes drilled"
      ? { value: footage, unit: "m" }
      : { value: end.value, limit: end.limit, unit: end.unit }),
    source: end.by === "heat" ? recalledFrom("Glowka & Stone 1986, SPE Drilling Engineering") : commonPractice(),
  };
}

function carbideFindings({ layout }: LifeInput, { steps }: LifeFigures): Finding[] {
  const carbide = ({ wornHeights }: LifeStep) =>
    wornHeights.findIndex((height, i) => height > USUAL_TABLE_THICKNESS * Math.tan(layout.cutters[i].backRake));
  const first = steps.find((step) => carbide(step) >= 0);
  if (!first) return [];
  return [
    {
      code: "carbide-rubs",
      severity: "note",
      where: `cutter ${carbide(first) + 1}`,
      message:
        "From this footage on a flat reaches past a diamond table of usual thickness: carbide rubs behind it, wears first and leaves a lip of diamond.",
      value: first.footage,
      unit: "m",
      source: derivedFrom("length of the flat along the cutter against the table's thickness"),
    },
  ];
}

function heatFindings({ beds }: LifeInput, { steps }: LifeFigures): Finding[] {
  const first = steps.find(({ hottestTemperature }) => hottestTemperature > WEAR_QUICKENS_TEMPERATURE);
  if (!first) return [];
  const hottest = largest(steps.map(({ hottestTemperature }) => hottestTemperature));
  return [
    {
      code: "wear-quickens-in-life",
      severity: "caution",
      where: beds[first.bedIndex].name,
      message:
        "Flats get hot enough here that wear quickens: less weight or speed in this bed, or more flow, lengthens the life.",
      value: hottest,
      limit: WEAR_QUICKENS_TEMPERATURE,
      unit: "K",
      source: recalledFrom("Glowka & Stone 1986, SPE Drilling Engineering"),
    },
  ];
}

function skinFindings({ tableLimit = COBALT_TABLE_LIMIT }: LifeInput, { steps }: LifeFigures): Finding[] {
  if (!(tableLimit > COBALT_TABLE_LIMIT)) return [];
  const hottest = largest(steps.map(({ hottestTemperature }) => hottestTemperature));
  if (!(hottest > COBALT_TABLE_LIMIT)) return [];
  return [
    {
      code: "hot-behind-leached-skin",
      severity: "caution",
      where: "life",
      message:
        "Flats get hotter than diamond with cobalt bears. Only the leached skin bears it; the flat behind that skin does not.",
      value: hottest,
      limit: COBALT_TABLE_LIMIT,
      unit: "K",
      source: recalledFrom("Glowka & Stone 1986, SPE Drilling Engineering"),
    },
  ];
}

function coefficientFinding({ wearCoefficient }: LifeInput): Finding {
  const own = wearCoefficient !== undefined && wearCoefficient !== WEAR_COEFFICIENT.mid;
  return {
    code: own ? "wear-coefficient-set" : "wear-coefficient-unsourced",
    severity: "note",
    where: "life",
    message: own
      ? "The footage goes by the wear coefficient that was set. Hold it against bits that came back from this ground."
      : "No published wear coefficient of diamond cutters in rock stands behind this footage: it is an order of magnitude, good within a factor of ten either way, until bits that came back have set it right.",
    value: wearCoefficient ?? WEAR_COEFFICIENT.mid,
    unit: "m²/N",
    source: commonPractice(),
  };
}

function coolingFinding(): Finding {
  return {
    code: "cooling-left-out",
    severity: "note",
    where: "life",
    message: "No flow was given to cool the cutters: temperatures are low guesses.",
    source: derivedFrom("cutter response without a film"),
  };
}
