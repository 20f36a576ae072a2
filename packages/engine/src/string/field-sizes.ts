import { INCH } from "../quantity/index.ts";

/**
 * The lists of this room are printed in inches, feet and pounds; these turn them into SI by the exact definitions
 * (inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s²). For the lists only; relations know SI alone.
 */
const FOOT = 12 * INCH;
const POUND_FORCE = 0.45359237 * 9.80665;

/** Inches in metres. */
export function inches(value: number): number {
  return value * INCH;
}

/** Feet in metres. */
export function feet(value: number): number {
  return value * FOOT;
}

/** Pounds of force in newtons. */
export function poundsForce(value: number): number {
  return value * POUND_FORCE;
}

/** Pounds of weight for each foot in newtons for each metre. */
export function poundsPerFoot(value: number): number {
  return (value * POUND_FORCE) / FOOT;
}

/** Foot-pounds of torque in newton metres. */
export function footPounds(value: number): number {
  return value * POUND_FORCE * FOOT;
}

/** Horsepower, 550 foot-pounds a second, in watts. */
export function horsepower(value: number): number {
  return value * 550 * POUND_FORCE * FOOT;
}

/** US gallons a minute in cubic metres a second. */
export function gallonsPerMinute(value: number): number {
  return (value * 231 * INCH ** 3) / 60;
}

/** Pounds for each square inch in pascals. */
export function poundsPerSquareInch(value: number): number {
  return (value * POUND_FORCE) / INCH ** 2;
}
