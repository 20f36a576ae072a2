import { derivedFrom, given, recalledFrom, type Working } from "../quantity/index.ts";
import { gaugeWorking } from "./gauge-working.ts";
import { grindingRatio } from "./grinding-ratio.ts";
import type { LifeFigures } from "./life-figures.ts";
import type { LifeInput } from "./life-input.ts";
import { REFERENCE_CERCHAR, relativeAbrasivity, WEAR_COEFFICIENT, WEAR_MULTIPLE_AT_TABLE_LIMIT } from "./wear-law.ts";

/**
 * How the figures of a life were reached.
 *
 * @source (d) each working names its own source
 */
export function lifeWorking(input: LifeInput, figures: LifeFigures): Working[] {
  const { layout, beds } = input;
  const { footage, timeOnBottom, worn, steps, wornVolumes, end } = figures;
  const coefficient = input.wearCoefficient ?? WEAR_COEFFICIENT.mid;
  const from = input.wearCoefficient === undefined ? "order of magnitude, no source" : "entered";
  const k = given("k", "wear coefficient in the reference sandstone, cold", coefficient, "m²/N", from);
  const reach = given("D", "hole diameter", layout.holeDiameter, "m", "layout");
  const wornOff = wornVolumes.reduce((sum, each) => sum + each, 0);
  return [
    ...beds.map(
      (bed): Working => ({
        name: `wear coefficient, ${bed.name}`,
        relation: "k_r = k CAI/CAI_0",
        inputs: [
          k,
          given("CAI", "CERCHAR index of the rock", bed.cerchar, "-", "ground"),
          given("CAI_0", "CERCHAR index of the reference sandstone", REFERENCE_CERCHAR, "-", "weak memory"),
        ],
        value: coefficient * relativeAbrasivity(bed.cerchar),
        unit: "m²/N",
        source: recalledFrom("Archard 1953; the coefficient itself has no source"),
      }),
    ),
    {
      name: "hole drilled by the bit",
      relation: "Σ of stretches until the first limit; h' = k_r f p 2π r/(d cos) at every point of every edge",
      inputs: [
        k,
        given(
          "M",
          "factor f of wear where the table bears no more heat",
          input.multipleAtLimit ?? WEAR_MULTIPLE_AT_TABLE_LIMIT.mid,
          "-",
          input.multipleAtLimit === undefined ? "no source, 5 to 100" : "entered",
        ),
        given("n", "stretches marched", steps.length, "-", "march"),
        given("x", `figure that ended it: ${end.by}`, end.value ?? footage, end.unit ?? "m", "march"),
      ],
      value: footage,
      unit: "m",
      source: recalledFrom("Archard 1953; Glowka & Stone 1985, 1986; Detournay & Defourny 1992"),
    },
    {
      name: "time on bottom",
      relation: "t = Σ L/v over the stretches",
      inputs: [given("L", "hole drilled", footage, "m", "working: hole drilled by the bit")],
      value: timeOnBottom,
      unit: "s",
      source: derivedFrom("kinematics"),
    },
    {
      name: "wear grade of the outer cutters",
      relation: "mean of 8 h/D_c over cutters beyond 2/3 of the radius",
      inputs: [
        given("h_max", "largest height worn off", Math.max(...worn.wornHeights), "m", "march"),
        given("D_c", "face of the first cutter", layout.cutters[0].faceDiameter, "m", "layout"),
        reach,
      ],
      value: worn.outerGrade,
      unit: "-",
      source: recalledFrom("IADC dull grading 1992, SPE/IADC 23939"),
    },
    {
      name: "wear grade of the inner cutters",
      relation: "mean of 8 h/D_c over cutters within 2/3 of the radius",
      inputs: [reach],
      value: worn.innerGrade,
      unit: "-",
      source: recalledFrom("IADC dull grading 1992, SPE/IADC 23939"),
    },
    ...gaugeWorking(input, figures),
    ...(wornOff > 0 ? [ratioWorking(layout.holeDiameter, footage, wornOff)] : []),
    {
      name: "diamond and carbide worn off",
      relation: "V = Σ k_r f F s over all cutters, F contact load and s way of each point",
      inputs: [k, given("L", "hole drilled", footage, "m", "working: hole drilled by the bit")],
      value: wornOff,
      unit: "m³",
      source: recalledFrom("Archard 1953"),
    },
  ];
}

function ratioWorking(holeDiameter: number, footage: number, wornOff: number): Working {
  const rockVolume = (Math.PI / 4) * holeDiameter ** 2 * footage;
  return {
    name: "rock drilled for each volume of cutter worn off",
    relation: "G = V_rock/V",
    inputs: [
      given("V_rock", "rock drilled", rockVolume, "m³", "hole drilled by the bit times its area"),
      given("V", "worn off", wornOff, "m³", "working: diamond and carbide worn off"),
    ],
    value: grindingRatio({ rockVolume, wornVolume: wornOff }),
    unit: "-",
    source: derivedFrom("quotient of two volumes"),
  };
}
