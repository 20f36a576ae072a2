import { requirePositive } from "../quantity/index.ts";
import { portPressureDrop } from "./port-pressure-drop.ts";

/** What the jets are sized for: the most hydraulic power at the bit, or the hardest impact on the hole bottom. */
export type JetAim = "power" | "impact";

/** What `optimumPortShare` needs. */
export interface OptimumPortShareInput {
  /** Exponent m of the parasitic loss, p = k Qᵐ [-]. */
  readonly exponent: number;
  readonly aim: JetAim;
}

/**
 * Share of the pump pressure that the ports should take when the pump is at its pressure limit.
 *
 * m/(m + 1) for power, m/(m + 2) for impact.
 *
 * @returns share of the pump pressure [-]
 * @throws RangeError when the exponent is not positive
 * @source (d) maximum of (p - k Qᵐ) Q and of Q √(p - k Qᵐ) over Q
 * @example
 * optimumPortShare({ exponent: 1.75, aim: "power" }) // → 0.6364
 * optimumPortShare({ exponent: 1.75, aim: "impact" }) // → 0.4667
 */
export function optimumPortShare({ exponent, aim }: OptimumPortShareInput): number {
  requirePositive({ exponent });
  return exponent / (exponent + (aim === "power" ? 1 : 2));
}

/** One reading of the pump with the bit on its ports: flow and pressure. */
export interface PumpReading {
  /** Flow Q [m³/s]. */
  readonly flow: number;
  /** Pump pressure p [Pa]. */
  readonly pumpPressure: number;
}

/** What `jetSizing` needs. */
export interface JetSizingInput {
  /** The reading at the higher flow. */
  readonly fast: PumpReading;
  /** The reading at the lower flow. */
  readonly slow: PumpReading;
  /** Density of the fluid [kg/m³]. */
  readonly density: number;
  /** Area of the ports during the test [m²]. */
  readonly portArea: number;
  /** Discharge coefficient of the ports [-]. */
  readonly dischargeCoefficient: number;
  /** Pump pressure that may be used [Pa]. */
  readonly pressureLimit: number;
  readonly aim: JetAim;
}

/** Ports sized from a test at two flows. */
export interface JetSizing {
  /** Pressure lost outside the ports at the faster reading [Pa]. */
  readonly fastParasiticLoss: number;
  /** Pressure lost outside the ports at the slower reading [Pa]. */
  readonly slowParasiticLoss: number;
  /** Exponent m of the parasitic loss with flow [-]. */
  readonly exponent: number;
  /** Loss outside the ports at the best flow [Pa]. */
  readonly parasiticLoss: number;
  /** Port pressure drop at the best flow [Pa]. */
  readonly portPressureDrop: number;
  /** The best flow [m³/s]. */
  readonly flow: number;
  /** Port area that takes that drop at that flow [m²]. */
  readonly portArea: number;
}

/**
 * Best flow and port area from the pump pressure at two flows.
 *
 * p_c = p - Δp_ports at each reading; m = ln(p_c1/p_c2)/ln(Q1/Q2); the loss left for the circuit is the limit less the
 * ports' optimum share; the flow that causes that loss is Q = Q1 (p_c/p_c1)^(1/m). A method seen in print scales the
 * flow from the pressure limit instead of p_c1 and lands well below the flow that meets its own optimum.
 *
 * @throws RangeError when an input is not positive, the readings are not in order, or the ports alone take more than
 *   the pump shows
 * @source (a) two-rate test of the Lapeyrouse 2002 kind, its flow step corrected by (d) the loss law itself
 */
export function jetSizing(input: JetSizingInput): JetSizing {
  const { fast, slow, density, dischargeCoefficient, pressureLimit, aim } = input;
  requirePositive({ pressureLimit, "fast flow above slow flow": fast.flow - slow.flow });
  const portsTake = (flow: number) => portPressureDrop({ density, flow, area: input.portArea, dischargeCoefficient });
  const fastParasiticLoss = fast.pumpPressure - portsTake(fast.flow);
  const slowParasiticLoss = slow.pumpPressure - portsTake(slow.flow);
  requirePositive({ slowParasiticLoss, "rise of the parasitic loss": fastParasiticLoss - slowParasiticLoss });
  const exponent = Math.log(fastParasiticLoss / slowParasiticLoss) / Math.log(fast.flow / slow.flow);
  const atPorts = pressureLimit * optimumPortShare({ exponent, aim });
  const parasiticLoss = pressureLimit - atPorts;
  const flow = fast.flow * (parasiticLoss / fastParasiticLoss) ** (1 / exponent);
  return {
    fastParasiticLoss,
    slowParasiticLoss,
    exponent,
    parasiticLoss,
    portPressureDrop: atPorts,
    flow,
    portArea: (flow / dischargeCoefficient) * Math.sqrt(density / (2 * atPorts)),
  };
}
