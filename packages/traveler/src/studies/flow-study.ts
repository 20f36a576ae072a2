import {
  type Circuit,
  type CircuitPart,
  type circuit,
  circuitPressure,
  type Finding,
  type FlowHold,
  type PumpPoint,
  pumpCurvePressure,
} from "@bitwright/engine";
import type { ResolvedPorts } from "../document/resolved-traveler.ts";
import { circuitGiven } from "../stations/circuit-given.ts";
import { type CircuitGear, circuitOf, circuitThrough } from "../stations/circuit-of.ts";
import { fastestChip } from "../stations/fastest-chip.ts";
import { washedBit } from "../stations/flow-station.ts";
import type { Workup } from "../workup.ts";

/** What is changed against the traveler; what is left out stays as it is. */
export interface FlowChange {
  /** Ports in place of those of the bit. */
  readonly ports?: ResolvedPorts;
  /** Pumps like the traveler's, side by side on one line [-]. */
  readonly pumps?: number;
  /** Flow asked of all pumps together, in place of the traveler's for each [m³/s]. */
  readonly flow?: number;
}

/** One circuit with its pump, at the flow that the two agree on. */
export interface FlowCase {
  readonly ports: ResolvedPorts;
  /** Pumps side by side [-]. */
  readonly pumps: number;
  /** Flow asked of them together [m³/s]. */
  readonly asked: number;
  /** Flow that they give; 0 where nothing moves [m³/s]. */
  readonly flow: number;
  readonly heldBy: FlowHold;
  /** The circuit at the flow that the pump gives, at that asked where nothing moves. */
  readonly circuit: Circuit;
  /** Pressure that the circuit asks for, over flow. */
  readonly circuitCurve: readonly PumpPoint[];
  /** Pressure that the pump can give, over flow. */
  readonly pumpCurve: readonly PumpPoint[];
}

/** The circuit of a job as it is, and as it would be. */
export interface FlowStudy {
  readonly present: FlowCase;
  /** Absent where nothing was changed. */
  readonly changed?: FlowCase;
  /** Remarks on the changed circuit, on the present one where nothing was changed. */
  readonly findings: readonly Finding[];
}

/** Flows at which the curves are reckoned [-]. */
const CURVE_POINTS = 60;
/** How far the curves go past the largest flow looked at [-]. */
const CURVE_REACH = 1.25;

/** The circuit of a worked-up job at the flow its pump gives, beside a changed one; nothing on air, mist and foam. */
export function flowStudy(workup: Workup, change: FlowChange = {}): FlowStudy | undefined {
  const gear = circuitOf(workup.inquiry);
  if (!gear) return undefined;
  const before = { ports: workup.bit.ports, pumps: 1, asked: gear.pump.flow };
  const pumps = change.pumps ?? 1;
  const after = { ports: change.ports ?? before.ports, pumps, asked: change.flow ?? pumps * before.asked };
  const isChanged = Object.values(change).some((value) => value !== undefined);
  const cases = [before, ...(isChanged ? [after] : [])].map((one) => throughOf(workup, gear, one));
  const [present, changed] = cases;
  const reach = CURVE_REACH * Math.max(...cases.flatMap(({ asked, flow }) => [asked, flow]));
  const withCurves = (one: Through): FlowCase => {
    const { way, ...rest } = one;
    return { ...rest, circuitCurve: circuitCurve(way, reach), pumpCurve: pumpCurve(way, reach) };
  };
  return {
    present: withCurves(present),
    ...(changed ? { changed: withCurves(changed) } : {}),
    findings: (changed ?? present).circuit.findings,
  };
}

type Way = Parameters<typeof circuit>[0];

interface Through extends Omit<FlowCase, "circuitCurve" | "pumpCurve"> {
  readonly way: Way;
}

function throughOf(
  { advice, bit, cut }: Workup,
  gear: CircuitGear,
  { ports, pumps, asked }: Pick<FlowCase, "ports" | "pumps" | "asked">,
): Through {
  const { curve, ...pump } = gear.pump;
  const sideBySide = curve?.map(({ flow, pressure }) => ({ flow: pumps * flow, pressure }));
  const way: Way = {
    ...circuitThrough(gear, { ...washedBit(advice, bit), ports, ...fastestChip(cut.beds) }),
    pump: { ...pump, flow: asked, ...(sideBySide ? { curve: sideBySide } : {}) },
  };
  return { ports, pumps, ...circuitGiven(way), way };
}

function circuitCurve(way: Way, reach: number): PumpPoint[] {
  return Array.from({ length: CURVE_POINTS }, (_, k) => {
    const flow = (reach * (k + 1)) / CURVE_POINTS;
    return { flow, pressure: circuitPressure(way, flow) };
  });
}

/** Of a piston pump its rating up to the flow asked, and down at that flow; of a centrifugal one its curve. */
function pumpCurve({ pump }: Way, reach: number): PumpPoint[] {
  const { curve, flow, pressureRating = 0 } = pump;
  if (!curve) {
    return [
      { flow: 0, pressure: pressureRating },
      { flow, pressure: pressureRating },
      { flow, pressure: 0 },
    ];
  }
  const end = Math.min(reach, curve[curve.length - 1].flow);
  return [
    { flow: 0, pressure: pumpCurvePressure({ curve, flow: 0 }) },
    ...curve.filter(({ flow: at }) => at > 0 && at < end),
    { flow: end, pressure: pumpCurvePressure({ curve, flow: end }) },
  ];
}

/** What one part of a circuit loses. */
export interface PartLoss {
  readonly part: CircuitPart | "ports";
  /** Stretch of the part, in words. */
  readonly name: string;
  /** [Pa] */
  readonly loss: number;
}

/** The losses of a circuit in the order in which the fluid meets them: surface gear, pipe, ports, annulus. */
export function lossesInOrder({ losses, ports }: Pick<Circuit, "losses" | "ports">): PartLoss[] {
  const of = (wanted: CircuitPart): PartLoss[] =>
    losses.flatMap(({ part, name, pressureDrop }) => (part === wanted ? [{ part, name, loss: pressureDrop }] : []));
  return [
    ...of("surface gear"),
    ...of("pipe"),
    { part: "ports", name: "ports", loss: ports.pressureDrop },
    ...of("annulus"),
  ];
}
