import { STANDARD_GRAVITY } from "@bitwright/engine";
import { type Dimension, unitKey, unitOf } from "../quantity/index.ts";

/** A unit as a log or a table head writes it, understood. */
export interface ChannelUnit {
  readonly dimension: Dimension;
  /** How the program writes it: `klbf`, `ft/h`. */
  readonly name: string;
  /** Size of one of it [coherent SI unit of the dimension]. */
  readonly factor: number;
  /** Added to a reading before the factor, for temperatures [this unit]. */
  readonly zero: number;
}

/**
 * Spellings of logs and recorders that people do not type, by their letters alone: log files know no spaces, no small
 * letters they can trust, and shorten as they like. To the unit table's own name.
 */
const LOG_SPELLINGS: Readonly<Record<string, readonly [Dimension, string]>> = {
  f: ["length", "ft"],
  ft: ["length", "ft"],
  feet: ["length", "ft"],
  m: ["length", "m"],
  mts: ["length", "m"],
  inches: ["length", "in"],
  "ft/h": ["speed", "ft/h"],
  "f/h": ["speed", "ft/h"],
  "f/hr": ["speed", "ft/h"],
  ftph: ["speed", "ft/h"],
  mph: ["speed", "m/h"],
  "km/s": ["speed", "km/s"],
  klbs: ["force", "klbf"],
  klbm: ["force", "klbf"],
  klbf: ["force", "klbf"],
  "1000lbf": ["force", "klbf"],
  "1000lb": ["force", "klbf"],
  kdan: ["force", "kdaN"],
  kgs: ["mass", "kg"],
  ton: ["mass", "t"],
  mt: ["mass", "t"],
  "1/min": ["rotary speed", "rpm"],
  "c/min": ["rotary speed", "rpm"],
  "r/m": ["rotary speed", "rpm"],
  ftlb: ["torque", "ft-lbf"],
  ftlbs: ["torque", "ft-lbf"],
  ftlbf: ["torque", "ft-lbf"],
  lbft: ["torque", "ft-lbf"],
  lbfft: ["torque", "ft-lbf"],
  kftlb: ["torque", "kft-lbf"],
  kftlbs: ["torque", "kft-lbf"],
  kftlbf: ["torque", "kft-lbf"],
  klbft: ["torque", "kft-lbf"],
  klbsft: ["torque", "kft-lbf"],
  klbfft: ["torque", "kft-lbf"],
  inlb: ["torque", "in-lbf"],
  inlbs: ["torque", "in-lbf"],
  nm: ["torque", "N m"],
  knm: ["torque", "kN m"],
  kpa: ["pressure", "kPa"],
  mpa: ["pressure", "MPa"],
  gpa: ["pressure", "GPa"],
  barg: ["pressure", "bar"],
  psia: ["pressure", "psi"],
  "gal/mn": ["flow", "gpm"],
  "g/min": ["flow", "gpm"],
  "liters/min": ["flow", "L/min"],
  "litres/min": ["flow", "L/min"],
  "ltr/min": ["flow", "L/min"],
  "us/f": ["slowness", "µs/ft"],
  "us/ft": ["slowness", "µs/ft"],
  "usec/f": ["slowness", "µs/ft"],
  "us/m": ["slowness", "µs/m"],
  "usec/m": ["slowness", "µs/m"],
  "v/v": ["share", "-"],
  "vol/vol": ["share", "-"],
  cfcf: ["share", "-"],
  dec: ["share", "-"],
  frac: ["share", "-"],
  fraction: ["share", "-"],
  percnt: ["share", "%"],
  pu: ["share", "%"],
};

/** Units that the table of typed units does not hold because nobody types them, by name: dimension and SI size. */
const LOG_ONLY: Readonly<Record<string, number>> = { "km/s": 1e3, kdaN: 1e4 };

/** Dimensions that a channel of a log is tried in, in this order: a bare `lb` in a log is a force on the bit. */
const CHANNEL_DIMENSIONS: readonly Dimension[] = [
  "length",
  "speed",
  "force",
  "mass",
  "rotary speed",
  "torque",
  "pressure",
  "flow",
  "slowness",
  "share",
  "density",
  "temperature",
  "volume",
  "duration",
  "power",
  "angle",
];

/** The unit that a log's spelling names, tried in `dimensions` only; undefined where it names none. */
export function channelUnit(
  text: string,
  dimensions: readonly Dimension[] = CHANNEL_DIMENSIONS,
): ChannelUnit | undefined {
  const written = text.trim().replace(/^[[({]\s*(.*?)\s*[\])}]$/, "$1");
  if (written === "") return undefined;
  for (const dimension of dimensions) {
    const unit = unitOf(dimension, written);
    if (unit) return { dimension, name: unit.name, factor: unit.factor, zero: unit.zero };
  }
  const letters = unitKey(written)
    .toLowerCase()
    .replace(/[^a-z0-9/%]/g, "");
  const spelled = LOG_SPELLINGS[letters];
  if (!spelled || !dimensions.includes(spelled[0])) return undefined;
  const [dimension, name] = spelled;
  const factor = LOG_ONLY[name] ?? unitOf(dimension, name)?.factor;
  return factor === undefined ? undefined : { dimension, name, factor, zero: 0 };
}

/**
 * Size of one of the unit as a channel reads it: a mass on a weight channel is the force of its weight.
 *
 * @returns size [coherent SI unit of the dimension, N for a mass]
 */
export function siSize(unit: ChannelUnit): number {
  return unit.dimension === "mass" ? unit.factor * STANDARD_GRAVITY : unit.factor;
}
