import { requirePositive } from "../quantity/index.ts";
import type { CircuitPump } from "./circuit-input.ts";
import { pumpCurvePressure } from "./pump-curve.ts";

/**
 * What sets the flow that a pump gives:
 *
 * - `flow asked`: a piston pump gives what it sweeps, under its rating; a centrifugal one that is throttled no more than asked
 * - `pressure rating`: at the flow asked it would run over its rating, and is run slower or blows off
 * - `pump curve`: a centrifugal pump gives what its curve has left at the pressure of the circuit
 * - `end of the pump curve`: the circuit asks for less pressure than the last point of the curve
 * - `nothing moves`: the circuit asks for more pressure than the pump has, however little flows
 */
export type FlowHold = "flow asked" | "pressure rating" | "pump curve" | "end of the pump curve" | "nothing moves";

/** Where a pump and its circuit meet. */
export interface OperatingPoint {
  /** Flow that the rig gets; 0 where nothing moves [m³/s]. */
  readonly flow: number;
  /** Pressure of the pump at that flow [Pa]. */
  readonly pressure: number;
  readonly heldBy: FlowHold;
}

/** What `operatingPoint` needs. */
export interface OperatingPointInput {
  readonly pump: Pick<CircuitPump, "flow" | "pressureRating" | "curve" | "throttled">;
  /** Pressure that the circuit asks for at a flow in m³/s, above zero and growing with it [Pa]. */
  readonly circuitPressure: (flow: number) => number;
}

/** A flow so small that what is left of the pressure is what it takes to move the fluid at all, of the flow looked at [-]. */
const LEAST_FLOW_SHARE = 1e-6;
/** Halvings of the bracket, after which it is as narrow as numbers are [-]. */
const HALVINGS = 60;

/** The last flow at which a circuit asks for no more than the pump has; its pressure may jump where the flow turns turbulent. */
function lastUnder(lack: (flow: number) => number, least: number, most: number): number {
  let [under, over] = [least, most];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (under + over) / 2;
    if (lack(middle) <= 0) under = middle;
    else over = middle;
  }
  return under;
}

/**
 * The flow at which the pressure of the pump is that of the circuit: p_pump(Q) = p_circuit(Q).
 *
 * A piston pump gives the flow asked, or less where its rating holds it; a centrifugal pump gives what the crossing of the
 * two curves says, whatever was asked, unless a valve takes what it has left at that flow. A suction that draws well is taken for granted.
 *
 * @throws RangeError when the flow asked is not positive or the curve is none
 * @source (d) balance of pump and circuit
 * @example
 * operatingPoint({ pump: { flow: 0.01, pressureRating: 4e5 }, circuitPressure: (flow) => 1e10 * flow ** 2 }).flow // → 6.3246e-3
 */
export function operatingPoint({ pump, circuitPressure }: OperatingPointInput): OperatingPoint {
  const { flow: asked, pressureRating, curve, throttled = false } = pump;
  requirePositive({ flow: asked });
  const meet = (supply: (flow: number) => number, most: number, heldBy: FlowHold): OperatingPoint => {
    const least = LEAST_FLOW_SHARE * most;
    const lack = (flow: number) => circuitPressure(flow) - supply(flow);
    if (lack(least) >= 0) return { flow: 0, pressure: supply(0), heldBy: "nothing moves" };
    const flow = lastUnder(lack, least, most);
    return { flow, pressure: circuitPressure(flow), heldBy };
  };
  if (curve) {
    const supply = pumpCurvePressure({ curve, flow: asked });
    if (throttled && circuitPressure(asked) <= supply) return { flow: asked, pressure: supply, heldBy: "flow asked" };
    const last = curve[curve.length - 1];
    const pressure = circuitPressure(last.flow);
    if (pressure <= last.pressure) return { flow: last.flow, pressure, heldBy: "end of the pump curve" };
    return meet((flow) => pumpCurvePressure({ curve, flow }), last.flow, "pump curve");
  }
  const pressure = circuitPressure(asked);
  if (pressureRating === undefined || pressure <= pressureRating)
    return { flow: asked, pressure, heldBy: "flow asked" };
  return meet(() => pressureRating, asked, "pressure rating");
}
