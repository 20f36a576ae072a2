import type { Band } from "../quantity/index.ts";

/**
 * What arrives at the string of what the engine gives to its turning, its feed and its hoist [-]: a pumped-oil drive at the
 * low side, gears and a shaft at the high one.
 *
 * @source (c) common practice, no source
 */
export const ROTARY_EFFICIENCY: Band = { low: 0.65, mid: 0.75, high: 0.85 };

/**
 * What arrives in the fluid of what the engine gives to the mud pump, drive and pump together [-].
 *
 * @source (c) common practice, no source
 */
export const PUMP_EFFICIENCY: Band = { low: 0.6, mid: 0.7, high: 0.8 };

/**
 * Share of its rated power that an engine spends on itself and on what it turns along: fan, alternator, oil pumps that idle,
 * and the worse use of fuel at part load [-].
 *
 * @source (c) common practice, no source
 */
export const ENGINE_OWN_SHARE = 0.15;

/**
 * Load from which an engine has little left for a hard streak, as a share of its rated power [-].
 *
 * @source (c) common practice, no source
 */
export const FULL_ENGINE_SHARE = 0.85;

/**
 * Fuel of a compressor's engine over that of drilling alone, for connections and idling [-].
 *
 * @source (a) Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual: they add 20 %
 */
export const COMPRESSOR_CONNECTION_FACTOR = 1.2;
