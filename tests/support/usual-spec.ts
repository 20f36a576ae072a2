import { type BitSpec, catalogCutter, usualRakes } from "@bitwright/engine";
import { inch } from "./field-units.ts";

/** The usual 6 1/8 in bit as it is ordered, five steel wings of three 1308 cutters, unless said otherwise. */
export function usualSpec(more: Partial<BitSpec> = {}): BitSpec {
  return {
    holeDiameter: 6.125 * inch,
    profile: { shape: "short parabolic" },
    wings: { wings: 5, cuttersPerWing: 3 },
    cutter: catalogCutter("1308"),
    rakes: usualRakes(),
    material: "steel",
    ...more,
  };
}
