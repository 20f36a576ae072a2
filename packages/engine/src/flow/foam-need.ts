import { AIR_GAS_CONSTANT, airDensity, STANDARD_AIR_TEMPERATURE, STANDARD_PRESSURE } from "../fluid/index.ts";
import {
  bracketedRoot,
  FRESH_WATER_DENSITY,
  requireNotNegative,
  requirePositive,
  STANDARD_GRAVITY,
} from "../quantity/index.ts";
import { conduitArea } from "./conduit.ts";
import { USUAL_TEMPERATURE_GRADIENT } from "./minimum-air-flow.ts";

/**
 * Speed of stable foam at the bottom that brings chips up, 90 ft/min [m/s].
 *
 * @source (a) Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual
 */
export const FOAM_LIFTING_SPEED = 0.4572;

/** What `foamNeed` needs. */
export interface FoamNeedInput {
  /** Diameter of the hole D [m]. */
  readonly holeDiameter: number;
  /** Outer diameter of the pipe d [m]. */
  readonly pipeDiameter: number;
  /** Depth [m]. */
  readonly depth: number;
  /** Water and soap injected with the air [m³/s]. */
  readonly injection: number;
  /** Rate of penetration [m/s]. */
  readonly rate: number;
  /** Density of the rock [kg/m³]. */
  readonly rockDensity: number;
  /** Temperature at the top of the annulus; 60 °F where not given [K]. */
  readonly surfaceTemperature?: number;
  /** Warming with depth; the usual gradient where not given [K/m]. */
  readonly temperatureGradient?: number;
  /** Absolute pressure at the top of the annulus; sea level where not given [Pa]. */
  readonly surfacePressure?: number;
}

/** The air that goes with a foam, and what the foam then is. */
export interface FoamNeed {
  /** Air counted as standard air, sea level and 60 °F; 0 where the liquid alone rises fast enough [m³/s]. */
  readonly leastAirFlow: number;
  /** Absolute pressure at the bottom [Pa]. */
  readonly bottomPressure: number;
  /** Share of gas in the foam at the bottom [-]. */
  readonly bottomQuality: number;
  /** Share of gas in the foam at the top [-]. */
  readonly topQuality: number;
  /** Speed of the foam at the top of the annulus [m/s]. */
  readonly topSpeed: number;
}

/**
 * The air that makes of an injected liquid a foam that brings chips up from a depth.
 *
 * The foam's column is marched down, dp/dz = g (w_l + w_g + w_s)/(q_l + q_g), q_g = w_g R T/p, without friction; the air is the
 * least for which (q_l + q_g)/A at the bottom is the lifting speed. Friction adds pressure at the bottom, and so does thick
 * foam in a narrow annulus: the air read here is on the low side, by a fifth and more in deep or narrow holes.
 *
 * @throws RangeError when an input is out of range or the pipe does not fit the hole
 * @source (d) column of gas and liquid; lifting speed after Lyons, Guo & Seidel 2001
 * @example
 * foamNeed({ holeDiameter: 0.155575, pipeDiameter: 0.0889, depth: 100, injection: 6e-4, rate: 0.005, rockDensity: 2600 }).leastAirFlow // → 0.0107 (± 1 %)
 */
export function foamNeed(input: FoamNeedInput): FoamNeed {
  const { holeDiameter, pipeDiameter, depth, injection, rate, rockDensity } = input;
  requirePositive({ depth, injection, rockDensity });
  requireNotNegative({ rate });
  const area = conduitArea({ shape: "annulus", holeDiameter, pipeDiameter });
  const wanted = FOAM_LIFTING_SPEED * area;
  const standardDensity = airDensity({ pressure: STANDARD_PRESSURE, temperature: STANDARD_AIR_TEMPERATURE });
  const at = (leastAirFlow: number) => foamColumn(input, leastAirFlow * standardDensity);
  const lack = (leastAirFlow: number) => (injection + at(leastAirFlow).bottomGas) / wanted - 1;
  let leastAirFlow = 0;
  if (lack(0) < 0) {
    let high = wanted;
    while (lack(high) < 0) high *= 2;
    leastAirFlow = bracketedRoot({ f: lack, low: 0, high, residual: 1e-9 });
  }
  const { bottomPressure, bottomGas, topGas } = at(leastAirFlow);
  return {
    leastAirFlow,
    bottomPressure,
    bottomQuality: bottomGas / (injection + bottomGas),
    topQuality: topGas / (injection + topGas),
    topSpeed: (injection + topGas) / area,
  };
}

/** Steps of the march; twice as many change the air by less than 1e-6. */
const STEPS = 100;

function foamColumn(input: FoamNeedInput, airMass: number) {
  const { holeDiameter, depth, injection, rate, rockDensity } = input;
  const { surfaceTemperature = STANDARD_AIR_TEMPERATURE, temperatureGradient = USUAL_TEMPERATURE_GRADIENT } = input;
  const { surfacePressure = STANDARD_PRESSURE } = input;
  requirePositive({ surfacePressure });
  const solids = (Math.PI / 4) * holeDiameter ** 2 * rate * rockDensity;
  const mass = injection * FRESH_WATER_DENSITY + airMass + solids;
  const gas = (z: number, pressure: number) =>
    (airMass * AIR_GAS_CONSTANT * (surfaceTemperature + temperatureGradient * z)) / pressure;
  const gradient = (z: number, pressure: number) => (STANDARD_GRAVITY * mass) / (injection + gas(z, pressure));
  const step = depth / STEPS;
  let pressure = surfacePressure;
  for (let n = 0; n < STEPS; n++) {
    const z = n * step;
    const half = pressure + (step / 2) * gradient(z, pressure);
    pressure += step * gradient(z + step / 2, half);
  }
  return { bottomPressure: pressure, bottomGas: gas(depth, pressure), topGas: gas(0, surfacePressure) };
}
