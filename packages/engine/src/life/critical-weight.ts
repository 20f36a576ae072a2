import {
  type CuttingKernel,
  contactTemperatures,
  drillAtAdvance,
  type EdgeTrace,
  type HeatConditions,
  speedBounds,
} from "../cutting/index.ts";
import type { RockResponse } from "../ground/index.ts";
import { largest, requirePositive } from "../quantity/index.ts";

/** The weight at which the hottest cutter reaches a temperature at one rotary speed. */
export interface CriticalWeight {
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  /** The temperature reached [K]. */
  readonly temperature: number;
  /** Weight on bit there; absent where no weight gets any cutter so hot [N]. */
  readonly weight?: number;
  /** Rate of penetration at that weight [m/s]. */
  readonly rate?: number;
  /** Number of the cutter that gets there first, from 1 [-]. */
  readonly cutter?: number;
}

/** What a curve of critical weights is reckoned from. */
export interface CriticalWeightInput {
  /** The bit in the wear state that is looked at. A bit without flats and rubbing bevels heats nothing here. */
  readonly trace: EdgeTrace;
  readonly response: RockResponse;
  readonly heat: HeatConditions;
  /** Speeds to look at, in the order wanted [rad/s]. */
  readonly rotarySpeeds: readonly number[];
  /** Temperature of the hottest rubbing surface [K]. */
  readonly temperature: number;
  /** What runs the loops; the plain kernel where none is named. No figure depends on it. */
  readonly kernel?: CuttingKernel | undefined;
}

/**
 * For each rotary speed the weight at which the hottest cutter reaches a temperature: weight against speed, the curve to
 * stay under.
 *
 * Root of the hottest contact against advance. The contact load of a flat grows with the depth of cut only until the rock
 * bears on all of it; a bit whose flats stay cooler than that at this speed has no critical weight.
 *
 * @throws RangeError when a speed is not positive or the temperature is not over that of the fluid
 * @source (b) Glowka & Stone 1986, SPE Drilling Engineering, recalled, summed over the traced edges
 */
export function criticalWeights({
  trace,
  response,
  heat,
  rotarySpeeds,
  temperature,
  kernel,
}: CriticalWeightInput): CriticalWeight[] {
  requirePositive({ "temperature over the fluid": temperature - heat.fluidTemperature });
  return rotarySpeeds.map((rotarySpeed): CriticalWeight => {
    requirePositive({ rotarySpeed });
    const limited = { trace, response, kernel, limits: { contactTemperature: temperature }, heat };
    const [met] = speedBounds(limited, rotarySpeed);
    if (!met) return { rotarySpeed, temperature };
    const { bit, loads } = drillAtAdvance({ trace, response, kernel }, met.advance);
    const temperatures = contactTemperatures(loads, { response, rotarySpeed, heat });
    return {
      rotarySpeed,
      temperature,
      weight: bit.weight,
      rate: met.rate,
      cutter: temperatures.indexOf(largest(temperatures)) + 1,
    };
  });
}
