import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/** The state of a single cutter. */
export interface CutterState {
  /** Force along travel [N]. */
  readonly tangential: number;
  /** Force normal to travel [N]. */
  readonly normal: number;
  /** E, force along travel over area of cut [Pa]. */
  readonly specificEnergy: number;
  /** S, normal force over area of cut [Pa]. */
  readonly strength: number;
}

/**
 * Forces on one cutter, sharp part and flat.
 *
 * F_t = ε A + μ N_f, F_n = ζ ε A + N_f with N_f the normal load on the flat. E = F_t/A and S = F_n/A then lie on the
 * friction line E = (1 - μ ζ) ε + μ S.
 *
 * @throws RangeError when ε or the area of cut is not positive, or another input negative
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled
 * @example
 * cutterState({ specificEnergy: 60e6, areaOfCut: 1e-5, cuttingRatio: 0.6494076, flatFriction: 0.5, flatNormal: 200 }).normal // → 589.6446
 */
export function cutterState({
  specificEnergy,
  areaOfCut,
  cuttingRatio,
  flatFriction,
  flatNormal,
}: {
  /** Intrinsic specific energy of the rock [Pa]. */
  readonly specificEnergy: number;
  /** Area of cut across travel [m²]. */
  readonly areaOfCut: number;
  /** ζ, normal over tangential force of the sharp cutter [-]. */
  readonly cuttingRatio: number;
  /** Friction of the flat on rock [-]. */
  readonly flatFriction: number;
  /** Normal load on the flat [N]. */
  readonly flatNormal: number;
}): CutterState {
  requirePositive({ specificEnergy, areaOfCut });
  requireNotNegative({ flatFriction, flatNormal });
  const tangential = specificEnergy * areaOfCut + flatFriction * flatNormal;
  const normal = cuttingRatio * specificEnergy * areaOfCut + flatNormal;
  return { tangential, normal, specificEnergy: tangential / areaOfCut, strength: normal / areaOfCut };
}

/**
 * Where the friction line meets the axis of specific energy.
 *
 * E0 = (1 - μ γ ζ) ε; γ = 1 for a single cutter.
 *
 * @returns E0 [Pa]
 * @throws RangeError when ε is not positive or friction negative
 * @source (a) Detournay, Richard & Shepherd 2008, Int. J. Rock Mech. Min. Sci. 45:1347-1360, equation 12
 * @example
 * frictionLineOrigin({ specificEnergy: 60e6, cuttingRatio: 0.6494076, flatFriction: 0.5 }) // → 40.51777e6
 */
export function frictionLineOrigin({
  specificEnergy,
  cuttingRatio,
  flatFriction,
  bitConstant = 1,
}: {
  /** Intrinsic specific energy of the rock [Pa]. */
  readonly specificEnergy: number;
  /** ζ [-]. */
  readonly cuttingRatio: number;
  /** Friction of the flat on rock [-]. */
  readonly flatFriction: number;
  /** γ, where the contact load sits along the radius; default 1 [-]. */
  readonly bitConstant?: number;
}): number {
  requirePositive({ specificEnergy });
  requireNotNegative({ flatFriction, bitConstant });
  return (1 - flatFriction * bitConstant * cuttingRatio) * specificEnergy;
}
