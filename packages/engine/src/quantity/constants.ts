/**
 * Standard acceleration of free fall [m/s²].
 *
 * @source (a) exact by definition, 3rd General Conference on Weights and Measures 1901, resolution 2
 */
export const STANDARD_GRAVITY = 9.80665;

/**
 * One inch [m].
 *
 * @source (a) exact by definition: international yard and pound agreement 1959
 */
export const INCH = 0.0254;

/**
 * Density of fresh water at 15 °C, the reference for specific gravities [kg/m³].
 *
 * @source (b) density of air-free water at 15 °C, recalled from handbook tables: 999.1
 */
export const FRESH_WATER_DENSITY = 999.1;
