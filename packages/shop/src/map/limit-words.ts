import type { RateLimitName } from "@bitwright/engine";

/** What happens where a limit is met, for the line on a map. */
export const LINE_WORDS: Readonly<Record<RateLimitName, string>> = {
  weight: "no more weight from rig and pipe",
  torque: "no more torque from the rotary",
  power: "no more power from the rotary",
  advance: "advance limit",
  exposure: "wings rub beyond this",
  rate: "flow cleans no more",
  contactTemperature: "edges too hot",
};

/** The limits by name, for tables. */
export const LIMIT_NAMES: Readonly<Record<RateLimitName, string>> = {
  weight: "rig and pipe weight",
  torque: "rotary torque",
  power: "rotary power",
  advance: "advance",
  exposure: "exposure of the cutters",
  rate: "cleaning by the flow",
  contactTemperature: "heat at the edges",
};

/** The limits in a word, for lists. */
export const LIMIT_SHORT: Readonly<Record<RateLimitName, string>> = {
  weight: "weight",
  torque: "torque",
  power: "power",
  advance: "advance",
  exposure: "exposure",
  rate: "cleaning",
  contactTemperature: "heat",
};
