import { derivedFrom, given, type Working } from "@bitwright/engine";
import type { ResolvedPump } from "../document/resolved-traveler.ts";

const FROM = "inquiry.pump.piston";

/** How the flow of a piston pump follows from liner, stroke and strokes; nothing where these were not given. */
export function pumpWorking({ piston }: Pick<ResolvedPump, "piston">): Working[] {
  if (!piston) return [];
  const { cylinders, action, linerDiameter, rodDiameter, strokeLength, strokeRate, volumetricEfficiency } = piston;
  return [
    {
      name: "flow by liner, stroke and strokes",
      relation: action === "single" ? "Q = η s n (π/4) D² L" : "Q = η s n (π/4) (2 D² - d²) L",
      inputs: [
        given("η", "share of the swept volume delivered", volumetricEfficiency, "-", FROM),
        given("s", "strokes of one piston", strokeRate, "1/s", FROM),
        given("n", "cylinders", cylinders, "-", FROM),
        given("D", "liner", linerDiameter, "m", FROM),
        ...(rodDiameter === undefined ? [] : [given("d", "rod", rodDiameter, "m", FROM)]),
        given("L", "stroke", strokeLength, "m", FROM),
      ],
      value: piston.flow,
      unit: "m³/s",
      source: derivedFrom("volume of a cylinder; efficiency as entered or by common practice"),
    },
  ];
}
