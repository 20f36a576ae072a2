import type { NewtonianFluid } from "../fluid/index.ts";
import { recalledFrom, requireNotNegative, requirePositive } from "../quantity/index.ts";
import { type Conduit, conduitSpeed, hydraulicDiameter } from "./conduit.ts";
import { type ConduitLoss, type ConduitLossInput, type FlowRegime, STEEL_ROUGHNESS } from "./conduit-state.ts";
import { colebrookFriction } from "./friction-factor.ts";
import { frictionPressureDrop } from "./friction-pressure-drop.ts";

/**
 * Pressure lost by a Newtonian fluid along a pipe bore or annulus.
 *
 * Re = ρ v d/μ on the hydraulic diameter. Laminar to 2100: f = 16/Re in a pipe, 24/Re in an annulus taken as a slot.
 * Turbulent from 4000: a quarter of Colebrook's Darcy factor. Between the two, a straight line of ln f over ln Re.
 *
 * @throws RangeError when flow, viscosity, density or a diameter is not positive, or length or roughness is negative
 * @source (b) Poiseuille; Colebrook 1939; slot form of the annulus as in Bourgoyne et al. 1986 ch. 4, recalled
 */
export function newtonianLoss(input: ConduitLossInput<NewtonianFluid>): ConduitLoss {
  const { fluid, conduit, flow, length, roughness = STEEL_ROUGHNESS } = input;
  const { density, viscosity } = fluid;
  requirePositive({ density, viscosity });
  requireNotNegative({ length, roughness });
  const speed = conduitSpeed({ flow, conduit });
  const diameter = hydraulicDiameter(conduit);
  const reynolds = (density * speed * diameter) / viscosity;
  const { friction, regime, relation } = newtonianFriction(conduit, reynolds, roughness / diameter);
  const pressureDrop = frictionPressureDrop({ friction, density, speed, length, hydraulicDiameter: diameter });
  return { pressureDrop, speed, reynolds, regime, friction, relation, source: SOURCE };
}

const SOURCE = recalledFrom("Poiseuille; Colebrook 1939, J. Inst. Civil Engineers 11:133");

interface NewtonianFriction {
  readonly friction: number;
  readonly regime: FlowRegime;
  readonly relation: string;
}

const LAMINAR_TO = 2100;
const TURBULENT_FROM = 4000;

function newtonianFriction(conduit: Conduit, reynolds: number, relativeRoughness: number): NewtonianFriction {
  const factor = conduit.shape === "pipe" ? 16 : 24;
  if (reynolds <= LAMINAR_TO) {
    return { friction: factor / reynolds, regime: "laminar", relation: `Δp = 2 f ρ v² L/d, f = ${factor}/Re` };
  }
  if (reynolds >= TURBULENT_FROM) {
    const friction = colebrookFriction({ reynolds, relativeRoughness }) / 4;
    return { friction, regime: "turbulent", relation: "Δp = 2 f ρ v² L/d, 4 f from Colebrook" };
  }
  const laminarEnd = Math.log(factor / LAMINAR_TO);
  const turbulentEnd = Math.log(colebrookFriction({ reynolds: TURBULENT_FROM, relativeRoughness }) / 4);
  const share = Math.log(reynolds / LAMINAR_TO) / Math.log(TURBULENT_FROM / LAMINAR_TO);
  return {
    friction: Math.exp(laminarEnd + share * (turbulentEnd - laminarEnd)),
    regime: "transitional",
    relation: "Δp = 2 f ρ v² L/d, f between its laminar and turbulent ends",
  };
}
