import { largest } from "../quantity/index.ts";
import { rateOfPenetration } from "./advance.ts";
import { type HeatConditions, hottestContact } from "./cutter-heat.ts";
import type { BitInRock, StateMeasure } from "./drilled-state.ts";
import type { RateLimitName } from "./largest-rate.ts";

/**
 * What each limit of a rate looks at in a state of drilling, at one speed.
 *
 * Torque times speed is the power, advance times speed over a turn the rate; exposure is held against the deepest cut of all.
 * The measure of heat throws where no heat conditions are given.
 *
 * @source (d) kinematics; Glowka & Stone 1985 for heat
 */
export function limitMeasures({
  response,
  rotarySpeed,
  heat,
}: Pick<BitInRock, "response"> & {
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
  readonly heat?: HeatConditions;
}): Readonly<Record<RateLimitName, StateMeasure>> {
  return {
    weight: ({ bit }) => bit.weight,
    torque: ({ bit }) => bit.torque,
    power: ({ bit }) => bit.torque * rotarySpeed,
    advance: ({ advance }) => advance,
    exposure: ({ loads }) => largest(loads.deepest),
    rate: ({ advance }) => rateOfPenetration({ advance, rotarySpeed }),
    contactTemperature: ({ loads }) => hottestContact(loads, { response, rotarySpeed, heat }),
  };
}
