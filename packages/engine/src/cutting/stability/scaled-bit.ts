import { requireNotNegative, requirePositive } from "../../quantity/index.ts";

/** A string and a bit in rock as the equations of self-excitation see them: four numbers and two scales. */
export interface ScaledBit {
  /** n, wings evenly spaced [-]. */
  readonly wings: number;
  /** ψ, how stiff the cut is against the string's inertia [-]. */
  readonly cutStiffness: number;
  /** λ, contact load of one wing [-]. */
  readonly contactLoad: number;
  /** β, friction of the contact against the cut [-]. */
  readonly contactFriction: number;
  /** t*, unit of time: one radian of the string's free twisting [s]. */
  readonly timeScale: number;
  /** L*, unit of length: the cut of one wing that twists the string by one radian [m]. */
  readonly lengthScale: number;
  /** Weight of one unit of W' [N]. */
  readonly weightScale: number;
  /** Torque of one unit of T', the string's stiffness [N·m]. */
  readonly torqueScale: number;
}

/** A string as one mass on one spring. */
export interface OneModeString {
  /** I, polar inertia that swings at the bit [kg·m²]. */
  readonly inertia: number;
  /** C, stiffness in twist [N·m/rad]. */
  readonly torsionalStiffness: number;
  /** M, mass that moves up and down with the bit [kg]. */
  readonly mass: number;
}

/** How a bit loads its string: the cutting part grows with advance, the contact part is there or not. */
export interface BitSlopes {
  /** Wings [-]. */
  readonly wings: number;
  /** Weight that cuts for each metre of advance, ζ ε a [N/m]. */
  readonly weightSlope: number;
  /** Torque that cuts for each metre of advance, ε a²/2 [N]. */
  readonly torqueSlope: number;
  /** Weight on flats and bevels of all wings, n a σ l [N]. */
  readonly contactWeight: number;
  /** Torque of flats and bevels of all wings [N·m]. */
  readonly contactTorque: number;
}

/**
 * Scales and numbers of the axial and torsional self-excitation of a bit on a string.
 *
 * t* = √(I/C); L* = C/(dT/dd) = 2 C/(ε a²); ψ = (dW/dd) I/(M C) = ζ ε a I/(M C); n λ = W_f/((dW/dd) L*),
 * λ = a² σ l/(2 ζ C) for each wing; β = T_f/(C n λ) = μ γ ζ; W' = W/((dW/dd) L*) = W a/(2 ζ C).
 *
 * @throws RangeError when a mass, stiffness or slope is not positive, or a contact load is negative
 * @source (b) Richard, Germay & Detournay 2007, J. Sound Vib. 305:432-456, recalled; (d) scaling derived again
 */
export function scaledBit(string: OneModeString, bit: BitSlopes): ScaledBit {
  const { inertia, torsionalStiffness, mass } = string;
  const { wings, weightSlope, torqueSlope, contactWeight, contactTorque } = bit;
  requirePositive({ inertia, torsionalStiffness, mass, wings, weightSlope, torqueSlope });
  requireNotNegative({ contactWeight, contactTorque });
  const lengthScale = torsionalStiffness / torqueSlope;
  const weightScale = weightSlope * lengthScale;
  const allContact = contactWeight / weightScale;
  return {
    wings,
    cutStiffness: (weightSlope * inertia) / (mass * torsionalStiffness),
    contactLoad: allContact / wings,
    contactFriction: allContact > 0 ? contactTorque / (torsionalStiffness * allContact) : 0,
    timeScale: Math.sqrt(inertia / torsionalStiffness),
    lengthScale,
    weightScale,
    torqueScale: torsionalStiffness,
  };
}

/** A bit as one blunt cutter with flats of one length on every wing. */
export interface BladeBit {
  /** a [m]. */
  readonly holeRadius: number;
  /** Wings [-]. */
  readonly wings: number;
  /** ζ [-]. */
  readonly cuttingRatio: number;
  /** ε [Pa]. */
  readonly specificEnergy: number;
  /** σ [Pa]. */
  readonly contactStress: number;
  /** l, length of flat of one wing [m]. */
  readonly flatLength: number;
  /** μ [-]. */
  readonly flatFriction: number;
  /** γ [-]. */
  readonly bitConstant: number;
}

/**
 * The slopes and contact loads of a bit in closed form.
 *
 * dW/dd = ζ ε a; dT/dd = ε a²/2; W_f = n a σ l; T_f = μ γ a W_f/2.
 *
 * @throws RangeError when a size or constant is not positive (l, μ and γ may be zero)
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled
 */
export function bladeSlopes(bit: BladeBit): BitSlopes {
  const { holeRadius, wings, cuttingRatio, specificEnergy, contactStress, flatLength, flatFriction, bitConstant } = bit;
  requirePositive({ holeRadius, wings, cuttingRatio, specificEnergy });
  requireNotNegative({ contactStress, flatLength, flatFriction, bitConstant });
  const contactWeight = wings * holeRadius * contactStress * flatLength;
  return {
    wings,
    weightSlope: cuttingRatio * specificEnergy * holeRadius,
    torqueSlope: (specificEnergy * holeRadius ** 2) / 2,
    contactWeight,
    contactTorque: (flatFriction * bitConstant * holeRadius * contactWeight) / 2,
  };
}
