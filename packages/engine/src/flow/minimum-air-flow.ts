import { AIR_GAS_CONSTANT, airDensity, STANDARD_AIR_TEMPERATURE, STANDARD_PRESSURE } from "../fluid/index.ts";
import {
  bracketedRoot,
  FRESH_WATER_DENSITY,
  requireNotNegative,
  requirePositive,
  STANDARD_GRAVITY,
} from "../quantity/index.ts";
import { conduitArea, hydraulicDiameter } from "./conduit.ts";
import { STEEL_ROUGHNESS } from "./conduit-state.ts";

/**
 * Kinetic pressure of the return at the bottom that lifts chips, 3.0 ft·lbf/ft³ [Pa]: standard air at 3000 ft/min.
 *
 * @source (a) Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual, after Angel 1957
 */
export const LIFTING_KINETIC_PRESSURE = 143.641;

/**
 * Roughness height of an open hole wall in air drilling, 0.01 ft [m].
 *
 * @source (b) Lyons, Guo & Seidel 2001, recalled; for firm limestone or dolomite
 */
export const OPEN_HOLE_ROUGHNESS = 0.003048;

/**
 * Warming of the ground with depth taken in air drilling, 0.01 °F/ft [K/m].
 *
 * @source (b) Angel 1957, recalled
 */
export const USUAL_TEMPERATURE_GRADIENT = 0.018227;

/** What `airKineticPressure` needs. */
export interface AirKineticPressureInput {
  /** Density of the air ρ [kg/m³]. */
  readonly density: number;
  /** Speed v [m/s]. */
  readonly speed: number;
}

/**
 * Kinetic pressure of moving air, the measure of what it lifts.
 *
 * ρ v²/2.
 *
 * @returns kinetic pressure [Pa]
 * @throws RangeError when an input is not positive
 * @source (b) Angel 1957, recalled
 * @example
 * airKineticPressure({ density: 1.2222, speed: 15.24 }) // → 141.93
 */
export function airKineticPressure({ density, speed }: AirKineticPressureInput): number {
  requirePositive({ density, speed });
  return (density * speed ** 2) / 2;
}

/** What `minimumAirFlow` needs. */
export interface MinimumAirFlowInput {
  /** Diameter of the hole D [m]. */
  readonly holeDiameter: number;
  /** Outer diameter of the pipe d [m]. */
  readonly pipeDiameter: number;
  /** Depth [m]. */
  readonly depth: number;
  /** Rate of penetration [m/s]. */
  readonly rate: number;
  /** Density of the rock [kg/m³]. */
  readonly rockDensity: number;
  /** Water injected as mist, which is lifted as the chips are; none where not given [m³/s]. */
  readonly injection?: number;
  /** Air temperature at the top of the annulus; 60 °F where not given [K]. */
  readonly surfaceTemperature?: number;
  /** Warming with depth; the usual gradient where not given [K/m]. */
  readonly temperatureGradient?: number;
  /** Absolute pressure at the top of the annulus; sea level where not given [Pa]. */
  readonly surfacePressure?: number;
  /** Roughness height of the hole wall; open hole where not given [m]. */
  readonly holeRoughness?: number;
  /** Roughness height of the pipe; steel where not given [m]. */
  readonly pipeRoughness?: number;
  /** Kinetic pressure to be kept at the bottom; the lifting value where not given [Pa]. */
  readonly kineticPressure?: number;
}

/**
 * Least flow of standard air that lifts chips from a depth, dry air in a vertical hole.
 *
 * Marches the pressure down the annulus, dp/dz = ρ g (1 + w_s/w_g)(1 + f v²/(2 g (D - d))), with ρ = p/(R T),
 * v = w_g/(ρ A), w_s the mass of chips and mist and w_g that of air a second, f = [2 log₁₀((D - d)/e) + 1.14]⁻² (Darcy) and e the
 * roughness weighted by the squares of the diameters; then finds the flow for which ρ v²/2 at the bottom is the lifting
 * value. Reads 7 % above the one published chart value checked. A down-hole hammer often needs more than this.
 *
 * @returns flow counted as standard air, sea level and 60 °F [m³/s]
 * @throws RangeError when an input is out of range or the pipe does not fit the hole
 * @source (d) gas column with friction and solids, after the form of Angel 1957
 * @example
 * minimumAirFlow({ holeDiameter: 0.155575, pipeDiameter: 0.0889, depth: 152.4, rate: 0.00508, rockDensity: 2700 }) // → 0.2384 (± 0.5 %)
 */
export function minimumAirFlow(input: MinimumAirFlowInput): number {
  const { holeDiameter, pipeDiameter, depth, rate, rockDensity } = input;
  const wanted = input.kineticPressure ?? LIFTING_KINETIC_PRESSURE;
  requirePositive({ rockDensity, depth, wanted });
  requireNotNegative({ rate, injection: input.injection ?? 0 });
  const annulus = { shape: "annulus", holeDiameter, pipeDiameter } as const;
  const surfaceDensity = airDensity({ pressure: STANDARD_PRESSURE, temperature: STANDARD_AIR_TEMPERATURE });
  const atSurface = conduitArea(annulus) * Math.sqrt((2 * wanted) / surfaceDensity);
  const shortfall = (flow: number) => bottomKineticPressure(input, flow * surfaceDensity) / wanted - 1;
  let high = 2 * atSurface;
  while (shortfall(high) < 0) high *= 2;
  return bracketedRoot({ f: shortfall, low: atSurface / 10, high, residual: 1e-9 });
}

/** Steps of the march; twice as many change the flow by less than 1e-6. */
const STEPS = 100;

function bottomKineticPressure(input: MinimumAirFlowInput, massFlow: number): number {
  const { holeDiameter, pipeDiameter, depth, rate, rockDensity } = input;
  const { surfaceTemperature = STANDARD_AIR_TEMPERATURE, temperatureGradient = USUAL_TEMPERATURE_GRADIENT } = input;
  const {
    surfacePressure = STANDARD_PRESSURE,
    holeRoughness = OPEN_HOLE_ROUGHNESS,
    pipeRoughness = STEEL_ROUGHNESS,
  } = input;
  const annulus = { shape: "annulus", holeDiameter, pipeDiameter } as const;
  const area = conduitArea(annulus);
  const gap = hydraulicDiameter(annulus);
  const roughness =
    (holeRoughness * holeDiameter ** 2 + pipeRoughness * pipeDiameter ** 2) / (holeDiameter ** 2 + pipeDiameter ** 2);
  const friction = (2 * Math.log10(gap / roughness) + 1.14) ** -2;
  const chips = (Math.PI / 4) * holeDiameter ** 2 * rate * rockDensity;
  const loading = 1 + (chips + (input.injection ?? 0) * FRESH_WATER_DENSITY) / massFlow;
  const density = (z: number, pressure: number) =>
    pressure / (AIR_GAS_CONSTANT * (surfaceTemperature + temperatureGradient * z));
  const gradient = (z: number, pressure: number) => {
    const rho = density(z, pressure);
    const speed = massFlow / (rho * area);
    return loading * rho * (STANDARD_GRAVITY + (friction * speed ** 2) / (2 * gap));
  };
  const step = depth / STEPS;
  let pressure = surfacePressure;
  for (let n = 0; n < STEPS; n++) {
    const z = n * step;
    const k1 = gradient(z, pressure);
    const k2 = gradient(z + step / 2, pressure + (step / 2) * k1);
    const k3 = gradient(z + step / 2, pressure + (step / 2) * k2);
    const k4 = gradient(z + step, pressure + step * k3);
    pressure += (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  const rho = density(depth, pressure);
  return airKineticPressure({ density: rho, speed: massFlow / (rho * area) });
}
