import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import { type Annulus, conduitSpeed, hydraulicDiameter } from "./conduit.ts";
import { frictionPressureDrop } from "./friction-pressure-drop.ts";

/** Fanning friction factor behind the quick annulus rule: 1.4327e-7 psi per (ppg ft (ft/min)²/in), in SI [-]. */
const FULLY_ROUGH_FRICTION = 0.01331;

/** What `roughAnnulusPressureDrop` needs. */
export interface RoughAnnulusPressureDropInput {
  /** Density of the fluid ρ [kg/m³]. */
  readonly density: number;
  readonly annulus: Annulus;
  /** Flow [m³/s]. */
  readonly flow: number;
  /** Length of the annulus L [m]. */
  readonly length: number;
}

/**
 * Quick upper bound of the annulus loss, as if the wall were fully rough.
 *
 * Δp = 2 · 0.01331 ρ V² L/(D - d); viscosity does not enter, so it holds for turbulent flow only and a slow thick mud
 * can lose more.
 *
 * @returns pressure drop [Pa]
 * @throws RangeError when density or flow is not positive, the pipe does not fit, or the length is negative
 * @source (a) rule in Lapeyrouse 2002, Formulas and Calculations for Drilling, read on a teaching page
 * @example
 * roughAnnulusPressureDrop({ density: 1030, annulus: { shape: "annulus", holeDiameter: 0.155575, pipeDiameter: 0.0889 }, flow: 0.0095, length: 91.44 }) // → 20705
 */
export function roughAnnulusPressureDrop(input: RoughAnnulusPressureDropInput): number {
  const { density, annulus, flow, length } = input;
  requirePositive({ density });
  requireNotNegative({ length });
  return frictionPressureDrop({
    friction: FULLY_ROUGH_FRICTION,
    density,
    speed: conduitSpeed({ flow, conduit: annulus }),
    length,
    hydraulicDiameter: hydraulicDiameter(annulus),
  });
}
