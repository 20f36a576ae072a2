import { type DrillingFluid, herschelBulkleyForm } from "../fluid/index.ts";
import { type Conduit, conduitSpeed, hydraulicDiameter } from "./conduit.ts";

/** What `wallShear` needs. */
export interface WallShearInput {
  readonly fluid: DrillingFluid;
  readonly conduit: Conduit;
  /** Flow [m³/s]. */
  readonly flow: number;
}

/** Rate and stress of shear at the wall in laminar flow. */
export interface WallShear {
  /** Rate of shear at the wall [1/s]. */
  readonly rate: number;
  /** Shear stress at the wall [Pa]. */
  readonly stress: number;
}

/**
 * Shear at the wall of a pipe or annulus in laminar flow, in the engineering form for fluids with a yield stress.
 *
 * γw = 8 v/d · (3n + 1)/(4n) in a pipe, 12 v/d · (2n + 1)/(3n) in an annulus taken as a slot, d = D - d;
 * τw = λⁿ τy + K γwⁿ with λ = 4/3 in a pipe and 3/2 in an annulus. Exact for Newtonian and power-law fluids; within a
 * few per cent of exact for muds with a yield stress, except very slow ones.
 *
 * @throws RangeError when the flow, a fluid property or a diameter is out of range
 * @source (b) API RP 13D form, recalled; its constants derived again in SI
 * @example
 * wallShear({ fluid: { model: "newtonian", density: 999, viscosity: 0.001 }, conduit: { shape: "pipe", bore: 0.05 }, flow: 1e-5 }).rate // → 0.81487
 */
export function wallShear({ fluid, conduit, flow }: WallShearInput): WallShear {
  const { yieldStress, consistency, flowIndex } = herschelBulkleyForm(fluid);
  const speedOverSize = conduitSpeed({ flow, conduit }) / hydraulicDiameter(conduit);
  const pipe = conduit.shape === "pipe";
  const rate = pipe
    ? (8 * speedOverSize * (3 * flowIndex + 1)) / (4 * flowIndex)
    : (12 * speedOverSize * (2 * flowIndex + 1)) / (3 * flowIndex);
  const stress = (pipe ? 4 / 3 : 3 / 2) ** flowIndex * yieldStress + consistency * rate ** flowIndex;
  return { rate, stress };
}
