import type { BinghamFluid } from "../fluid/index.ts";
import { readIn, requireNotNegative, requirePositive } from "../quantity/index.ts";
import { conduitSpeed, hydraulicDiameter } from "./conduit.ts";
import type { ConduitLoss, ConduitLossInput } from "./conduit-state.ts";
import { equivalentDiameter, smoothPressureDrop } from "./smooth-pressure-drop.ts";

const LAMINAR_TO = 2100;

/**
 * Pressure lost by a Bingham mud along a pipe bore or annulus, by the mud engineer's short forms.
 *
 * Laminar: (32 PV v/d² + 16 YP/(3 d)) L in a pipe, (48 PV v/d² + 6 YP/d) L in an annulus with d = D - d. Regime by
 * Re = ρ v d/μ with the apparent viscosity PV + YP d/(6 v) in a pipe, PV + YP d/(8 v) in an annulus (there on the
 * equivalent diameter); laminar to 2100. Above, the smooth form with PV, but never less than the laminar loss. The
 * laminar form leaves out the plug and so over-reads slow annuli by a third or more; a yield-stress form does better.
 *
 * @throws RangeError when flow, plastic viscosity, density or a diameter is not positive, or yield or length is negative
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems; the regime rule recalled
 */
export function binghamLoss({ fluid, conduit, flow, length }: ConduitLossInput<BinghamFluid>): ConduitLoss {
  const { density, plasticViscosity, yieldPoint } = fluid;
  requirePositive({ density, plasticViscosity });
  requireNotNegative({ yieldPoint, length });
  const speed = conduitSpeed({ flow, conduit });
  const diameter = hydraulicDiameter(conduit);
  const pipe = conduit.shape === "pipe";
  const apparentViscosity = plasticViscosity + (yieldPoint * diameter) / ((pipe ? 6 : 8) * speed);
  const reynolds = (density * speed * equivalentDiameter(conduit)) / apparentViscosity;
  const viscousPart = ((pipe ? 32 : 48) * plasticViscosity * speed) / diameter ** 2;
  const laminarDrop = (viscousPart + ((pipe ? 16 / 3 : 6) * yieldPoint) / diameter) * length;
  const turbulentDrop = smoothPressureDrop({ density, viscosity: plasticViscosity, conduit, flow, length });
  const laminar = reynolds <= LAMINAR_TO;
  const pressureDrop = laminar ? laminarDrop : Math.max(laminarDrop, turbulentDrop);
  const perFriction = (2 * density * speed ** 2 * length) / diameter;
  return {
    pressureDrop,
    speed,
    reynolds,
    regime: laminar ? "laminar" : "turbulent",
    friction: perFriction > 0 ? pressureDrop / perFriction : 0,
    relation: laminar
      ? `Δp = (${pipe ? "32 PV v/d² + 16 YP/(3 d)" : "48 PV v/d² + 6 YP/d"}) L`
      : "Δp = 2 f ρ v² L/d, f = 0.0791/Re^¼ with PV",
    source: readIn("Guo & Liu 2011, Applied Drilling Circulation Systems"),
  };
}
