import { bitFrictionNumber } from "@bitwright/engine";
import { type ChannelTable, channelTable } from "./channel-table.ts";
import { type ChannelUnit, siSize } from "./channel-unit.ts";
import { columnFaults, pairFaults } from "./column-faults.ts";
import type { DelimitedTable } from "./delimited.ts";
import {
  CHANNEL_KINDS,
  type ChannelChoice,
  type ChannelName,
  type ChosenChannel,
  chosenChannel,
} from "./drilling-channels.ts";
import type { LasFile } from "./las-file.ts";
import { counted, faultOnLines, type ImportFault, type ImportRefusal, type ImportReport, refusal } from "./report.ts";
import { rowFaults } from "./row-faults.ts";

export interface DrillingRecordOptions {
  /** Heads or names of the columns to take, where the names alone do not tell. */
  readonly columns?: Partial<Record<ChannelName, string>>;
  /** Units of columns that state none or a wrong one, as people write them: `{ rate: "ft/h" }`. */
  readonly units?: Partial<Record<ChannelName, string>>;
  /** Diameter of the bit, to hold a torque against the weight [m]. */
  readonly bitDiameter?: number;
  /** Torque at the bit for each pascal of a torque channel in pressure units [N·m/Pa]; from the motor's sheet. */
  readonly torquePerPressure?: number;
  /** The set of a LAS 3 file; the drilling set, else the log, where it is not given. */
  readonly set?: string;
}

/** A channel of the record and the column it came from. */
export interface RecordChannel {
  readonly channel: ChannelName;
  /** Head of the column in the file. */
  readonly header: string;
  /** Unit that the readings were taken in. */
  readonly unit: string;
  readonly unitFrom: "the file" | "the user" | "its name" | "assumed";
}

/** A drilling record by depth. Every row of the file is in it; NaN where there is no reading. */
export interface DrillingRecord {
  readonly refused: false;
  readonly channels: readonly RecordChannel[];
  /** Unit of the file's depth. */
  readonly depthUnit: ChannelUnit;
  /** Line of the file each row began on, counted from 1 [-]. */
  readonly rowLines: readonly number[];
  /** Depth [m]. */
  readonly depth: Float64Array;
  /** Rate of penetration [m/s]. */
  readonly rate?: Float64Array;
  /** Weight on bit [N]. */
  readonly weight?: Float64Array;
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed?: Float64Array;
  /** Torque [N·m]; absent where the channel is a pressure without a factor or is not the bit's. */
  readonly torque?: Float64Array;
  /** Pressure that stands in for the torque of a hydraulic head [Pa]. */
  readonly torquePressure?: Float64Array;
  /** Flow [m³/s]. */
  readonly flow?: Float64Array;
  /** Pump pressure [Pa]. */
  readonly pumpPressure?: Float64Array;
  /** For each row the code of the first fault that keeps it out of a drilling strength; undefined for a usable row. */
  readonly setAside: readonly (string | undefined)[];
  readonly report: ImportReport;
}

/**
 * Highest bit friction number at which a torque is still taken for the bit's [-].
 *
 * @source (a) Pessier & Fear 1992, SPE 24584, the number; (c) the limit is common practice, no source: a PDC bit reads
 * under 1.5, and above 2 the string's own friction or another unit is in it
 */
const FRICTION_NUMBER_LIMIT = 2;

/**
 * A drilling record from a table or a LAS file: channels by their names, in SI, each fault named with its rows. The
 * user's own word on columns and units wins over names.
 */
export function drillingRecord(
  from: DelimitedTable | LasFile,
  options: DrillingRecordOptions = {},
): DrillingRecord | ImportRefusal {
  const table = channelTable(from, options.set);
  if (!table) return refusal({ reason: `the file has no set "${options.set}"`, report: from.report });
  const chosen = chosenChannels(table, { columns: options.columns ?? {}, units: options.units ?? {} });
  if ("reason" in chosen) return refusal({ reason: chosen.reason, report: from.report });
  const depth = chosen.get("depth");
  if (!depth) {
    const heads = table.columns.map((column) => column.header).join(", ");
    return refusal({ reason: `no depth column was found; the columns are ${heads}`, report: from.report });
  }
  if (!depth.unit) {
    const reason = `the depth column "${depth.column.header}" states no unit of length; say whether it is feet or metres`;
    return refusal({ reason, report: from.report });
  }

  const si = new Map<ChannelName, Float64Array>();
  const faults: ImportFault[] = [];
  for (const [name, channel] of chosen) {
    const readings = channel.column.readings();
    faults.push(...columnFaults({ channel, readings, rowLines: table.rowLines }));
    if (channel.unit) si.set(name, inSi(readings.values, channel.unit));
  }
  faults.push(...pairFaults([...chosen.values()], table.rowLines));
  const { torque, torquePressure, faults: torqueFaults } = readTorque({ table, chosen, si, options });
  const rows = rowFaults({ si, depthUnit: depth.unit, rowLines: table.rowLines });
  faults.push(...rows.faults, ...torqueFaults);

  const channels = [...chosen.values()].flatMap(({ kind, column, unit, unitFrom }) =>
    unit && unitFrom ? [{ channel: kind.channel, header: column.header, unit: unit.name, unitFrom }] : [],
  );
  const [rate, weight, rotarySpeed] = [si.get("rate"), si.get("weight"), si.get("rotarySpeed")];
  const [flow, pumpPressure] = [si.get("flow"), si.get("pumpPressure")];
  const usable = rows.setAside.filter((code) => code === undefined).length;
  return {
    refused: false,
    channels,
    depthUnit: depth.unit,
    rowLines: table.rowLines,
    depth: si.get("depth") ?? new Float64Array(0),
    ...(rate ? { rate } : {}),
    ...(weight ? { weight } : {}),
    ...(rotarySpeed ? { rotarySpeed } : {}),
    ...(torque ? { torque } : {}),
    ...(torquePressure ? { torquePressure } : {}),
    ...(flow ? { flow } : {}),
    ...(pumpPressure ? { pumpPressure } : {}),
    setAside: rows.setAside,
    report: {
      lines: [
        ...from.report.lines,
        `Drilling record of ${counted(table.rowLines.length, "row")} from ${table.kind}.`,
        ...CHANNEL_KINDS.map((kind) => channelText(kind.words, chosen.get(kind.channel))),
        `${counted(usable, "row")} good for a drilling strength, ${rows.setAside.length - usable} set aside.`,
      ],
      faults: [...from.report.faults, ...faults],
    },
  };
}

function chosenChannels(
  table: ChannelTable,
  choice: ChannelChoice,
): Map<ChannelName, ChosenChannel> | { reason: string } {
  const chosen = new Map<ChannelName, ChosenChannel>();
  for (const kind of CHANNEL_KINDS) {
    const channel = chosenChannel(kind, table.columns, choice, chosen.get("depth")?.unit);
    if (channel === undefined) continue;
    if ("reason" in channel) return channel;
    chosen.set(kind.channel, channel);
  }
  return chosen;
}

function inSi(values: Float64Array, unit: ChannelUnit): Float64Array {
  const size = siSize(unit);
  return values.map((value) => (value + unit.zero) * size);
}

function channelText(words: string, channel: ChosenChannel | undefined): string {
  const name = words.charAt(0).toUpperCase() + words.slice(1);
  if (!channel) return `${name}: no column found.`;
  const { column, unit, unitFrom, others } = channel;
  const also =
    others.length === 0 ? "" : `; also in ${others.map((other) => `"${other.header}"`).join(", ")}, not used`;
  if (!unit) return `${name}: column "${column.header}" not used as ${words}${also}.`;
  const from = unitFrom === "assumed" ? "assumed, the file states none" : `from ${unitFrom}`;
  return `${name}: column "${column.header}" in ${unit.name} (${from})${also}.`;
}

/** Torque, or the pressure in its place, with what stands against taking it for the torque of the bit. */
function readTorque(parts: {
  table: ChannelTable;
  chosen: ReadonlyMap<ChannelName, ChosenChannel>;
  si: ReadonlyMap<ChannelName, Float64Array>;
  options: DrillingRecordOptions;
}): { torque?: Float64Array; torquePressure?: Float64Array; faults: ImportFault[] } {
  const { table, chosen, si, options } = parts;
  const channel = chosen.get("torque");
  if (!channel) return { faults: [] };
  const torque = si.get("torque");
  if (torque) return heldAgainstWeight(torque, { table, si, options });
  const other = channel.otherUnit;
  const header = channel.column.header;
  const rows = table.rowLines.length;
  if (other?.dimension === "pressure") {
    const torquePressure = inSi(channel.column.readings().values, other);
    const what = `The torque column "${header}" is a pressure in ${other.name}, not a torque`;
    if (options.torquePerPressure === undefined) {
      const effect = "kept as a pressure; no specific energy without the motor's torque for each unit of pressure";
      return { torquePressure, faults: [{ code: "torque-is-pressure", what, rows, effect }] };
    }
    const factor = options.torquePerPressure;
    const effect = `turned into torque with ${factor} N·m/Pa, as the user said`;
    const held = heldAgainstWeight(
      torquePressure.map((value) => value * factor),
      { table, si, options },
    );
    return { ...held, torquePressure, faults: [{ code: "torque-is-pressure", what, rows, effect }, ...held.faults] };
  }
  const stated = other?.name ?? channel.column.unit;
  const what =
    stated === undefined
      ? `The torque column "${header}" states no unit`
      : `The torque column "${header}" is in ${stated}, which is no torque`;
  return { faults: [{ code: "torque-unit", what, rows, effect: "not used; no specific energy" }] };
}

function heldAgainstWeight(
  torque: Float64Array,
  parts: { table: ChannelTable; si: ReadonlyMap<ChannelName, Float64Array>; options: DrillingRecordOptions },
): { torque?: Float64Array; faults: ImportFault[] } {
  const { table, si, options } = parts;
  const weight = si.get("weight");
  if (options.bitDiameter === undefined || !weight) return { torque, faults: [] };
  const holeRadius = options.bitDiameter / 2;
  const over: number[] = [];
  let held = 0;
  torque.forEach((value, at) => {
    const load = weight[at] ?? Number.NaN;
    if (!(load > 0) || !(value >= 0)) return;
    held++;
    if (bitFrictionNumber({ weight: load, torque: value, holeRadius }) > FRICTION_NUMBER_LIMIT) over.push(at);
  });
  if (over.length === 0) return { torque, faults: [] };
  const lines = over.map((at) => table.rowLines[at] ?? 0);
  const what = `${counted(over.length, "row")} of ${held} with a bit friction number over ${FRICTION_NUMBER_LIMIT}: the torque is not the bit's alone`;
  const code = "torque-not-of-the-bit";
  if (over.length > held / 2) {
    const effect = "the torque channel is not used: it holds the string's friction or another unit";
    return { faults: [faultOnLines({ code, what, effect, lines })] };
  }
  const cleaned = Float64Array.from(torque);
  for (const at of over) cleaned[at] = Number.NaN;
  const effect = "the torque of these rows is taken out";
  return { torque: cleaned, faults: [faultOnLines({ code, what, effect, lines })] };
}
