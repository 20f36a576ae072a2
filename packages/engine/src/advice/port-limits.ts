import { INCH } from "../quantity/index.ts";

const FOOT = 0.3048;

/**
 * Step in which port drills come [m].
 *
 * @source (c) common practice, no source: 1/32 in
 */
export const PORT_STEP = INCH / 32;

/**
 * Largest port that a wing of these bits leaves room for, as a share of the hole diameter [-].
 *
 * @source (c) common practice, no source
 */
export const LARGEST_PORT_SHARE = 0.15;

/**
 * Port speed aimed at: low in the window, so that the ports come out large [m/s].
 *
 * @source (c) common practice, no source: 80 ft/s
 */
export const AIMED_PORT_SPEED = 80 * FOOT;

/**
 * Port speed aimed at where the face may ball [m/s].
 *
 * @source (c) common practice, no source: 120 ft/s
 */
export const AIMED_PORT_SPEED_STICKY = 120 * FOOT;
