import { kindFacts, type QuantityKind } from "./quantity-kind.ts";
import type { Dimension } from "./unit-table.ts";

const SI_UNITS: Readonly<Record<Dimension, string>> = {
  length: "m",
  area: "m²",
  volume: "m³",
  mass: "kg",
  force: "N",
  pressure: "Pa",
  flow: "m³/s",
  "air flow": "m³/s",
  density: "kg/m³",
  torque: "N m",
  "rotary speed": "rad/s",
  "stroke rate": "1/s",
  speed: "m/s",
  advance: "m",
  power: "W",
  temperature: "K",
  angle: "rad",
  share: "-",
  ratio: "-",
  viscosity: "Pa s",
  "shear stress": "Pa",
  "linear mass": "kg/m",
  "force per length": "N/m",
  "force per pressure": "N/Pa",
  slowness: "s/m",
  duration: "s",
  "volume per length": "m³/m",
  money: "money",
  "money per time": "money/s",
  "money per volume": "money/m³",
  "money per length": "money/m",
};

/** The coherent SI unit that the `si` value of a kind has, as the engine's workings write it. */
export function siUnit(kind: QuantityKind): string {
  return SI_UNITS[kindFacts(kind).dimension];
}
