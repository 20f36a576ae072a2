import type { QuantityKind } from "@bitwright/traveler";

const KINDS: Readonly<Record<string, QuantityKind>> = {
  N: "force",
  N·m: "torque",
  "N m": "torque",
  Pa: "pressure",
  "rad/s": "rotary speed",
  W: "power",
  s: "duration",
  rad: "angle",
  K: "temperature",
  "m²": "area",
  "m³/s": "flow",
  "kg/m³": "density",
  "kg/m": "linear mass",
  "m/s": "speed",
  kg: "mass",
};

/** A length from which it is a depth rather than a part of a bit [m]. */
const DEPTH_FROM = 1;

/** The kind in which a figure of an SI unit reads best; absent where it is a pure number or has no shop unit. */
export function kindOfUnit(unit: string, si: number): QuantityKind | undefined {
  if (unit === "m") return Math.abs(si) >= DEPTH_FROM ? "depth" : "length";
  return KINDS[unit];
}
