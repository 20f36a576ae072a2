import { basename } from "node:path";
import {
  bedsFromDrillingRecord,
  bedsFromLas,
  bedsFromLithologyTable,
  type ChannelName,
  drillingRecord,
  type GroundImport,
  type ImportRefusal,
  type NamedRock,
  parseTraveler,
  readDelimited,
  readLas,
  reportText,
  writeTraveler,
} from "@bitwright/traveler";
import { type Command, Option } from "commander";
import { Complaint, complaintAbout } from "../complaint.ts";
import { readBytes, readText, writeWhole } from "../files.ts";
import { optionQuantity } from "../option-quantity.ts";
import type { Terminal } from "../terminal.ts";

/** Options of `bitwright ground`. */
interface GroundOptions {
  readonly as: "described" | "drilled" | "logged";
  readonly bore?: string;
  readonly depthUnit?: string;
  readonly bitDiameter?: string;
  readonly rock: readonly string[];
  readonly unit: readonly string[];
  readonly column: readonly string[];
  readonly curve?: string;
  readonly correlation?: string;
  readonly strengthFromDrilling?: boolean;
  readonly mostBeds?: string;
  readonly clayShare?: string;
  readonly density?: string;
  readonly thinnest?: string;
  readonly into?: string;
  readonly out?: string;
  readonly json?: boolean;
}

const gather = (value: string, before: readonly string[]) => [...before, value];

/** Adds the arguments of `bitwright ground` and what it does. */
export function groundCommand(command: Command, terminal: Terminal): void {
  command
    .argument("<file>", "the field file")
    .addOption(
      new Option("--as <kind>", "described: intervals in words; drilled: rate and weight by depth; logged: LAS curves")
        .choices(["described", "drilled", "logged"])
        .default("described"),
    )
    .option("--bore <id>", "described: the bore to take from a table of several")
    .option("--depth-unit <unit>", "unit of the depths, where the file names none: ft or m")
    .option("--bit-diameter <length>", "drilled: the bit that drilled it")
    .option("--rock <depth: words>", 'the rock from a depth downward, "3200 ft: granite"; repeat for each', gather, [])
    .option("--unit <channel=unit>", "drilled, logged: unit of a column, rate=ft/h; repeat for each", gather, [])
    .option("--column <name=head>", "the head of a column that its name does not tell; repeat for each", gather, [])
    .option("--curve <name>", "logged: the curve to work the strength from")
    .option("--correlation <id>", "logged: the correlation that turns the curve into strength")
    .option("--strength-from-drilling", "drilled: let the apparent drilling strength stand as the rock's strength")
    .option("--clay-share <share>", "logged: share of clay, for a correlation that asks for it")
    .option("--density <density>", "logged: bulk density, for a correlation that asks for it")
    .option("--thinnest <length>", "drilled, logged: least thickness of a bed")
    .option("--most-beds <count>", "drilled, logged: most beds to make")
    .option("--into <traveler>", "put the ground into this traveler; --out names the new file")
    .option("--out <file>", "write there instead of the terminal")
    .action((file, options) => groundFrom(file, options, terminal));
}

function groundFrom(file: string, options: GroundOptions, terminal: Terminal): void {
  if (options.into !== undefined && options.out === undefined) {
    throw new Complaint(["--into: give --out with the name of the new traveler; the old one is left as it is"]);
  }
  const made = importedGround(file, options);
  for (const line of reportText(made.report)) terminal.complain(line);
  if (made.refused) {
    throw new Complaint([`${file}${made.line === undefined ? "" : `, line ${made.line}`}: ${made.reason}`]);
  }
  const text = options.into === undefined ? `${JSON.stringify(made.ground, null, 2)}\n` : merged(options.into, made);
  if (options.out === undefined) terminal.say(text.trimEnd());
  else {
    writeWhole(options.out, text);
    terminal.complain(`Wrote ${made.ground.beds.length} beds to ${options.out}.`);
  }
}

function importedGround(file: string, options: GroundOptions): GroundImport | ImportRefusal {
  const bytes = readBytes(file);
  const source = basename(file);
  const rocks = options.rock.map(namedRock);
  const bedding = {
    ...(options.mostBeds === undefined ? {} : { mostBeds: wholeNumber("--most-beds", options.mostBeds) }),
    ...(options.thinnest === undefined
      ? {}
      : { minimumThickness: optionQuantity("depth", "--thinnest", options.thinnest, { least: "0.1 ft" }) }),
  };
  switch (options.as) {
    case "described":
      return bedsFromLithologyTable(bytes, {
        source,
        columns: pairs("--column", options.column, LITHOLOGY_COLUMNS),
        ...(options.bore === undefined ? {} : { bore: options.bore }),
        ...(options.depthUnit === undefined ? {} : { unit: options.depthUnit }),
      });
    case "drilled": {
      const bitDiameter = optionQuantity("diameter", "--bit-diameter", options.bitDiameter ?? "", DRILLED_BIT);
      const table = /\.las$/i.test(file) ? readLas(bytes) : readDelimited(bytes);
      if (table.refused) return table;
      const record = drillingRecord(table, {
        bitDiameter,
        units: pairs("--unit", options.unit, CHANNELS),
        columns: pairs("--column", options.column, CHANNELS),
      });
      if (record.refused) return record;
      const useAsStrength = options.strengthFromDrilling ?? false;
      return bedsFromDrillingRecord(record, { bitDiameter, rocks, source, useAsStrength, ...bedding });
    }
    case "logged": {
      const { curve, correlation } = options;
      if (curve === undefined) throw new Complaint(["--curve: nothing is given; name the curve, for example DT"]);
      if (correlation === undefined) {
        throw new Complaint(["--correlation: nothing is given; strength is never worked out without a named one"]);
      }
      const las = readLas(bytes);
      return las.refused
        ? las
        : bedsFromLas(las, { curve, correlation, rocks, source, ...bedding, ...logOptions(options) });
    }
  }
}

/** The unit of the curve and what some correlations ask for besides. */
function logOptions({ curve = "", unit, depthUnit, clayShare, density }: GroundOptions) {
  const { [curve]: curveUnit } = pairs("--unit", unit, [curve]);
  return {
    ...(curveUnit === undefined ? {} : { unit: curveUnit }),
    ...(depthUnit === undefined ? {} : { depthUnit }),
    ...(clayShare === undefined ? {} : { clayShare: optionQuantity("share", "--clay-share", clayShare) }),
    ...(density === undefined ? {} : { density: optionQuantity("density", "--density", density) }),
  };
}

const DRILLED_BIT = { least: "1 in", most: "40 in" };

function namedRock(text: string): NamedRock {
  const at = text.indexOf(":");
  const phrase = text.slice(at + 1).trim();
  if (at < 1 || phrase === "")
    throw new Complaint([`--rock: got "${text}"; give a depth and words, "3200 ft: granite"`]);
  return { from: optionQuantity("depth", "--rock", text.slice(0, at)), phrase };
}

/** What `--column` and `--unit` may name. */
const LITHOLOGY_COLUMNS = ["from", "to", "description", "bore"] as const;
const CHANNELS = [
  "depth",
  "rate",
  "weight",
  "rotarySpeed",
  "torque",
  "flow",
  "pumpPressure",
] as const satisfies readonly ChannelName[];

function pairs(option: string, texts: readonly string[], names: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    texts.map((text) => {
      const at = text.indexOf("=");
      const name = text.slice(0, Math.max(at, 0)).trim();
      const value = text.slice(at + 1).trim();
      if (name === "" || value === "") throw new Complaint([`${option}: got "${text}"; give a name, =, and a value`]);
      if (!names.includes(name)) {
        throw new Complaint([`${option}: got "${text}", which names no column; give one of ${names.join(", ")}`]);
      }
      return [name, value];
    }),
  );
}

function wholeNumber(option: string, text: string): number {
  const number = Number(text);
  if (!Number.isInteger(number) || number < 1)
    throw new Complaint([`${option}: got "${text}"; give a whole number from 1`]);
  return number;
}

function merged(into: string, { ground }: GroundImport): string {
  const read = parseTraveler(readText(into));
  if (!read.ok) throw complaintAbout(into, read.problems);
  const traveler = { ...read.traveler, ground };
  const again = parseTraveler(traveler);
  if (!again.ok) throw complaintAbout(`${into} with the new ground`, again.problems);
  return writeTraveler(again.traveler);
}
