import { derivedFrom, given, recalledFrom, type Working } from "../quantity/index.ts";
import type { PortCandidate } from "./port-candidates.ts";

/** Where the relation for the drop through the ports comes from. */
export const PORT_DROP_SOURCE = recalledFrom("Bourgoyne et al. 1986, Applied Drilling Engineering ch. 4");

/** Area of a set of ports. */
export function areaWorking({ count, diameter, area }: PortCandidate): Working {
  return {
    name: "total port area",
    relation: "A = n π d²/4",
    inputs: [
      given("n", "ports", count, "-", "ports for the pump"),
      given("d", "diameter of one port", diameter, "m", "ports for the pump"),
    ],
    value: area,
    unit: "m²",
    source: derivedFrom("area of a circle"),
  };
}

/** Speed in a set of ports. */
export function speedWorking({ area, speed }: PortCandidate, flow: number): Working {
  return {
    name: "speed in the ports",
    relation: "v = Q/A",
    inputs: [
      given("Q", "pump flow", flow, "m³/s", "pump"),
      given("A", "total port area", area, "m²", "total port area"),
    ],
    value: speed,
    unit: "m/s",
    source: derivedFrom("flow over area"),
  };
}

/** Drop through a set of ports. */
export function dropWorking(
  { area, pressureDrop }: PortCandidate,
  pump: { readonly density: number; readonly flow: number; readonly dischargeCoefficient: number },
): Working {
  return {
    name: "pressure lost through the ports",
    relation: "Δp = ρ Q²/(2 Cd² A²)",
    inputs: [
      given("ρ", "density of the fluid", pump.density, "kg/m³", "fluid"),
      given("Q", "pump flow", pump.flow, "m³/s", "pump"),
      given("Cd", "discharge coefficient", pump.dischargeCoefficient, "-", "ports"),
      given("A", "total port area", area, "m²", "total port area"),
    ],
    value: pressureDrop,
    unit: "Pa",
    source: PORT_DROP_SOURCE,
  };
}
