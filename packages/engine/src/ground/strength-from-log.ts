import {
  type Band,
  band,
  type Finding,
  given,
  recalledFrom,
  requireBetween,
  requirePositive,
  type Working,
} from "../quantity/index.ts";
import { nearestWords } from "./edit-distance.ts";
import type { Rock } from "./rock.ts";
import { rockById } from "./rock-table.ts";
import {
  LOG_INPUT_UNITS,
  type LogReading,
  type StrengthCorrelation,
  strengthCorrelations,
} from "./strength-correlations.ts";

/**
 * How far the strength of a sample commonly lies from that of a log correlation, as a factor either way [-].
 *
 * @source (b) scatter shown by Chang, Zoback & Khaksar 2006, recalled
 */
export const LOG_STRENGTH_SPREAD = 2;

/** A reading, and the correlation somebody chose for it by name. */
export interface StrengthFromLogInput extends LogReading {
  /** Id of the correlation; there is no default. */
  readonly correlation: string;
  /** Rock of the bed, to check the correlation against. */
  readonly rockId?: string;
  /** Rocks of the shop's own, where `rockId` may be one; such a rock counts as the one it was made from. */
  readonly shopRocks?: readonly Rock[];
  /** The part that findings speak of, for example the bed's name; default the correlation. */
  readonly where?: string;
}

/** Strength from a log. */
export interface StrengthFromLog {
  readonly correlation: StrengthCorrelation;
  /** Unconfined strength within a factor two either way; absent where the relation gives none for this reading [Pa]. */
  readonly ucs: Band | undefined;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * The correlation that has this id.
 *
 * @throws RangeError when there is none; the message lists ids of like spelling
 * @source (d) look-up in the list
 * @example
 * strengthCorrelationById("porosity-chalk").madeOn // → "chalk"
 */
export function strengthCorrelationById(id: string): StrengthCorrelation {
  const found = strengthCorrelations.find((correlation) => correlation.id === id);
  if (!found) {
    const ids = strengthCorrelations.map((correlation) => correlation.id);
    throw new RangeError(`correlation "${id}" is not known; near it: ${nearestWords(id, ids).join(", ")}`);
  }
  return found;
}

/**
 * Unconfined strength from a log reading by a named correlation, as a band of a factor two either way.
 *
 * A reading outside the range of the correlation, or a rock it was not made on, is a finding; the value is still given.
 *
 * @throws RangeError when the correlation or the rock is not known, or the reading is no such quantity
 * @source (b) scatter of a factor two: Chang, Zoback & Khaksar 2006, recalled; each correlation names its own
 * @example
 * strengthFromLog({ correlation: "porosity-chalk", value: 0.1 }).ucs?.mid // → 81.62e6
 */
export function strengthFromLog(input: StrengthFromLogInput): StrengthFromLog {
  const correlation = strengthCorrelationById(input.correlation);
  requireReading(correlation, input);
  const { value, rockId, shopRocks, where = correlation.id } = input;
  const unit = LOG_INPUT_UNITS[correlation.input];
  const mid = correlation.strength(input);
  const usable = mid > 0 && Number.isFinite(mid);
  const ucs = usable ? band(mid / LOG_STRENGTH_SPREAD, mid, mid * LOG_STRENGTH_SPREAD) : undefined;
  const findings: Finding[] = [];
  if (!usable) {
    findings.push({
      code: "log-gives-no-strength",
      severity: "stop",
      where,
      message: `${correlation.relation} gives no strength for this reading. Choose a correlation made on such rock, or enter the strength.`,
      value,
      unit,
      source: correlation.source,
    });
  }
  if (value < correlation.lowest || value > correlation.highest) {
    findings.push({
      code: "log-reading-outside-range",
      severity: "caution",
      where,
      message: `The reading lies outside the range of the correlation for ${correlation.madeOn}. Do not lean on the strength it gives.`,
      value,
      limit: value < correlation.lowest ? correlation.lowest : correlation.highest,
      unit,
      source: correlation.rangeSource,
    });
  }
  if (rockId !== undefined)
    findings.push(...rockFindings({ correlation, rock: rockById(rockId, shopRocks), where, mid }));
  return { correlation, ucs, findings, working: usable ? [workingOf(correlation, input, mid)] : [] };
}

function requireReading(correlation: StrengthCorrelation, { value, clayShare = 0, density }: LogReading): void {
  if (correlation.input === "porosity") requireBetween("porosity", value, 0, 1);
  else requirePositive({ [correlation.input]: value });
  requireBetween("clayShare", clayShare, 0, 1);
  if (correlation.needsDensity) requirePositive({ density: density ?? Number.NaN });
}

interface RockCheck {
  readonly correlation: StrengthCorrelation;
  readonly rock: Rock;
  readonly where: string;
  /** Strength by the correlation [Pa]. */
  readonly mid: number;
}

function rockFindings({ correlation, rock, where, mid }: RockCheck): Finding[] {
  const findings: Finding[] = [];
  if (!correlation.rockIds.includes(rock.likeId ?? rock.id)) {
    findings.push({
      code: "log-correlation-for-other-rock",
      severity: "stop",
      where,
      message: `This correlation was made on ${correlation.madeOn}, the bed is ${rock.name}. Choose one made on such rock, or enter the strength.`,
      source: correlation.source,
    });
  }
  const { low, high } = rock.ucs;
  if (mid < low || mid > high) {
    findings.push({
      code: "log-strength-outside-table",
      severity: "note",
      where,
      message: `The strength by this correlation lies outside what the rock table has for ${rock.name}. Look at a sample.`,
      value: mid,
      limit: mid < low ? low : high,
      unit: "Pa",
      source: rock.sources.ucs,
    });
  }
  return findings;
}

function workingOf(correlation: StrengthCorrelation, input: LogReading, mid: number): Working {
  const from = "entered";
  const inputs = [INPUT_WORDS[correlation.input](input.value, from)];
  if (input.clayShare !== undefined) inputs.push(given("C", "clay share", input.clayShare, "-", from));
  if (correlation.needsDensity && input.density !== undefined) {
    inputs.push(given("ρ", "bulk density", input.density, "kg/m³", from));
  }
  inputs.push(given("s", "scatter as a factor either way", LOG_STRENGTH_SPREAD, "-", SCATTER.cite));
  return {
    name: `unconfined strength from a log, ${correlation.madeOn}`,
    relation: `${correlation.relation}; UCS in MPa; band UCS/s to UCS s`,
    inputs,
    value: mid,
    unit: "Pa",
    source: correlation.source,
  };
}

const SCATTER = recalledFrom("Chang, Zoback & Khaksar 2006, scatter of the data");

const INPUT_WORDS = {
  slowness: (value: number, from: string) => given("Δt", "sonic slowness", value, "s/m", from),
  youngsModulus: (value: number, from: string) => given("E", "Young's modulus", value, "Pa", from),
  porosity: (value: number, from: string) => given("φ", "porosity", value, "-", from),
  velocity: (value: number, from: string) => given("Vp", "speed of the compression wave", value, "m/s", from),
} as const;
