import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/**
 * Drilling specific energy: rotary work for each volume of hole.
 *
 * E = 2T / (a² d), a the hole radius. For a core bit of inner radius b, a² becomes a² - b².
 *
 * @returns E [Pa]
 * @throws RangeError when the torque is negative, or radius or advance not positive
 * @source (a) Detournay, Richard & Shepherd 2008, Int. J. Rock Mech. Min. Sci. 45:1347-1360
 * @example
 * drillingSpecificEnergy({ torque: 1238.942, advance: 2e-3, holeRadius: 0.10795 }) // → 106.3177e6
 */
export function drillingSpecificEnergy({
  torque,
  advance,
  holeRadius,
  coreRadius = 0,
}: {
  /** Torque at the bit [N·m]. */
  readonly torque: number;
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Hole radius [m]. */
  readonly holeRadius: number;
  /** Radius of the core left standing, default none [m]. */
  readonly coreRadius?: number;
}): number {
  requireNotNegative({ torque, coreRadius });
  requirePositive({ advance, ringWidth: holeRadius - coreRadius });
  return (2 * torque) / (advance * (holeRadius ** 2 - coreRadius ** 2));
}

/**
 * Drilling strength: weight for each area of hole wall laid open by one revolution.
 *
 * S = W / (a d), a the hole radius. For a core bit of inner radius b, a becomes a - b.
 *
 * @returns S [Pa]
 * @throws RangeError when the weight is negative, or radius or advance not positive
 * @source (a) Detournay, Richard & Shepherd 2008, Int. J. Rock Mech. Min. Sci. 45:1347-1360
 * @example
 * drillingStrength({ weight: 28412.43, advance: 2e-3, holeRadius: 0.10795 }) // → 131.5999e6
 */
export function drillingStrength({
  weight,
  advance,
  holeRadius,
  coreRadius = 0,
}: {
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Hole radius [m]. */
  readonly holeRadius: number;
  /** Radius of the core left standing, default none [m]. */
  readonly coreRadius?: number;
}): number {
  requireNotNegative({ weight, coreRadius });
  requirePositive({ advance, ringWidth: holeRadius - coreRadius });
  return weight / (advance * (holeRadius - coreRadius));
}

/**
 * Mechanical specific energy: all work of weight and torque for each volume of hole.
 *
 * MSE = W/A + ω T/(A v), A = π a². It needs torque measured at the bit; a torque read at surface through a long string,
 * or a motor pressure, is not that.
 *
 * @returns MSE [Pa]
 * @throws RangeError when weight or torque is negative, or another input not positive
 * @source (b) Teale 1965, Int. J. Rock Mech. Min. Sci. 2:57-73, recalled; abstract read
 * @example
 * mechanicalSpecificEnergy({ weight: 155687.8, torque: 6101.18, rotarySpeed: 12.56637, rate: 0.004233333, holeRadius: 0.10795 }) // → 498.957e6
 */
export function mechanicalSpecificEnergy({
  weight,
  torque,
  rotarySpeed,
  rate,
  holeRadius,
}: {
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Torque at the bit [N·m]. */
  readonly torque: number;
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
  /** Rate of penetration [m/s]. */
  readonly rate: number;
  /** Hole radius [m]. */
  readonly holeRadius: number;
}): number {
  requireNotNegative({ weight, torque });
  requirePositive({ rotarySpeed, rate, holeRadius });
  const area = Math.PI * holeRadius ** 2;
  return weight / area + (rotarySpeed * torque) / (area * rate);
}

/**
 * Bit friction number: torque as that of a rough disc under the weight.
 *
 * μ_b = T / (W 2a/3). A perfectly sharp bit reads 0.75/ζ; above 1.5 to 2 the torque is not that of the bit alone.
 *
 * @returns μ_b [-]
 * @throws RangeError when weight or radius is not positive, or torque negative
 * @source (a) Pessier & Fear 1992, SPE 24584
 * @example
 * bitFrictionNumber({ weight: 155687.8, torque: 6101.18, holeRadius: 0.10795 }) // → 0.5445378
 */
export function bitFrictionNumber({
  weight,
  torque,
  holeRadius,
}: {
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Torque at the bit [N·m]. */
  readonly torque: number;
  /** Hole radius [m]. */
  readonly holeRadius: number;
}): number {
  requirePositive({ weight, holeRadius });
  requireNotNegative({ torque });
  return (3 * torque) / (2 * weight * holeRadius);
}

/**
 * Mechanical specific energy from weight and bit friction number, where torque is known only through it.
 *
 * MSE = W (1/A + (2/3) μ_b a ω / (A v)).
 *
 * @returns MSE [Pa]
 * @throws RangeError when an input is not positive
 * @source (a) Pessier & Fear 1992, SPE 24584
 * @example
 * energyFromFriction({ weight: 155687.8, frictionNumber: 0.5445378, rotarySpeed: 12.56637, rate: 0.004233333, holeRadius: 0.10795 }) // → 498.957e6
 */
export function energyFromFriction({
  weight,
  frictionNumber,
  rotarySpeed,
  rate,
  holeRadius,
}: {
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Bit friction number [-]. */
  readonly frictionNumber: number;
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
  /** Rate of penetration [m/s]. */
  readonly rate: number;
  /** Hole radius [m]. */
  readonly holeRadius: number;
}): number {
  requirePositive({ weight, frictionNumber, rotarySpeed, rate, holeRadius });
  const torque = (2 / 3) * frictionNumber * weight * holeRadius;
  return mechanicalSpecificEnergy({ weight, torque, rotarySpeed, rate, holeRadius });
}

/**
 * Specific energy with the share taken out that an ordinary bit spends usefully at its best.
 *
 * 0.35 MSE, an estimate of the strength of the rock while drilling well.
 *
 * @returns adjusted MSE [Pa]
 * @source (b) Dupriest & Koederitz 2005, SPE 92194, recalled
 * @example
 * adjustedSpecificEnergy(498.957e6) // → 174.635e6
 */
export function adjustedSpecificEnergy(specificEnergy: number): number {
  return PEAK_EFFICIENCY * specificEnergy;
}

/**
 * Share of the work that breaks rock while a bit drills at its best [-].
 *
 * @source (b) Dupriest & Koederitz 2005, SPE 92194, recalled: 0.30 to 0.40
 */
export const PEAK_EFFICIENCY = 0.35;
