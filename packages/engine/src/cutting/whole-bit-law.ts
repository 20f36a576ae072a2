import type { RockResponse } from "../ground/index.ts";
import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import { frictionLineOrigin } from "./cutter-law.ts";

/** A bit as one blunt cutter, for the closed-form law. */
export interface BluntBit {
  /** Hole radius [m]. */
  readonly holeRadius: number;
  /** ζ, normal over tangential force of its sharp cutters [-]. */
  readonly cuttingRatio: number;
  /** Equivalent blunted length of the bit, flats of all cutters along one radius [m]. */
  readonly bluntLength: number;
  /** γ, where the contact load sits along the radius: 1 per unit radius, 4/3 per unit area [-]. */
  readonly bitConstant: number;
}

/** Corner points of the three-phase law. */
export interface BitLaw {
  /** E0, the friction line at no weight [Pa]. */
  readonly energyOrigin: number;
  /** E*, specific energy while contact still grows with advance [Pa]. */
  readonly energyOfContact: number;
  /** S*, drilling strength while contact still grows with advance [Pa]. */
  readonly strengthOfContact: number;
  /** Contact load per radius once the flats bear fully, w_f* [N/m]. */
  readonly fullContactLoad: number;
  /** Weight per radius at the knee, w* [N/m]. */
  readonly kneeLoad: number;
  /** Advance per revolution at the knee, d* [m]. */
  readonly kneeAdvance: number;
  /** 2T/a² at the knee, t* [N/m]. */
  readonly kneeTorque: number;
}

type LawRock = Omit<RockResponse, "faceFriction">;

/**
 * The corner points of the drilling response of a blunt bit.
 *
 * S* = ζ ε + κ σ, E* = ε + μ γ κ σ, w_f* = σ l, d* = l/κ, w* = S* d*, t* = E* d*. Phase I runs up to the knee (w*, d*),
 * phase II beyond it; phase III, poor cleaning, has no closed form.
 *
 * @throws RangeError when an input is not positive (κ, μ and l may be zero; κ not with a flat)
 * @source (a) Detournay, Richard & Shepherd 2008, Int. J. Rock Mech. Min. Sci. 45:1347-1360, equations 12, 25, 28, 33;
 *   d* = l/κ derived from them
 */
export function bitLaw(bit: BluntBit, rock: LawRock): BitLaw {
  const { holeRadius, cuttingRatio, bluntLength, bitConstant } = bit;
  const { specificEnergy, contactStress, flatFriction, kappa } = rock;
  requirePositive({ holeRadius, specificEnergy, bitConstant });
  requireNotNegative({ bluntLength, contactStress, flatFriction, kappa });
  if (bluntLength > 0) requirePositive({ kappa });
  const strengthOfContact = cuttingRatio * specificEnergy + kappa * contactStress;
  const energyOfContact = specificEnergy + flatFriction * bitConstant * kappa * contactStress;
  const kneeAdvance = bluntLength > 0 ? bluntLength / kappa : 0;
  return {
    energyOrigin: frictionLineOrigin({ specificEnergy, cuttingRatio, flatFriction, bitConstant }),
    energyOfContact,
    strengthOfContact,
    fullContactLoad: contactStress * bluntLength,
    kneeLoad: strengthOfContact * kneeAdvance,
    kneeAdvance,
    kneeTorque: energyOfContact * kneeAdvance,
  };
}

/** One point of the three-phase law. */
export interface BitLawPoint {
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Torque [N·m]. */
  readonly torque: number;
  /** E [Pa]. */
  readonly specificEnergy: number;
  /** S [Pa]. */
  readonly strength: number;
  /** I while contact grows with advance, II once the flats bear fully. */
  readonly phase: "I" | "II";
}

/**
 * Advance and torque of a blunt bit under a weight, without poor cleaning.
 *
 * w = W/a. Phase I: d = w/S*, t = E* d. Phase II: d = d* + (w - w*)/(ζ ε), t = t* + ε (d - d*). T = t a²/2.
 *
 * @throws RangeError when the weight or another input is not positive
 * @source (a) Detournay, Richard & Shepherd 2008, Int. J. Rock Mech. Min. Sci. 45:1347-1360; phase II in this form derived
 */
export function bitLawAtWeight(bit: BluntBit, rock: LawRock, weight: number): BitLawPoint {
  requirePositive({ weight, cuttingRatio: bit.cuttingRatio });
  const law = bitLaw(bit, rock);
  const load = weight / bit.holeRadius;
  const phase = load < law.kneeLoad ? "I" : "II";
  const advance =
    phase === "I"
      ? load / law.strengthOfContact
      : law.kneeAdvance + (load - law.kneeLoad) / (bit.cuttingRatio * rock.specificEnergy);
  const torqueLoad =
    phase === "I" ? law.energyOfContact * advance : law.kneeTorque + rock.specificEnergy * (advance - law.kneeAdvance);
  return {
    advance,
    weight,
    torque: (torqueLoad * bit.holeRadius ** 2) / 2,
    specificEnergy: torqueLoad / advance,
    strength: load / advance,
    phase,
  };
}

/**
 * The bit constant from the way the contact load is spread along the radius.
 *
 * γ = 2 ∫ r p dr / (a ∫ p dr) with p = load per unit radius ~ r^n: γ = 2 (n + 1)/(n + 2); 1 for n = 0 (even along the
 * radius), 4/3 for n = 1 (even over the area).
 *
 * @returns γ [-]
 * @throws RangeError when the exponent is -1 or less
 * @source (d) from the definition of γ in Detournay & Defourny 1992
 * @example
 * bitConstantOfSpread(1) // → 1.333333
 */
export function bitConstantOfSpread(exponent: number): number {
  requirePositive({ exponentPlusOne: exponent + 1 });
  return (2 * (exponent + 1)) / (exponent + 2);
}

/**
 * Friction number that a perfectly sharp bit reads.
 *
 * μ_b = 0.75 / ζ.
 *
 * @returns μ_b [-]
 * @throws RangeError when ζ is not positive
 * @source (d) from W = ζ ε a d and T = ε a² d/2
 * @example
 * sharpFrictionNumber(0.6) // → 1.25
 */
export function sharpFrictionNumber(cuttingRatio: number): number {
  requirePositive({ cuttingRatio });
  return 0.75 / cuttingRatio;
}

/**
 * Friction number that a bit reads while it only rubs.
 *
 * μ_b = 0.75 μ γ.
 *
 * @returns μ_b [-]
 * @throws RangeError when an input is negative
 * @source (d) from T = μ γ a W/2
 * @example
 * rubbingFrictionNumber({ flatFriction: 0.5, bitConstant: 1 }) // → 0.375
 */
export function rubbingFrictionNumber({
  flatFriction,
  bitConstant,
}: {
  /** Friction of the flat on rock [-]. */
  readonly flatFriction: number;
  /** γ [-]. */
  readonly bitConstant: number;
}): number {
  requireNotNegative({ flatFriction, bitConstant });
  return 0.75 * flatFriction * bitConstant;
}
