import {
  advanceWhere,
  type BitInRock,
  type CoolingFilm,
  type CuttingKernel,
  contactTemperatures,
  type DrilledState,
  drillAtAdvance,
  type EdgeTrace,
  limitMeasures,
  type RateLimitName,
  rateOfPenetration,
  type StateMeasure,
} from "../cutting/index.ts";
import { largest, requirePositive } from "../quantity/index.ts";
import type { BearingPads } from "./bearing-pads.ts";
import { type EdgeWearRates, edgeWearRates } from "./edge-wear-rates.ts";
import type { HeldLimits, LifeBed } from "./life-input.ts";
import type { OnWall } from "./wall-wear.ts";
import { relativeAbrasivity, wearHeatFactor } from "./wear-law.ts";

/** The bit, worn as it is, drilling one bed. */
export interface StateInBed {
  readonly drilled: DrilledState;
  /** Rate of penetration [m/s]. */
  readonly rate: number;
  /** What holds the rate. */
  readonly binds: RateLimitName;
  /** Mean temperature of each cutter's rubbing surface [K]. */
  readonly temperatures: Float64Array;
  readonly wear: EdgeWearRates;
  /** What the wall does to the gauge. */
  readonly wall: OnWall;
}

/** What a worn bit brings to a bed. */
export interface WornBit {
  readonly trace: EdgeTrace;
  /** What runs the loops; the plain kernel where none is named. No figure depends on it. */
  readonly kernel?: CuttingKernel | undefined;
  /** Cooling of each cutter as it is worn. */
  readonly films?: readonly CoolingFilm[];
  /** Height of each tip over its wing that wear has left [m]. */
  readonly exposure?: readonly number[];
  /** Temperature of the fluid at the bit [K]. */
  readonly fluidTemperature: number;
  /** What the diamond table bears [K]. */
  readonly tableLimit: number;
  /** Wear coefficient in the reference sandstone, cold [m²/N]. */
  readonly wearCoefficient: number;
  /** Factor on wear at the table's limit [-]. */
  readonly multipleAtLimit: number;
  readonly pads?: BearingPads;
}

/**
 * The state that the weight of a bed gives, or the one at which torque, power, advance, rate or exposure holds the bit
 * sooner, with the temperature and the wear of every cutter in it.
 *
 * @throws RangeError when no advance carries the weight
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled; Glowka & Stone 1985; Archard 1953
 */
export function stateInBed(bit: WornBit, bed: LifeBed): StateInBed {
  const { trace, kernel, fluidTemperature, films, tableLimit, wearCoefficient, multipleAtLimit } = bit;
  const { response, rotarySpeed } = bed;
  const { drilled, binds } = heldState({ trace, response, kernel }, bed, bit.exposure);
  const temperatures = contactTemperatures(drilled.loads, {
    response,
    rotarySpeed,
    heat: { rock: bed.rock, fluidTemperature, ...(films ? { film: films } : {}) },
  });
  const inRock = wearCoefficient * relativeAbrasivity(bed.cerchar);
  const coefficients = temperatures.map(
    (temperature) => inRock * wearHeatFactor({ temperature, tableLimit, multipleAtLimit }),
  );
  return {
    drilled,
    rate: rateOfPenetration({ advance: drilled.advance, rotarySpeed }),
    binds,
    temperatures,
    wear: edgeWearRates({ trace, response, state: drilled, coefficients }),
    wall: {
      wearCoefficient: inRock,
      sideForce: drilled.bit.lateralForce,
      advance: drilled.advance,
      holeRadius: trace.holeRadius,
      contactStress: response.contactStress,
      kappa: response.kappa,
      ...(bit.pads ? { pads: bit.pads } : {}),
    },
  };
}

/** A cutter flush with its wing still has this much to go before the solver calls it touching [m]. */
const FLUSH = 1e-6;

function heldState(
  bitInRock: BitInRock,
  bed: LifeBed,
  exposure: readonly number[] | undefined,
): { drilled: DrilledState; binds: RateLimitName } {
  const { name, weight, rotarySpeed } = bed;
  requirePositive({ weight, rotarySpeed });
  let held: { drilled: DrilledState; binds: RateLimitName } | undefined;
  for (const { binds, measure, limit } of holdsOn(bed, exposure)) {
    if (held && !(measure(held.drilled) > limit)) continue;
    const advance = advanceWhere(bitInRock, measure, limit);
    if (advance === undefined || (held && advance >= held.drilled.advance)) continue;
    held = { drilled: drillAtAdvance(bitInRock, advance), binds };
  }
  if (!held)
    throw new RangeError(`no advance carries a weight of ${weight} in ${name}, and nothing else holds the bit`);
  return held;
}

interface Hold {
  readonly binds: RateLimitName;
  readonly measure: StateMeasure;
  readonly limit: number;
}

function holdsOn(
  { response, weight, rotarySpeed, limits = {} }: LifeBed,
  exposure: readonly number[] | undefined,
): Hold[] {
  const { torque, power, advance, rate } = limits;
  const measures = limitMeasures({ response, rotarySpeed });
  const holds = Object.entries({ weight, torque, power, advance, rate }).flatMap(([name, limit]): Hold[] => {
    const binds = name as keyof HeldLimits | "weight";
    return limit === undefined ? [] : [{ binds, measure: measures[binds], limit }];
  });
  if (exposure) {
    const used: StateMeasure = ({ loads }) =>
      largest(loads.deepest.map((depth, i) => depth / Math.max(FLUSH, exposure[i])));
    holds.push({ binds: "exposure", measure: used, limit: 1 });
  }
  return holds;
}
