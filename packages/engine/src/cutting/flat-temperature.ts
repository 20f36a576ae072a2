import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/**
 * Temperature up to which the flat wears at its usual pace, 350 °C [K].
 *
 * @source (b) Glowka & Stone 1986, SPE Drilling Engineering, recalled
 */
export const WEAR_QUICKENS_TEMPERATURE = 623.15;

/**
 * Limit of an ordinary diamond table that still holds its cobalt, 750 °C [K].
 *
 * @source (b) Glowka & Stone 1986, SPE Drilling Engineering, recalled
 */
export const COBALT_TABLE_LIMIT = 1023.15;

/**
 * Limit of a leached diamond table in inert surroundings, about 1200 °C [K].
 *
 * @source (b) Glowka & Stone 1986, SPE Drilling Engineering, recalled
 */
export const LEACHED_TABLE_LIMIT = 1473.15;

/**
 * Conductivity of the tungsten carbide behind the table [W/(m·K)].
 *
 * @source (b) recalled from property tables, about 100
 */
export const CARBIDE_CONDUCTIVITY = 100;

/** How the rock under a flat takes up heat. */
export interface RockHeat {
  /** Thermal conductivity [W/(m·K)]. */
  readonly conductivity: number;
  /** Thermal diffusivity [m²/s]. */
  readonly diffusivity: number;
}

/** A flat that slides over rock. */
export interface SlidingFlat {
  /** Friction of the flat on rock [-]. */
  readonly flatFriction: number;
  /** Normal load on the flat [N]. */
  readonly flatNormal: number;
  /** Speed of the cutter over the rock [m/s]. */
  readonly speed: number;
  /** Area of the flat [m²]. */
  readonly flatArea: number;
  /** Length of the flat along travel [m]. */
  readonly flatLength: number;
  readonly rock: RockHeat;
  /** Mean temperature rise of the flat for each unit of heat flux into the cutter, f [m²·K/W]. */
  readonly cutterResponse: number;
}

/** The frictional heat at a flat and where it goes. */
export interface FlatHeat {
  /** Frictional heat for each area of flat, q [W/m²]. */
  readonly flux: number;
  /** X, the rock's pull on the heat against the cutter's [-]. */
  readonly rockPull: number;
  /** Share of the heat that enters the cutter, 1/(1 + X) [-]. */
  readonly cutterShare: number;
  /** Mean rise of the flat over the fluid [K]. */
  readonly rise: number;
}

const rockPullOf = ({ cutterResponse, rock, speed, flatLength }: Omit<SlidingFlat, "flatNormal">): number =>
  ((3 * Math.sqrt(Math.PI)) / 4) *
  cutterResponse *
  rock.conductivity *
  Math.sqrt(speed / (rock.diffusivity * flatLength));

function requireFlat(flat: Omit<SlidingFlat, "flatNormal">): void {
  const { flatFriction, speed, flatArea, flatLength, cutterResponse, rock } = flat;
  requireNotNegative({ flatFriction, speed });
  requirePositive({ flatArea, flatLength, cutterResponse });
  requirePositive({ conductivity: rock.conductivity, diffusivity: rock.diffusivity });
}

/**
 * Frictional heat at a wear flat and its split between cutter and rock.
 *
 * q = μ F v / A_w, X = (3√π/4) f k_r √(v/(χ l_w)), rise = q f/(1 + X): the mean rise of the rock under a moving strip,
 * (4/(3√π)) (q/k_r) √(χ l/v), set equal to the cutter's. For flats that move fast enough that heat runs into the rock
 * at right angles to travel (v l/χ well above 1).
 *
 * @throws RangeError when an area, length or property is not positive, or load, friction or speed negative
 * @source (b) Glowka & Stone 1985, SPE Journal, recalled, derived again from the strip solution
 */
export function flatHeat(flat: SlidingFlat): FlatHeat {
  requireFlat(flat);
  requireNotNegative({ flatNormal: flat.flatNormal });
  const flux = (flat.flatFriction * flat.flatNormal * flat.speed) / flat.flatArea;
  const rockPull = rockPullOf(flat);
  return { flux, rockPull, cutterShare: 1 / (1 + rockPull), rise: (flux * flat.cutterResponse) / (1 + rockPull) };
}

/**
 * Mean rise of a wear flat over the fluid.
 *
 * ΔT = q f/(1 + X), see `flatHeat`.
 *
 * @returns rise [K]
 * @throws RangeError when an area, length or property is not positive, or load, friction or speed negative
 * @source (b) Glowka & Stone 1985, SPE Journal, recalled, derived again from the strip solution
 * @example
 * flatTemperatureRise({ flatFriction: 0.1, flatNormal: 1000, speed: 1, flatArea: 9e-6, flatLength: 3e-3, rock: { conductivity: 3, diffusivity: 1.3e-6 }, cutterResponse: 1.4367e-5 }) // → 83.25
 */
export function flatTemperatureRise(flat: SlidingFlat): number {
  return flatHeat(flat).rise;
}

/**
 * Normal load that brings a flat to a temperature.
 *
 * F = (T - T_f) A_w (1 + X)/(μ v f).
 *
 * @returns normal load on the flat [N]
 * @throws RangeError when an input is not positive
 * @source (b) Glowka & Stone 1985, SPE Journal, recalled
 * @example
 * criticalFlatLoad({ flatFriction: 0.1, speed: 1, flatArea: 9e-6, flatLength: 3e-3, rock: { conductivity: 3, diffusivity: 1.3e-6 }, cutterResponse: 5e-5, allowedRise: 720 }) // → 5434
 */
export function criticalFlatLoad({
  allowedRise,
  ...flat
}: Omit<SlidingFlat, "flatNormal"> & {
  /** Rise over the fluid that is allowed [K]. */
  readonly allowedRise: number;
}): number {
  requireFlat(flat);
  requirePositive({ allowedRise, flatFriction: flat.flatFriction, speed: flat.speed });
  const perLoad = (flat.flatFriction * flat.speed * flat.cutterResponse) / flat.flatArea;
  return (allowedRise * (1 + rockPullOf(flat))) / perLoad;
}

/**
 * Least thermal response of a cutter: a heated disc of the flat's area on a half-space of carbide, perfectly cooled far
 * away, plus the film between cutter and fluid.
 *
 * f = (8/(3π)) √(A_w/π)/k_c + A_w/(h A_c), h the film coefficient and A_c the cooled surface. Without the film it is a
 * lower bound; plausible values run to 2e-4 m²·K/W.
 *
 * @returns f [m²·K/W]
 * @throws RangeError when an input is not positive
 * @source (d) mean temperature of a uniformly heated disc on a half-space, Carslaw & Jaeger; film term added in series
 * @example
 * cutterThermalResponse({ flatArea: 9e-6, cutterConductivity: 100 }) // → 1.43671e-5
 * cutterThermalResponse({ flatArea: 9e-6, cutterConductivity: 100, film: { coefficient: 5000, area: 2e-4 } }) // → 2.33671e-5
 */
export function cutterThermalResponse({
  flatArea,
  cutterConductivity,
  film,
}: {
  /** Area of the flat [m²]. */
  readonly flatArea: number;
  /** Conductivity of the cutter [W/(m·K)]. */
  readonly cutterConductivity: number;
  /** Cooling by the fluid; left out for the lower bound. */
  readonly film?: CoolingFilm;
}): number {
  requirePositive({ flatArea, cutterConductivity });
  const body = ((8 / (3 * Math.PI)) * Math.sqrt(flatArea / Math.PI)) / cutterConductivity;
  if (!film) return body;
  requirePositive({ filmCoefficient: film.coefficient, cooledArea: film.area });
  return body + flatArea / (film.coefficient * film.area);
}

/** How the fluid cools a cutter. */
export interface CoolingFilm {
  /** Film coefficient between cutter and fluid [W/(m²·K)]. */
  readonly coefficient: number;
  /** Surface of the cutter that the fluid reaches [m²]. */
  readonly area: number;
}
