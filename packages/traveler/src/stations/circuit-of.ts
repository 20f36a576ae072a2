import {
  type BoreSection,
  type CircuitInput,
  type FlowLimits,
  type HoleSection,
  USUAL_CHIP_DENSITY,
  USUAL_DISCHARGE_COEFFICIENT,
} from "@bitwright/engine";
import type {
  LimitOverrides,
  ResolvedHole,
  ResolvedInquiry,
  ResolvedPorts,
  ResolvedTraveler,
} from "../document/resolved-traveler.ts";
import { drillingFluidOf } from "./drilling-fluid-of.ts";

/** Length of the shortest stretch of pipe that counts [m]. */
const LEAST_RUN = 0.01;

/** The fluid's way through the gear of a traveler, the ports and the chips left open. */
export type CircuitGear = Omit<CircuitInput, "ports" | "chip">;

/** What the fluid meets at the bit and below it. */
export interface FlowQuestion {
  readonly ports: ResolvedPorts;
  /** Open area of the slots between the wings, where it is known [m²]. */
  readonly slotArea?: number;
  /** Whether the bit meets clay or wet shale that balls. */
  readonly stickyGround: boolean;
  /** Size of the chips: the greatest depth of cut [m]. */
  readonly chipSize: number;
  /** Rate looked at; left out, no cuttings are counted [m/s]. */
  readonly rate?: number;
}

/**
 * The circuit of a traveler with the bit at a depth, the end of its hole where none is given [m]; absent where the hole is
 * drilled on air, mist or foam.
 */
export function circuitOf(
  { inquiry, overrides }: ResolvedTraveler,
  depth = inquiry.bitHole.to,
): CircuitGear | undefined {
  const { bitHole, fluid, pump, pipe } = inquiry;
  if (fluid.kind === "air" || fluid.kind === "mist" || fluid.kind === "foam") return undefined;
  return {
    pump: {
      flow: overrides.flow ?? pump.flow,
      pressureRating: pump.pressureRating,
      ...(pump.pumpCurve ? { curve: pump.pumpCurve } : {}),
      throttled: pump.throttled === true || overrides.flow !== undefined,
      ...(pump.lumpSize === undefined ? {} : { largestLump: pump.lumpSize }),
    },
    fluid: drillingFluidOf(fluid),
    medium: fluid.kind,
    ...(pump.surfaceGear > 0 ? { surfaceGear: { equivalentLength: pump.surfaceGear, bore: pipe.bore } } : {}),
    string: stringAt(inquiry, depth),
    hole: holeAbove(inquiry),
    holeDiameter: bitHole.diameter,
    limits: flowLimitsOf(overrides.limits),
    ...(overrides.slip ? { slipForm: overrides.slip } : {}),
  };
}

function flowLimitsOf({ coolingFlow, upholeSpeed, cuttingsShare }: LimitOverrides): FlowLimits {
  return {
    ...(coolingFlow === undefined ? {} : { coolingFlow }),
    ...(upholeSpeed === undefined ? {} : { upholeSpeed }),
    ...(cuttingsShare === undefined ? {} : { cuttingsShare }),
  };
}

/** The whole way of the fluid: through the gear, the ports of the bit and back with its chips. */
export function circuitThrough(
  gear: CircuitGear,
  { ports, slotArea, stickyGround, chipSize, rate }: FlowQuestion,
): CircuitInput {
  return {
    ...gear,
    ports: { diameters: Array(ports.count).fill(ports.diameter), dischargeCoefficient: USUAL_DISCHARGE_COEFFICIENT },
    chip: chipOf(chipSize),
    stickyGround,
    ...(rate === undefined ? {} : { rate }),
    ...(slotArea === undefined ? {} : { slotArea }),
  };
}

/** Chips of a bed as the flow room takes them; the size is that of the cut. */
export function chipOf(size: number): CircuitInput["chip"] {
  return { size, density: USUAL_CHIP_DENSITY };
}

/** Pipe and collars from the top down when the bit stands at a depth. */
function stringAt({ pipe, collars }: ResolvedInquiry, depth: number): BoreSection[] {
  const runs: BoreSection[] = [];
  let room = depth;
  for (const { outsideDiameter, bore, length } of collars) {
    const within = Math.min(length, room);
    room -= within;
    if (within > LEAST_RUN) runs.unshift({ name: "collars", outerDiameter: outsideDiameter, bore, length: within });
  }
  if (room > LEAST_RUN) {
    const { joint, jointLength } = pipe;
    const share = joint ? joint.length / jointLength : 0;
    const joints = joint && { outerDiameter: joint.outsideDiameter, bore: joint.bore, share };
    const tube = { name: "pipe", outerDiameter: pipe.outsideDiameter, bore: pipe.bore, length: room };
    runs.unshift({ ...tube, ...(joints ? { joints } : {}) });
  }
  return runs;
}

function holeAbove({ holes, bitHole, washouts }: ResolvedInquiry): HoleSection[] {
  const open = openHole(bitHole, washouts);
  const above = holes.filter(({ to }) => to <= bitHole.from + LEAST_RUN).sort((a, b) => a.to - b.to);
  if (above.length === 0 || bitHole.from <= LEAST_RUN) return open;
  // The last casing set reaches to the surface and is what the string runs in.
  const last = above[above.length - 1];
  return [{ name: "casing", diameter: last.casingBore ?? last.diameter, bottom: bitHole.from }, ...open];
}

/** The open hole from the top down, its washouts between what is as it was drilled. */
function openHole(
  { name, diameter, from, to }: ResolvedHole,
  washouts: ResolvedInquiry["washouts"] = [],
): HoleSection[] {
  const sections: HoleSection[] = [];
  let top = from;
  for (const washout of washouts) {
    if (washout.from > top + LEAST_RUN) sections.push({ name, diameter, bottom: washout.from });
    sections.push({ name: `washout of ${name}`, diameter: washout.diameter, bottom: washout.to });
    top = washout.to;
  }
  if (to > top + LEAST_RUN || sections.length === 0) sections.push({ name, diameter, bottom: to });
  return sections;
}
