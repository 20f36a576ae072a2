import { bracketedRoot, requireBetween, requirePositive } from "../quantity/index.ts";

/** What `colebrookFriction` needs. */
export interface ColebrookFrictionInput {
  /** Reynolds number Re [-]. */
  readonly reynolds: number;
  /** Height of the wall's roughness over the hydraulic diameter, e/D [-]. */
  readonly relativeRoughness: number;
}

/**
 * Darcy friction factor of turbulent flow in a rough pipe.
 *
 * 1/√f = -2 log₁₀(e/(3.7 D) + 2.51/(Re √f)), solved for 1/√f to a residual of 1e-12. Turbulent flow, Re from about
 * 4000 to 1e8, e/D to 0.05. The Fanning factor is a quarter of it.
 *
 * @returns Darcy friction factor [-]
 * @throws RangeError when Re is below 1000 or e/D lies outside 0 to 0.5
 * @source (b) Colebrook 1939, J. Inst. Civil Engineers 11:133, recalled
 * @example
 * colebrookFriction({ reynolds: 1e5, relativeRoughness: 1e-4 }) // → 0.018513866
 */
export function colebrookFriction({ reynolds, relativeRoughness }: ColebrookFrictionInput): number {
  requirePositive({ "reynolds above 1000": reynolds - 1000 });
  requireBetween("relativeRoughness", relativeRoughness, 0, 0.5);
  const inverseRoot = bracketedRoot({
    f: (x) => x + 2 * Math.log10(relativeRoughness / 3.7 + (2.51 * x) / reynolds),
    low: 0.5,
    high: 50,
    residual: 1e-12,
  });
  return inverseRoot ** -2;
}

/**
 * Fanning friction factor of turbulent flow in a smooth pipe at a Reynolds number [-].
 *
 * f = 0.0791/Re^¼; Re from about 3000 to 1e5.
 *
 * @returns Fanning friction factor [-]
 * @throws RangeError when the Reynolds number is not positive
 * @source (b) Blasius 1913, recalled; in Fanning form as in Guo & Liu 2011
 * @example
 * blasiusFriction(8544) // → 0.008227
 */
export function blasiusFriction(reynolds: number): number {
  requirePositive({ reynolds });
  return 0.0791 / reynolds ** 0.25;
}

/** What `thinningTurbulentFriction` needs. */
export interface ThinningTurbulentFrictionInput {
  /** Generalised Reynolds number [-]. */
  readonly reynolds: number;
  /** Flow index n [-]. */
  readonly flowIndex: number;
}

/**
 * Fanning friction factor of a shear-thinning fluid in turbulent flow along a smooth wall.
 *
 * f = a/Reᵇ with a = (log₁₀ n + 3.93)/50 and b = (1.75 - log₁₀ n)/7; n from about 0.3 to 1.
 *
 * @returns Fanning friction factor [-]
 * @throws RangeError when an input is not positive
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems; also in API RP 13D
 * @example
 * thinningTurbulentFriction({ reynolds: 7684, flowIndex: 0.69188 }) // → 0.006564
 */
export function thinningTurbulentFriction({ reynolds, flowIndex }: ThinningTurbulentFrictionInput): number {
  requirePositive({ reynolds, flowIndex });
  const { a, b } = thinningFit(flowIndex);
  return a / reynolds ** b;
}

/**
 * Reynolds number at which the laminar and turbulent laws of a shear-thinning fluid in an annulus meet, for a flow
 * index n [-].
 *
 * Re = [8 (2n + 1)/(n a)]^(1/(1 - b)), with a and b of the turbulent friction and the laminar annulus f = 8 (2n + 1)/(n Re).
 *
 * @returns critical Reynolds number [-]
 * @throws RangeError when the flow index is not positive
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems
 * @example
 * criticalAnnulusReynolds(0.8) // → 2737
 */
export function criticalAnnulusReynolds(flowIndex: number): number {
  requirePositive({ flowIndex });
  const { a, b } = thinningFit(flowIndex);
  return ((8 * (2 * flowIndex + 1)) / (flowIndex * a)) ** (1 / (1 - b));
}

function thinningFit(flowIndex: number): { readonly a: number; readonly b: number } {
  return { a: (Math.log10(flowIndex) + 3.93) / 50, b: (1.75 - Math.log10(flowIndex)) / 7 };
}
