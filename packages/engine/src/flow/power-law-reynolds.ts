import type { PowerLawFluid } from "../fluid/index.ts";
import { requirePositive } from "../quantity/index.ts";
import { type Annulus, type Conduit, conduitArea, hydraulicDiameter } from "./conduit.ts";
import { wallShear } from "./wall-shear.ts";

/** What `powerLawReynolds` needs. */
export interface PowerLawReynoldsInput {
  readonly fluid: PowerLawFluid;
  readonly conduit: Conduit;
  /** Mean speed v [m/s]. */
  readonly speed: number;
}

/**
 * Reynolds number of a power-law mud as drilling texts define it.
 *
 * 8 ρ v²/τw in a pipe; 12 √(2/3) ρ v²/τw in an annulus, which is 22 % above the 8 ρ v²/τw of the yield-stress form.
 * Do not mix one definition with the other's limits.
 *
 * @returns Reynolds number [-]
 * @throws RangeError when the speed, a fluid property or a diameter is out of range
 * @source (b) Bourgoyne et al. 1986 ch. 4, recalled; agrees with Guo & Liu 2011's worked annulus
 * @example
 * powerLawReynolds({ fluid: { model: "power-law", density: 1000, consistency: 0.001, flowIndex: 1 }, conduit: { shape: "pipe", bore: 0.05 }, speed: 1 }) // → 50000
 */
export function powerLawReynolds({ fluid, conduit, speed }: PowerLawReynoldsInput): number {
  requirePositive({ speed });
  const { stress } = wallShear({ fluid, conduit, flow: speed * conduitArea(conduit) });
  const factor = conduit.shape === "pipe" ? 8 : 12 * Math.sqrt(2 / 3);
  return (factor * fluid.density * speed ** 2) / stress;
}

/** What `criticalAnnulusSpeed` needs. */
export interface CriticalAnnulusSpeedInput {
  readonly fluid: PowerLawFluid;
  readonly annulus: Annulus;
}

/** ρ v²/τw at which a power-law mud in an annulus leaves laminar flow [-]. */
const CRITICAL_INERTIA = 250.5;

/**
 * Uphole speed at which a power-law mud leaves laminar flow.
 *
 * V = [250.5 K/ρ · (12/d · (2n + 1)/(3n))ⁿ]^(1/(2 - n)), d = D - d: the speed at which ρ V²/τw reaches 250.5.
 *
 * @returns critical uphole speed [m/s]
 * @throws RangeError when a fluid property or a diameter is out of range
 * @source (a) critical speed of the annulus as on drilling teaching pages, constant turned into SI
 * @example
 * criticalAnnulusSpeed({ fluid: { model: "power-law", density: 1138, consistency: 0.5, flowIndex: 0.585 }, annulus: { shape: "annulus", holeDiameter: 0.2159, pipeDiameter: 0.127 } }) // → 1.7439
 */
export function criticalAnnulusSpeed({ fluid, annulus }: CriticalAnnulusSpeedInput): number {
  const { density, consistency, flowIndex: n } = fluid;
  requirePositive({ density, consistency, "flowIndex below 2": 2 - n, flowIndex: n });
  const ratePerSpeed = ((12 / hydraulicDiameter(annulus)) * (2 * n + 1)) / (3 * n);
  return (((CRITICAL_INERTIA * consistency) / density) * ratePerSpeed ** n) ** (1 / (2 - n));
}
