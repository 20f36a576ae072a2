import type { RockResponse } from "../ground/index.ts";
import { largest } from "../quantity/index.ts";
import type { EdgeLoads } from "./edge-loads.ts";
import {
  CARBIDE_CONDUCTIVITY,
  type CoolingFilm,
  cutterThermalResponse,
  flatHeat,
  type RockHeat,
} from "./flat-temperature.ts";

/** What surrounds a hot cutter. */
export interface HeatConditions {
  readonly rock: RockHeat;
  /** Temperature of the fluid at the bit [K]. */
  readonly fluidTemperature: number;
  /** Conductivity of the cutter, default that of carbide [W/(m·K)]. */
  readonly cutterConductivity?: number;
  /**
   * Cooling by the fluid, one film for all cutters or one for each in the order of the layout; left out, the heat of the
   * flat meets no film and the temperature is a low guess.
   */
  readonly film?: CoolingFilm | readonly CoolingFilm[];
}

/** What heats the cutters, beside their loads. */
interface HeatedBit {
  readonly response: RockResponse;
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
}

/**
 * Mean temperature of each cutter's rubbing surface; that of the fluid where nothing rubs.
 *
 * Only contact heats: the flat, and the chamfer where it presses beyond what cutting asks. Its speed is that of the
 * cutter's drag, T ω / F_t; its length along travel is the rubbing area over the width that rubs. See `flatHeat`.
 *
 * @throws RangeError when a property is not positive or films are not one for each cutter
 * @source (b) Glowka & Stone 1985, SPE Journal, recalled; taken over to a rubbing chamfer here
 */
export function contactTemperatures(
  loads: EdgeLoads,
  { response, rotarySpeed, heat }: HeatedBit & { readonly heat: HeatConditions },
): Float64Array {
  const { rock, fluidTemperature, film, cutterConductivity = CARBIDE_CONDUCTIVITY } = heat;
  const isRow = (films: typeof film): films is readonly CoolingFilm[] => Array.isArray(films);
  if (isRow(film) && film.length !== loads.contactArea.length) {
    throw new RangeError(`film must be one for each of ${loads.contactArea.length} cutters, got ${film.length}`);
  }
  return loads.contactArea.map((flatArea, cutter) => {
    const own = isRow(film) ? film[cutter] : film;
    if (!(flatArea > 0 && loads.tangential[cutter] > 0)) return fluidTemperature;
    const { rise } = flatHeat({
      flatFriction: response.flatFriction,
      flatNormal: loads.contactNormal[cutter],
      speed: (rotarySpeed * loads.torque[cutter]) / loads.tangential[cutter],
      flatArea,
      flatLength: flatArea / loads.contactWidth[cutter],
      rock,
      cutterResponse: cutterThermalResponse({ flatArea, cutterConductivity, ...(own ? { film: own } : {}) }),
    });
    return fluidTemperature + rise;
  });
}

/**
 * Temperature of the hottest rubbing surface of the bit, as a limit on it asks for.
 *
 * @returns temperature [K]
 * @throws RangeError when there are no heat conditions, or as `contactTemperatures` does
 * @source (d) largest of `contactTemperatures`
 */
export function hottestContact(
  loads: EdgeLoads,
  { response, rotarySpeed, heat }: HeatedBit & { readonly heat: HeatConditions | undefined },
): number {
  if (!heat) throw new RangeError("a limit on contact temperature needs the heat conditions");
  return largest(contactTemperatures(loads, { response, rotarySpeed, heat }));
}
