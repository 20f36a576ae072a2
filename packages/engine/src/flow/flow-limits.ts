import type { Band } from "../quantity/index.ts";

/**
 * Port below which small lumps plug it, 3/8 in [m].
 *
 * @source (c) common practice, no source
 */
export const LEAST_PORT_DIAMETER = 0.009525;

/**
 * Port below which pit suction without a screen plugs it, 1/2 in [m].
 *
 * @source (c) common practice, no source
 */
export const LEAST_PORT_DIAMETER_UNSCREENED = 0.0127;

/**
 * Largest lump that may come through the pump, over the smallest port [-].
 *
 * @source (c) common practice, no source: screen openings at most half the smallest port
 */
export const LARGEST_LUMP_OVER_PORT = 0.5;

/**
 * Port speeds that practice keeps to, 60 to 250 ft/s, and 300 ft/s where sand erodes steel [m/s].
 *
 * @source (c) common practice, no source
 */
export const PORT_SPEED_RANGE: Band = { low: 18.288, mid: 76.2, high: 91.44 };

/**
 * Hydraulic power for each area of hole below which wet clay balls on a bit with small slots, 0.3 hp/in² [W/m²].
 *
 * @source (c) common practice, no source
 */
export const BALLING_POWER_PER_HOLE_AREA = 3.4675e5;

/**
 * Slot area over hole area below which wet clay balls when hydraulic power is low as well [-].
 *
 * @source (c) common practice, no source
 */
export const BALLING_SLOT_SHARE = 0.2;

/**
 * Least slot area over hole area in rock [-].
 *
 * @source (c) common practice, no source
 */
export const LEAST_SLOT_SHARE_IN_ROCK = 0.15;

/**
 * Least slot area over hole area in sticky shale or clay [-].
 *
 * @source (c) common practice, no source
 */
export const LEAST_SLOT_SHARE_IN_CLAY = 0.25;

/**
 * Slot speed over the uphole speed that practice keeps below, 3 to 5 [-].
 *
 * @source (c) common practice, no source
 */
export const SLOT_SPEED_RATIO: Band = { low: 3, mid: 4, high: 5 };

/**
 * Length of drill pipe that loses as much as hose, swivel and kelly of a water-well rig, 50 to 100 ft [m].
 *
 * @source (c) common practice, no source
 */
export const SURFACE_GEAR_EQUIVALENT_LENGTH: Band = { low: 15.24, mid: 22.86, high: 30.48 };
