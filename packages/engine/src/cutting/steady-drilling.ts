import type { BitLayout } from "../bit/index.ts";
import type { RockResponse } from "../ground/index.ts";
import { type Finding, gravestFirst, requirePositive, type Working } from "../quantity/index.ts";
import { rateOfPenetration } from "./advance.ts";
import type { HeatConditions } from "./cutter-heat.ts";
import { type CutterLoad, cutterLoads } from "./cutter-load.ts";
import type { CuttingKernel } from "./cutting-kernel.ts";
import { type DrilledState, drillAtWeight } from "./drilled-state.ts";
import { drillingFindings } from "./drilling-findings.ts";
import { type DrillingFigures, drillingWorkings } from "./drilling-workings.ts";
import { edgeResponse } from "./edge-response.ts";
import type { EdgeTrace } from "./edge-trace.ts";
import { layoutFindings } from "./layout-findings.ts";
import {
  bitFrictionNumber,
  drillingSpecificEnergy,
  drillingStrength,
  mechanicalSpecificEnergy,
} from "./specific-energy.ts";
import { traceEdges } from "./trace-edges.ts";

/** A bit, a rock, a weight and a speed. */
export interface SteadyDrillingInput {
  readonly layout: BitLayout;
  readonly response: RockResponse;
  /** Weight on bit, pipe weight included [N]. */
  readonly weight: number;
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
  /** Height of the cutter tips over the wing; left out, wing rubbing is not looked for [m]. */
  readonly exposure?: number;
  /** Rock, fluid and cooling; left out, no temperatures are given. */
  readonly heat?: HeatConditions;
  /** Where the constants of the rock come from, as printed in the workings. */
  readonly responseFrom?: string;
  /** The trace of this layout where the caller already has it. */
  readonly trace?: EdgeTrace;
  /** What runs the loops; the plain kernel where none is named. No figure depends on it. */
  readonly kernel?: CuttingKernel | undefined;
}

/** A bit drilling evenly in one rock. */
export interface SteadyDrilling extends DrillingFigures {
  readonly cutters: readonly CutterLoad[];
  /** For drawing: the edges and what they take. */
  readonly trace: EdgeTrace;
  readonly state: DrilledState;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * What a bit does under a weight: advance and rate, torque and power, every cutter's cut and load, side force, specific
 * energies, with the remarks and workings that belong to them.
 *
 * Valid while the flow cleans the face and the wings do not rub; a finding says where the exposure is used up.
 *
 * @throws RangeError when weight or rotary speed is not positive, or the layout or the rock is not sound
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled, summed over the traced edges
 */
export function steadyDrilling(input: SteadyDrillingInput): SteadyDrilling {
  const { layout, response, weight, rotarySpeed, exposure, heat, kernel, responseFrom = "entered" } = input;
  requirePositive({ weight, rotarySpeed });
  const trace = input.trace ?? traceEdges(layout);
  const state = drillAtWeight({ trace, response, kernel }, weight);
  const { advance, bit } = state;
  const { torque } = bit;
  const { holeRadius } = trace;
  const rate = rateOfPenetration({ advance, rotarySpeed });
  const drillingEnergy = drillingSpecificEnergy({ torque, advance, holeRadius });
  const figures: DrillingFigures = {
    holeRadius,
    rotarySpeed,
    advance,
    rate,
    power: torque * rotarySpeed,
    drillingEnergy,
    drillingStrength: drillingStrength({ weight: bit.weight, advance, holeRadius }),
    mechanicalEnergy: mechanicalSpecificEnergy({ weight: bit.weight, torque, rotarySpeed, rate, holeRadius }),
    efficiency: response.specificEnergy / drillingEnergy,
    frictionNumber: bitFrictionNumber({ weight: bit.weight, torque, holeRadius }),
    bit,
  };
  const cutters = cutterLoads({ trace, response }, state, { rotarySpeed, ...(heat ? { heat } : {}) });
  const { efficiency } = figures;
  const bevelRubs = layout.cutters.some(
    (cutter) => cutter.chamferWidth > 0 && edgeResponse(cutter, response).chamferLength > 0,
  );
  const findings = gravestFirst([
    ...layoutFindings(trace),
    ...drillingFindings({ bit, cutters, efficiency, bevelRubs, ...(exposure === undefined ? {} : { exposure }) }),
  ]);
  return { ...figures, cutters, trace, state, findings, working: drillingWorkings(figures, response, responseFrom) };
}
