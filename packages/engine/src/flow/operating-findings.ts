import { derivedFrom, type Finding, given, type Working } from "../quantity/index.ts";
import type { CircuitInput } from "./circuit-input.ts";
import { isAbove, isBelow, remark } from "./flow-remark.ts";
import type { FlowHold, OperatingPoint } from "./operating-point.ts";

const SOURCE = derivedFrom("balance of pump and circuit");

/** A centrifugal pump may give this much over the flow asked before it is remarked on [-]; (c) no source. */
const WORTH_SAYING = 1.1;
/** Less than asked by no more than this is as good as asked [-]: the digits of a figure. */
const AS_ASKED = 0.99;

const SHORT: Readonly<Record<FlowHold, string>> = {
  "flow asked": "",
  "pressure rating":
    "At its pressure rating the pump gives less than the flow asked. Every figure goes by what it gives. Larger ports, a larger bore or a second pump give more.",
  "pump curve":
    "In this circuit the pump gives less than the flow asked. Every figure goes by what it gives. Larger ports, a larger bore or a second pump give more.",
  "end of the pump curve":
    "The last point of the pump's curve is below the flow asked. Every figure goes by what it gives; give the rest of the curve.",
  "nothing moves":
    "The circuit asks for more pressure than the pump has before anything flows: a thick fluid in a long narrow way.",
};

/** What is to be said of the flow that a pump really gives. */
export function operatingFindings({ pump }: Pick<CircuitInput, "pump">, { flow, heldBy }: OperatingPoint): Finding[] {
  const held = { value: flow, limit: pump.flow, unit: "m³/s", source: SOURCE };
  if (isBelow(flow, AS_ASKED * pump.flow)) {
    return [remark("pump-short", heldBy === "nothing moves" ? "stop" : "caution", "pump", SHORT[heldBy], held)];
  }
  if (!isAbove(flow, WORTH_SAYING * pump.flow)) return [];
  const message =
    "In this circuit the pump gives more than the flow asked, and every figure goes by it. Throttle it to have less.";
  return [remark("pump-over", "note", "pump", message, held)];
}

/** How the flow that a pump really gives was reached. */
export function operatingWorking(
  { pump }: Pick<CircuitInput, "pump">,
  pumpPressure: number,
  at: OperatingPoint,
): Working {
  const { pressureRating, curve } = pump;
  return {
    name: "flow that the pump gives",
    relation: "p_pump(Q) = p(Q), the pump held to its rating or its curve",
    inputs: [
      given("Q", "flow asked", pump.flow, "m³/s", "input of the circuit"),
      given("p", "pump pressure at the flow asked", pumpPressure, "Pa", "pump pressure"),
      ...(pressureRating === undefined
        ? []
        : [given("p_r", "pressure rating", pressureRating, "Pa", "input of the circuit")]),
      ...(curve ?? []).flatMap(({ flow, pressure }, k) => [
        given(`Q_${k + 1}`, `flow of point ${k + 1} of the pump curve`, flow, "m³/s", "input of the circuit"),
        given(`p_${k + 1}`, `pressure of point ${k + 1} of the pump curve`, pressure, "Pa", "input of the circuit"),
      ]),
      given("p_Q", "pressure where the two meet", at.pressure, "Pa", "this balance"),
    ],
    value: at.flow,
    unit: "m³/s",
    source: SOURCE,
  };
}
