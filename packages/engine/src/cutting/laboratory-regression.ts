import { INCH, requireBetween, requirePositive } from "../quantity/index.ts";

const FOOT_PER_HOUR = (12 * INCH) / 3600;
const POUND_FORCE = 0.45359237 * 9.80665;
const PSI = POUND_FORCE / INCH ** 2;
const RPM = (2 * Math.PI) / 60;
/** Back rake that the regression is written about [rad]. */
const REFERENCE_RAKE = (25 * Math.PI) / 180;

/** A laboratory bit and how it is run, as the regression asks for them. */
export interface RegressionBit {
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  /** Unconfined strength of the rock [Pa]. */
  readonly ucs: number;
  /** Face cutters [-]. */
  readonly faceCutters: number;
  /** Back rake [rad]. */
  readonly backRake: number;
  /** Side rake [rad]. */
  readonly sideRake: number;
  /** Diameter of a face [m]. */
  readonly faceDiameter: number;
  /** Number of blades [-]. */
  readonly blades: number;
  /** Diameter of the bit [m]. */
  readonly bitDiameter: number;
}

/** What the regression gives, its steps beside the rate. */
export interface RegressionRate {
  /** Weight at which rubbing turns into cutting [N]. */
  readonly thresholdWeight: number;
  /** Rate at that weight [m/s]. */
  readonly thresholdRate: number;
  /** Rate at the weight asked for [m/s]. */
  readonly rate: number;
}

/**
 * Rate of a PDC bit by a regression on laboratory bits of 3.75 in, as a second opinion beside the cutting law.
 *
 * In the field units it was fitted in: threshold weight n·270 (N/80)^0.1 (11/n)(tan β/tan 25°)^0.2 (Dc/0.51)(S/28000), rate
 * there 5 N·0.018 (80/N)^0.3 (11/n)(Dc/0.51); G = 880 b^0.3 n^-1.05 Dc cos σ tan(β)^0.2/D²; below the threshold
 * 2e-6 G N^0.7 W^2.6/A, above it G N (W - Wt)/A plus the threshold rate, with A = S (1 + 0.3 N/100). Fitted to granite
 * at 80 to 150 rpm; on the open rows it is good to about 30 % and reads low.
 *
 * @throws RangeError when an input is not positive or a rake reaches a right angle
 * @source (a) Akhtarmanesh, Atashnezhad, Hareland & Al Dushaishi 2021, geothermal PDC rate model
 * @example
 * laboratoryRegression({ weight: 17526, rotarySpeed: 10.472, ucs: 1.9305e8, faceCutters: 8, backRake: 0.2618, sideRake: 0.01745, faceDiameter: 0.010922, blades: 4, bitDiameter: 0.09525 }).rate // → 0.0021794
 */
export function laboratoryRegression(bit: RegressionBit): RegressionRate {
  const { backRake, sideRake } = bit;
  requirePositive({
    weight: bit.weight,
    rotarySpeed: bit.rotarySpeed,
    ucs: bit.ucs,
    faceCutters: bit.faceCutters,
    backRake,
    faceDiameter: bit.faceDiameter,
    blades: bit.blades,
    bitDiameter: bit.bitDiameter,
  });
  requireBetween("backRake", backRake, 0, Math.PI / 2);
  requireBetween("sideRake", sideRake, -Math.PI / 2, Math.PI / 2);
  const rpm = bit.rotarySpeed / RPM;
  const strength = bit.ucs / PSI;
  const face = bit.faceDiameter / INCH;
  const count = bit.faceCutters;
  const weight = bit.weight / POUND_FORCE;
  const shared = (11 / count) * (face / 0.51);
  const rakeTerm = (Math.tan(backRake) / Math.tan(REFERENCE_RAKE)) ** 0.2;
  const thresholdWeight = 270 * (rpm / 80) ** 0.1 * shared * rakeTerm * (strength / 28000) * count;
  const thresholdRate = 5 * rpm * 0.018 * (80 / rpm) ** 0.3 * shared;
  const apparentStrength = strength * (1 + (0.3 * rpm) / 100);
  const bitTerm =
    (880 * bit.blades ** 0.3 * count ** -1.05 * face * Math.cos(sideRake) * Math.tan(backRake) ** 0.2) /
    (bit.bitDiameter / INCH) ** 2;
  const rate =
    weight < thresholdWeight
      ? (2e-6 * bitTerm * rpm ** 0.7 * weight ** 2.6) / apparentStrength
      : (bitTerm * rpm * (weight - thresholdWeight)) / apparentStrength + thresholdRate;
  return {
    thresholdWeight: thresholdWeight * POUND_FORCE,
    thresholdRate: thresholdRate * FOOT_PER_HOUR,
    rate: rate * FOOT_PER_HOUR,
  };
}
