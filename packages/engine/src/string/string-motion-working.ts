import { derivedFrom, given, readIn, recalledFrom, type Working } from "../quantity/index.ts";
import { USABLE_COLLAR_SHARE } from "./collar-length.ts";
import type { StringFigures, StringStationInput } from "./string-state.ts";

const INPUT = "input of the string";

/** How the collars to be added, the pipe's limit of torque, the twist and the critical speed were reached. */
export function motionWorking(input: StringStationInput, figures: StringFigures): Working[] {
  const { makeUp, drillingTorque, torsionalStiffness, pipeSize, yieldStrength } = input;
  const { collar, collarsForWeight: enough, torsionalYield, twist, criticalSpeed, buoyancyFactor } = figures;
  const workings: Working[] = [];
  if (collar) {
    workings.push({
      name: "collar that makes up the weight",
      relation: "L = ΔW/(BF (w_c - w_p))",
      inputs: [
        given("ΔW", "weight lacking where the bit starts", collar.missingWeight, "N", "balance of forces"),
        given("BF", "buoyancy factor", buoyancyFactor, "-", "buoyancy factor"),
        given("w_c", "weight of collars for each length", collar.collarWeight, "N/m", "collars of the string or list"),
        given("w_p", "weight of pipe for each length", makeUp.pipe.linearWeight, "N/m", INPUT),
      ],
      value: collar.collarLength,
      unit: "m",
      source: derivedFrom("balance of forces along the string"),
    });
  }
  if (enough) {
    workings.push({
      name: "collars that carry the whole weight",
      relation: "L = W/(BF w_c f)",
      inputs: [
        given("W", "weight wanted on the bit", input.targetWeight, "N", INPUT),
        given("BF", "buoyancy factor", buoyancyFactor, "-", "buoyancy factor"),
        given("w_c", "weight of collars for each length", enough.collarWeight, "N/m", "collars of the string or list"),
        given("f", "share of their weight that may be used", USABLE_COLLAR_SHARE.mid, "-", "Lyons and others 2012"),
      ],
      value: enough.collarLength,
      unit: "m",
      source: readIn("Lyons, Carter & Lapeyrouse 2012"),
    });
  }
  if (torsionalYield !== undefined && pipeSize && yieldStrength !== undefined) {
    workings.push({
      name: "torsional yield of new pipe",
      relation: "T = (Y/√3) (π/16) (D⁴ - d⁴)/D",
      inputs: [
        given("Y", "yield strength of the steel", yieldStrength, "Pa", INPUT),
        given("D", "outer diameter of the pipe", pipeSize.outerDiameter, "m", INPUT),
        given("d", "bore of the pipe", pipeSize.bore, "m", INPUT),
      ],
      value: torsionalYield,
      unit: "N·m",
      source: recalledFrom("API RP 7G"),
    });
  }
  if (twist !== undefined && drillingTorque !== undefined && torsionalStiffness !== undefined) {
    workings.push({
      name: "twist of the string",
      relation: "θ = T/C, 1/C = Σ L/(G J)",
      inputs: [
        given("T", "torque expected at the bit", drillingTorque, "N·m", INPUT),
        given("C", "stiffness of the string in twist", torsionalStiffness, "N·m/rad", INPUT),
      ],
      value: twist,
      unit: "rad",
      source: derivedFrom("strength of materials"),
    });
  }
  if (criticalSpeed !== undefined && pipeSize) {
    workings.push({
      name: "speed at which a joint whips",
      relation: "ω = π² √(E/ρ) √(D² + d²)/(4 L²)",
      inputs: [
        given("D", "outer diameter of the pipe", pipeSize.outerDiameter, "m", INPUT),
        given("d", "bore of the pipe", pipeSize.bore, "m", INPUT),
        given("L", "length of a joint", makeUp.pipe.jointLength, "m", INPUT),
      ],
      value: criticalSpeed,
      unit: "rad/s",
      source: recalledFrom("API RP 7G"),
    });
  }
  return workings;
}
