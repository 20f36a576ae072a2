import { annulusSections } from "./annulus-sections.ts";
import type { CircuitInput } from "./circuit-input.ts";
import type { CircuitFigures, CircuitPart, PortState, SectionLoss } from "./circuit-result.ts";
import { type Conduit, hydraulicDiameter } from "./conduit.ts";
import { conduitLoss } from "./conduit-loss.ts";
import { hydraulicPower, hydraulicPowerPerHoleArea } from "./hydraulic-power.ts";
import { impactForce } from "./impact-force.ts";
import { portArea } from "./port-area.ts";
import { portPressureDrop } from "./port-pressure-drop.ts";
import { portSpeed } from "./port-speed.ts";

/** The part of a circuit that decides its pressure. */
export type WettedWay = Pick<
  CircuitInput,
  "pump" | "fluid" | "surfaceGear" | "string" | "hole" | "holeDiameter" | "ports" | "roughness"
>;

/** What every part of a circuit loses at the flow of its pump. */
export function circuitLosses(way: WettedWay): Pick<CircuitFigures, "losses" | "ports" | "pumpPressure"> {
  const losses = sectionLosses(way);
  const ports = portState(way);
  return { losses, ports, pumpPressure: losses.reduce((sum, loss) => sum + loss.pressureDrop, ports.pressureDrop) };
}

/**
 * Pressure that a circuit asks of its pump at another flow in m³/s.
 *
 * p = Δp_ports + Σ Δp of surface gear, bores and annuli.
 *
 * @returns pressure [Pa]
 * @throws RangeError when the flow is not positive or a pipe does not fit its hole
 * @source (d) sum of the circuit's losses
 * @example
 * circuitPressure({ pump: { flow: 0.01 }, fluid: { model: "newtonian", density: 1000, viscosity: 1e-3 }, string: [{ name: "pipe", outerDiameter: 0.0889, bore: 0.0702, length: 90 }], hole: [{ name: "open hole", diameter: 0.1556, bottom: 90 }], holeDiameter: 0.1556, ports: { diameters: [0.0127, 0.0127, 0.0127], dischargeCoefficient: 0.95 } }, 0.005) // → 1.21216e5
 */
export function circuitPressure(way: WettedWay, flow: number): number {
  return circuitLosses({ ...way, pump: { ...way.pump, flow } }).pumpPressure;
}

function sectionLosses(input: WettedWay): SectionLoss[] {
  const { fluid, roughness, surfaceGear } = input;
  const loss = (name: string, part: CircuitPart, conduit: Conduit, length: number): SectionLoss => {
    const state = conduitLoss({
      fluid,
      conduit,
      flow: input.pump.flow,
      length,
      ...(roughness === undefined ? {} : { roughness }),
    });
    return { name, part, length, hydraulicDiameter: hydraulicDiameter(conduit), ...state };
  };
  const gear = surfaceGear
    ? [loss("surface gear", "surface gear", { shape: "pipe", bore: surfaceGear.bore }, surfaceGear.equivalentLength)]
    : [];
  // The joints of a run lie all along it; together they lose what their whole length at their own size would.
  const bores = input.string.flatMap(({ name, bore, length, joints }) => [
    loss(name, "pipe", { shape: "pipe", bore }, length * (1 - (joints?.share ?? 0))),
    ...(joints
      ? [loss(`joints of the ${name}`, "pipe", { shape: "pipe", bore: joints.bore }, length * joints.share)]
      : []),
  ]);
  const annuli = annulusSections(input).map(({ name, annulus, length, joints }) => [
    loss(name, "annulus", annulus, length * (1 - (joints?.share ?? 0))),
    ...(joints ? [loss(joints.name, "annulus", joints.annulus, length * joints.share)] : []),
  ]);
  return [...gear, ...bores, ...annuli.reverse().flat()];
}

function portState(input: WettedWay): PortState {
  const { flow } = input.pump;
  const { diameters, dischargeCoefficient } = input.ports;
  const { density } = input.fluid;
  const area = portArea(diameters);
  const pressureDrop = portPressureDrop({ density, flow, area, dischargeCoefficient });
  const power = hydraulicPower({ pressureDrop, flow });
  return {
    area,
    speed: portSpeed({ flow, area }),
    pressureDrop,
    power,
    powerPerHoleArea: hydraulicPowerPerHoleArea({ power, holeDiameter: input.holeDiameter }),
    impactForce: impactForce({ density, flow, pressureDrop, dischargeCoefficient }),
  };
}
