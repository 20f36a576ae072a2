/**
 * Conversion factors, each written once and built from definitions. The engine knows SI only; these live at its edge.
 * A non-SI unit is given here as its size in coherent SI.
 */
import { FRESH_WATER_DENSITY, STANDARD_GRAVITY } from "@bitwright/engine";

/**
 * Inch [m].
 *
 * @source (a) exact by definition, international yard and pound agreement 1959
 */
export const INCH = 0.0254;

/**
 * Foot, twelve inches [m].
 *
 * @source (a) exact by definition, international yard and pound agreement 1959
 */
export const FOOT = 12 * INCH;

/**
 * Pound of mass [kg].
 *
 * @source (a) exact by definition, international yard and pound agreement 1959
 */
export const POUND = 0.45359237;

/**
 * Pound of force: the weight of a pound in standard gravity [N].
 *
 * @source (d) pound times standard gravity
 */
export const POUND_FORCE = POUND * STANDARD_GRAVITY;

/**
 * US liquid gallon, 231 cubic inches [m³].
 *
 * @source (a) exact by definition, US Code of Federal Regulations / NIST Handbook 44 appendix C
 */
export const GALLON = 231 * INCH ** 3;

/**
 * Barrel of 42 US gallons [m³].
 *
 * @source (b) NIST Handbook 44 appendix C, petroleum barrel, recalled
 */
export const BARREL = 42 * GALLON;

/**
 * Pound of force on a square inch [Pa].
 *
 * @source (d) pound of force over inch squared
 */
export const PSI = POUND_FORCE / INCH ** 2;

/**
 * Foot-pound of torque or work [N m].
 *
 * @source (d) foot times pound of force
 */
export const FOOT_POUND = FOOT * POUND_FORCE;

/**
 * Mechanical horsepower, 550 foot-pounds a second [W].
 *
 * @source (b) 550 foot-pounds a second by definition, recalled
 */
export const HORSEPOWER = 550 * FOOT_POUND;

/**
 * Standard atmosphere [Pa].
 *
 * @source (a) exact by definition, 10th General Conference on Weights and Measures 1954, resolution 4
 */
export const ATMOSPHERE = 101_325;

/**
 * Minute [s].
 *
 * @source (a) exact by definition, SI Brochure table 8
 */
export const MINUTE = 60;

/**
 * Hour [s].
 *
 * @source (a) exact by definition, SI Brochure table 8
 */
export const HOUR = 3600;

/**
 * Degree of arc [rad].
 *
 * @source (a) exact by definition, SI Brochure table 8
 */
export const DEGREE = Math.PI / 180;

/**
 * One turn [rad].
 *
 * @source (d) full circle
 */
export const TURN = 2 * Math.PI;

/**
 * Centipoise, a thousandth of a pascal second [Pa s].
 *
 * @source (a) exact by definition of the poise, 0.1 Pa s
 */
export const CENTIPOISE = 1e-3;

/**
 * Ice point, zero of the Celsius scale [K].
 *
 * @source (a) exact by definition, SI Brochure 2.3.1
 */
export const CELSIUS_ZERO = 273.15;

/**
 * Zero of the Fahrenheit scale below its own zero: degrees from absolute zero to 0 °F, on that scale [°F].
 *
 * @source (d) 9/5 of the Celsius zero less 32
 */
export const FAHRENHEIT_BELOW_ZERO = (CELSIUS_ZERO * 9) / 5 - 32;

/**
 * Density that a specific gravity of one stands for [kg/m³].
 *
 * @source (b) density of air-free water at 15 °C, recalled from handbook tables: 999.1
 */
export const SPECIFIC_GRAVITY_ONE = FRESH_WATER_DENSITY;

export { STANDARD_GRAVITY };
