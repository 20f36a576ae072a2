import { type DrillingFluid, type HerschelBulkleyFluid, herschelBulkleyForm } from "../fluid/index.ts";
import { bracketedRoot, requireNotNegative } from "../quantity/index.ts";
import { type Conduit, conduitSpeed, hydraulicDiameter } from "./conduit.ts";
import { wallShear } from "./wall-shear.ts";

/** What `exactLaminarPressureDrop` needs. */
export interface ExactLaminarPressureDropInput {
  readonly fluid: DrillingFluid;
  readonly conduit: Conduit;
  /** Flow [m³/s]. */
  readonly flow: number;
  /** Length of the stretch L [m]. */
  readonly length: number;
}

/**
 * Pressure lost in laminar flow with the speed profile integrated exactly, the unsheared core included.
 *
 * With x = τw - τy and p = 1/n, a pipe moves v = (d/2) x^(1+p)/(K^p τw³) [x²/(3+p) + 2 τy x/(2+p) + τy²/(1+p)], a slot of
 * the annulus's gap v = (d/4) x^(1+p)/(K^p τw²) [x/(2+p) + τy/(1+p)] with d = D - d; solved for τw, Δp = 4 τw L/d.
 * The annulus as a slot holds to 1 % while pipe over hole is above 0.3. Says nothing about whether the flow is laminar.
 *
 * @returns pressure drop [Pa]
 * @throws RangeError when the flow, a fluid property or a diameter is out of range, or the length is negative
 * @source (d) integration of τ = τy + K γⁿ across a pipe and a slot
 * @example
 * exactLaminarPressureDrop({ fluid: { model: "newtonian", density: 999, viscosity: 0.001 }, conduit: { shape: "pipe", bore: 0.05 }, flow: 1e-5, length: 100 }) // → 6.51899
 */
export function exactLaminarPressureDrop(input: ExactLaminarPressureDropInput): number {
  const { conduit, flow, length } = input;
  requireNotNegative({ length });
  const fluid = herschelBulkleyForm(input.fluid);
  const speed = conduitSpeed({ flow, conduit });
  const excess = (stress: number) => laminarSpeed(fluid, conduit, stress) / speed - 1;
  let high = 2 * wallShear({ fluid, conduit, flow }).stress;
  while (excess(high) < 0) high *= 2;
  const wallStress = bracketedRoot({ f: excess, low: fluid.yieldStress, high, residual: 1e-10 });
  return (4 * wallStress * length) / hydraulicDiameter(conduit);
}

/** Mean speed [m/s] that a wall stress τw [Pa] drives. */
function laminarSpeed(fluid: HerschelBulkleyFluid, conduit: Conduit, stress: number): number {
  const { yieldStress, consistency, flowIndex } = fluid;
  const x = stress - yieldStress;
  if (x <= 0) return 0;
  const p = 1 / flowIndex;
  const sheared = x ** (1 + p) / consistency ** p;
  const size = hydraulicDiameter(conduit);
  if (conduit.shape === "pipe") {
    const sum = x ** 2 / (3 + p) + (2 * yieldStress * x) / (2 + p) + yieldStress ** 2 / (1 + p);
    return ((size / 2) * sheared * sum) / stress ** 3;
  }
  return ((size / 4) * sheared * (x / (2 + p) + yieldStress / (1 + p))) / stress ** 2;
}
