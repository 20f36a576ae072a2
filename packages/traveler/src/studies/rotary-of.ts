import type { SpeedRange } from "@bitwright/engine";
import type { ResolvedRig } from "../document/resolved-traveler.ts";

/** A rotary with no slowest speed of its own still has to turn; slower than this no bit is run [rad/s]. */
export const LEAST_TURNING = (10 * 2 * Math.PI) / 60;

/** The speeds that a rig's rotary turns. */
export function rotaryOf({ rotarySpeedMin, rotarySpeedMax, rotarySpeeds }: ResolvedRig): SpeedRange {
  return {
    slowest: Math.max(rotarySpeedMin, LEAST_TURNING),
    fastest: rotarySpeedMax,
    ...(rotarySpeeds ? { fixed: rotarySpeeds } : {}),
  };
}
