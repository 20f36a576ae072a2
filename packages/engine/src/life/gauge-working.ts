import { derivedFrom, given, recalledFrom, type Working } from "../quantity/index.ts";
import { bearingPads } from "./bearing-pads.ts";
import type { LifeFigures } from "./life-figures.ts";
import type { LifeInput } from "./life-input.ts";
import { padWear } from "./wall-wear.ts";
import { relativeAbrasivity, WEAR_COEFFICIENT } from "./wear-law.ts";

/** How the gauge of a life was reached: what the cutters lost, what the pads held. */
export function gaugeWorking(input: LifeInput, { worn, sideLoss }: LifeFigures): Working[] {
  const { cutterUndergauge, undergauge } = worn;
  return [
    {
      name: "diameter lost at the gauge cutters",
      relation:
        "2 (reach when new - reach now) + 2 Σ k_r s p L, reach = largest radius at which an edge stands, at most D/2",
      inputs: [
        given("D", "hole diameter", input.layout.holeDiameter, "m", "layout"),
        given("Σ k_r s p L", "reach lost by bearing side force, p on their lands", sideLoss, "m", "march"),
      ],
      value: cutterUndergauge,
      unit: "m",
      source: recalledFrom("Archard 1953; how lands and pads share the side force has no source"),
    },
    {
      name: "diameter lost at the gauge",
      relation: "D_c - 2 g, g' = a - b - c g, a by the cutters, b and c of the pads",
      inputs: [
        given("D_c", "lost at the cutters", cutterUndergauge, "m", "working: diameter lost at the gauge cutters"),
        given("g", "pads stand out beyond them by", (cutterUndergauge - undergauge) / 2, "m", "march"),
      ],
      value: undergauge,
      unit: "m",
      source: derivedFrom("balance of losses at cutters and pads along the march"),
    },
    ...padWorking(input),
  ];
}

function padWorking({ gaugePads, padWearMultiple, wearCoefficient, beds, layout }: LifeInput): Working[] {
  if (!gaugePads) return [];
  const pads = bearingPads(gaugePads, padWearMultiple);
  const from = padWearMultiple === undefined ? `${gaugePads.protection}, no source` : "entered";
  return beds.map(({ name, cerchar, response }): Working => {
    const coefficient = (wearCoefficient ?? WEAR_COEFFICIENT.mid) * relativeAbrasivity(cerchar);
    const { contactStress, kappa } = response;
    const holeRadius = layout.holeDiameter / 2;
    // The share by the ring asks after no advance and no side force.
    const { byRing } = padWear(
      { wearCoefficient: coefficient, contactStress, kappa, holeRadius, advance: 1, sideForce: 0 },
      pads,
    );
    return {
      name: `wear of the gauge pads for each metre of ring, ${name}`,
      relation: "c = M k_r κ σ_c 2π R/A; by side force b = M k_r F 2π R/(d A)",
      inputs: [
        given("M", "wear of the pads against diamond", pads.wearMultiple, "-", from),
        given("k_r", "wear coefficient", coefficient, "m²/N", `working: wear coefficient, ${name}`),
        given("κ", "growth of contact length with depth", kappa, "-", "rock"),
        given("σ_c", "stress under a rubbing face", contactStress, "Pa", "rock"),
        given("R", "radius of the wall", holeRadius, "m", "layout"),
        given("A", "area of the pads that bears", pads.area, "m²", "count, length, width, share of the inserts"),
      ],
      value: byRing,
      unit: "1/m",
      source: recalledFrom("Archard 1953; Detournay, Richard & Shepherd 2008; that it holds for pads has no source"),
    };
  });
}
