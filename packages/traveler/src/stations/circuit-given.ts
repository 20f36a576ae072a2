import { type Circuit, circuit, type FlowHold, gravestFirst } from "@bitwright/engine";

/** A circuit with its pump, at the flow that the two agree on. */
export interface CircuitGiven {
  /** Flow asked of the pump [m³/s]. */
  readonly asked: number;
  /** Flow that it gives; 0 where nothing moves [m³/s]. */
  readonly flow: number;
  readonly heldBy: FlowHold;
  /** The circuit at the flow that the pump gives, at that asked where nothing moves; its findings on the pump are of the flow asked. */
  readonly circuit: Circuit;
}

/** The name of the working that tells how the flow came about. */
const HOW_GIVEN = "flow that the pump gives";

/** Works a circuit at the flow that its pump really gives. */
export function circuitGiven(way: Parameters<typeof circuit>[0]): CircuitGiven {
  const asked = way.pump.flow;
  const atAsked = circuit(way);
  const { flow, heldBy } = atAsked.operatingPoint;
  if (!(flow > 0) || flow === asked) return { asked, flow, heldBy, circuit: atAsked };
  const given = circuit({ ...way, pump: { ...way.pump, flow } });
  // What the pump falls short of is said of the flow asked, everything else of the flow that there is.
  const ofPump = atAsked.findings.filter(({ where }) => where === "pump");
  const ofFlow = given.findings.filter(({ where }) => where !== "pump");
  const howGiven = atAsked.working.filter(({ name }) => name === HOW_GIVEN);
  const working = given.working.map((one) => howGiven.find(({ name }) => name === one.name) ?? one);
  return { asked, flow, heldBy, circuit: { ...given, findings: gravestFirst([...ofPump, ...ofFlow]), working } };
}
