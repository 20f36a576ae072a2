import { type HerschelBulkleyFluid, herschelBulkleyForm, type PowerLawFluid } from "../fluid/index.ts";
import { recalledFrom, requireNotNegative } from "../quantity/index.ts";
import { conduitSpeed, hydraulicDiameter } from "./conduit.ts";
import type { ConduitLoss, ConduitLossInput, FlowRegime } from "./conduit-state.ts";
import { thinningTurbulentFriction } from "./friction-factor.ts";
import { frictionPressureDrop } from "./friction-pressure-drop.ts";
import { wallShear } from "./wall-shear.ts";

/**
 * Pressure lost by a mud with a yield stress, or a power-law mud, along a pipe bore or annulus.
 *
 * Re = 8 ρ v²/τw with the laminar wall stress τw; f_lam = 16/Re, f_turb = a/Reᵇ, f_trans = 16 Re/(3470 - 1370 n)²,
 * f = [((f_trans⁻⁸ + f_turb⁻⁸)^(-1/8))¹² + f_lam¹²]^(1/12), Δp = 2 f ρ v² L/d. One smooth curve through all regimes, smooth wall.
 *
 * @throws RangeError when the flow, a fluid property or a diameter is out of range, or the length is negative
 * @source (b) API RP 13D form, recalled; constants derived again in SI and checked against exact laminar flow
 */
export function herschelBulkleyLoss(input: ConduitLossInput<HerschelBulkleyFluid | PowerLawFluid>): ConduitLoss {
  const { conduit, flow, length } = input;
  requireNotNegative({ length });
  const fluid = herschelBulkleyForm(input.fluid);
  const { density, flowIndex } = fluid;
  const speed = conduitSpeed({ flow, conduit });
  const reynolds = (8 * density * speed ** 2) / wallShear({ fluid, conduit, flow }).stress;
  const laminar = 16 / reynolds;
  const turbulent = thinningTurbulentFriction({ reynolds, flowIndex });
  const transitional = (16 * reynolds) / laminarLimit(flowIndex) ** 2;
  const intermediate = (transitional ** -8 + turbulent ** -8) ** (-1 / 8);
  const friction = (intermediate ** 12 + laminar ** 12) ** (1 / 12);
  return {
    pressureDrop: frictionPressureDrop({
      friction,
      density,
      speed,
      length,
      hydraulicDiameter: hydraulicDiameter(conduit),
    }),
    speed,
    reynolds,
    regime: regimeOf(reynolds, flowIndex),
    friction,
    relation: "Δp = 2 f ρ v² L/d, f(Re, n) with Re = 8 ρ v²/τw",
    source: recalledFrom("API RP 13D form, constants derived again in SI"),
  };
}

function laminarLimit(flowIndex: number): number {
  return 3470 - 1370 * flowIndex;
}

/** Width of the transition between laminar and turbulent flow in Reynolds number. */
const TRANSITION_WIDTH = 800;

function regimeOf(reynolds: number, flowIndex: number): FlowRegime {
  const limit = laminarLimit(flowIndex);
  if (reynolds <= limit) return "laminar";
  return reynolds >= limit + TRANSITION_WIDTH ? "turbulent" : "transitional";
}
