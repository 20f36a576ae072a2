import {
  hydraulicPower,
  hydraulicPowerPerHoleArea,
  impactForce,
  type Passage,
  type PlugRisk,
  plugRisk,
  USUAL_DISCHARGE_COEFFICIENT,
} from "../flow/index.ts";
import { requirePositive } from "../quantity/index.ts";
import { byRank, leastPort, type PortCandidate, portCandidate, portSets, speedInWindow } from "./port-candidates.ts";

/** What a set of ports is to be best at. */
export const PORT_GOALS = ["cooling", "cleaning", "plug resistance", "impact"] as const;

/** One of the things that ports can be picked for. */
export type PortGoal = (typeof PORT_GOALS)[number];

/** What ports are picked for. */
export interface PickPortsInput {
  readonly goal: PortGoal;
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  /** Number of wings, a slot to each [-]. */
  readonly wings: number;
  /** Density of the fluid [kg/m³]. */
  readonly density: number;
  /** Flow at the bit [m³/s]. */
  readonly flow: number;
  /** Pressure that the pump can spend at the bit [Pa]. */
  readonly pressureForBit: number;
  /** Largest lump that suction and valves let through; absent where nobody knows [m]. */
  readonly lumpSize?: number;
  /** Largest port that the body has room for [m]. */
  readonly largestPort?: number;
  /** The narrowest places of the slots, which no port makes wider. */
  readonly slots?: readonly Passage[];
  /** Discharge coefficient; `USUAL_DISCHARGE_COEFFICIENT` where absent [-]. */
  readonly dischargeCoefficient?: number;
}

/** A set of ports with what it does and what it costs. */
export interface PickedPorts extends PortCandidate {
  /** Pressure the pump has left for the bit after this set; negative where it cannot pay for it [Pa]. */
  readonly pressureLeft: number;
  /** Hydraulic power over the area of the hole [W/m²]. */
  readonly powerPerHoleArea: number;
  /** Force of all jets on the bottom [N]. */
  readonly impact: number;
  /** Slots that have a port of their own [-]. */
  readonly washedSlots: number;
  readonly plug: PlugRisk;
  /** Whether the speed lies in the window of common practice, 60 to 250 ft/s. */
  readonly speedInWindow: boolean;
}

/**
 * Every set of ports in stock sizes that the body has room for, the best for the goal first.
 *
 * What the pump can pay for comes first, then what lumps pass, then the window of speed; among these, cooling takes the
 * most slots with a port of their own and then the least pressure, cleaning the most slots and then the most power,
 * impact the most force and then the fewest ports, plug resistance the largest and then the fewest ports. At one flow power
 * and force grow together, as drop and speed do, so cleaning and impact differ only in how the jets are shared out.
 *
 * @throws RangeError when an input is not positive
 * @source (c) common practice, no source, for order and window; drop after Bourgoyne et al. 1986, recalled
 */
export function pickPorts(input: PickPortsInput): PickedPorts[] {
  const { goal, holeDiameter, wings, density, flow, pressureForBit, lumpSize, largestPort, slots = [] } = input;
  requirePositive({ holeDiameter, wings, density, flow, pressureForBit });
  const dischargeCoefficient = input.dischargeCoefficient ?? USUAL_DISCHARGE_COEFFICIENT;
  const pump = { density, flow, dischargeCoefficient };
  const lumps = lumpSize === undefined ? [] : [lumpSize];
  const sets = portSets({ holeDiameter, wings, least: leastPort(lumpSize) });
  const roomy = sets.filter(({ diameter }) => largestPort === undefined || diameter <= largestPort);
  const picked = roomy.map((set): PickedPorts => {
    const candidate = portCandidate(set, pump);
    const { count, diameter, pressureDrop } = candidate;
    const passages = Array.from({ length: count }, (_, k) => ({ where: `port ${k + 1}`, width: diameter }));
    return {
      ...candidate,
      pressureLeft: pressureForBit - pressureDrop,
      powerPerHoleArea: hydraulicPowerPerHoleArea({ power: hydraulicPower({ pressureDrop, flow }), holeDiameter }),
      impact: impactForce({ ...pump, pressureDrop }),
      washedSlots: Math.min(count, wings),
      plug: plugRisk([...passages, ...slots], lumps),
      speedInWindow: speedInWindow(candidate),
    };
  });
  return picked.sort((a, b) => byRank(rankFor(goal, a), rankFor(goal, b)));
}

const PLUG_RANK = { rarely: 0, "may bridge": 1, "will plug": 2 } as const;

function rankFor(goal: PortGoal, ports: PickedPorts): number[] {
  const { count, diameter, pressureLeft, pressureDrop, plug, washedSlots, powerPerHoleArea } = ports;
  const sound = [pressureLeft >= 0 ? 0 : 1, PLUG_RANK[plug.level], ports.speedInWindow ? 0 : 1];
  // Where the pump cannot pay, the least drop is the least bad.
  const unpaid = pressureLeft >= 0 ? 0 : pressureDrop;
  const wanted: Record<PortGoal, number[]> = {
    cooling: [-washedSlots, pressureDrop],
    cleaning: [-washedSlots, -powerPerHoleArea],
    impact: [-ports.impact, count],
    "plug resistance": [-diameter, count],
  };
  return [sound[0], unpaid, ...sound.slice(1), ...wanted[goal]];
}
