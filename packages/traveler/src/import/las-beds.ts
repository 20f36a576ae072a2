import {
  classifyGround,
  type LogInputKind,
  requireFinite,
  type StrengthCorrelation,
  strengthCorrelations,
  strengthFromLog,
} from "@bitwright/engine";
import { type Dimension, formatQuantity } from "../quantity/index.ts";
import { bedsByLevel } from "./beds-by-level.ts";
import { type ChannelUnit, channelUnit } from "./channel-unit.ts";
import { shareOf } from "./depth-bins.ts";
import { depthText, figuresText, type GroundImport, type ImportedBed, type NamedRock } from "./ground-section.ts";
import { type LasCurve, type LasFile, lasCurve } from "./las-file.ts";
import { phraseFaults } from "./phrase-faults.ts";
import { counted, type ImportFault, type ImportRefusal, refusal } from "./report.ts";

export interface LasBedsOptions {
  /** Name of the curve that the strength is worked from: `DT`, `NPHI`. */
  readonly curve: string;
  /** Id of the correlation; it goes with one kind of rock, so there is no default. */
  readonly correlation: string;
  /** The rocks, from the depth each begins at. */
  readonly rocks: readonly NamedRock[];
  /** Unit of the curve, where the file states none or a wrong one. */
  readonly unit?: string;
  /** Unit of the depth, where the file states none or a wrong one. */
  readonly depthUnit?: string;
  /** Share of clay, for the correlation that asks for it [-]. */
  readonly clayShare?: number;
  /** Bulk density, for the correlation that asks for it [kg/m³]. */
  readonly density?: number;
  /** Least thickness of a bed [m]. */
  readonly minimumThickness?: number;
  /** Most beds to make [-]. */
  readonly mostBeds?: number;
  /** The set of a LAS 3 file; the log where it is not given. */
  readonly set?: string;
  readonly source?: string;
}

const DIMENSION: Readonly<Record<LogInputKind, Dimension>> = {
  slowness: "slowness",
  youngsModulus: "pressure",
  porosity: "share",
  velocity: "speed",
};

const INPUT_WORDS: Readonly<Record<LogInputKind, string>> = {
  slowness: "a sonic slowness",
  youngsModulus: "a Young's modulus",
  porosity: "a porosity",
  velocity: "a speed of sound",
};

/** Share by which a reading on the limit of a correlation may miss it through its unit [-]. */
const HAIR = 1e-9;

/** A reading that the correlation takes, at its depth. */
interface LogRow {
  /** Depth [m]. */
  readonly depth: number;
  /** The reading in the unit the correlation asks for [SI]. */
  readonly value: number;
  /** Strength by the correlation [Pa]. */
  readonly strength: number;
}

/**
 * Beds from a log: pieces of even strength by a named correlation, parted too where the user names another rock. Each
 * bed carries the correlation and the median reading, so that the strength is worked, with its band, where the bed is.
 *
 * @throws RangeError when a number among the options is not one that can be
 */
export function bedsFromLas(las: LasFile, options: LasBedsOptions): GroundImport | ImportRefusal {
  const refuse = (reason: string) => refusal({ reason, report: las.report });
  const set = options.set === undefined ? undefined : las.sets.find((one) => one.name === options.set?.toLowerCase());
  if (options.set !== undefined && !set) return refuse(`the file has no set "${options.set}"`);
  const curves = set?.curves ?? las.curves;
  const curve = lasCurve(curves, options.curve);
  const index = curves[0];
  if (!curve || !index) {
    return refuse(`there is no curve "${options.curve}"; the curves are ${curves.map((one) => one.name).join(", ")}`);
  }
  const correlation = strengthCorrelations.find((one) => one.id === options.correlation);
  if (!correlation) {
    const ids = strengthCorrelations.map((one) => one.id).join(", ");
    return refuse(`there is no correlation "${options.correlation}"; there are ${ids}`);
  }
  if (correlation.needsDensity && options.density === undefined) {
    return refuse(`the correlation ${correlation.id} needs the bulk density of the rock`);
  }
  const depthUnit = channelUnit(options.depthUnit ?? index.unit, ["length"]);
  if (!depthUnit) {
    return refuse(`the index ${index.name} is in "${index.unit}", which is no unit of depth; say ft or m`);
  }
  const reader = curveReader(curve, correlation, options.unit);
  if ("reason" in reader) return refuse(reader.reason);

  const { rows, faults, depths } = strengthRows({ index, curve, depthUnit, reader, correlation, options });
  if (rows.length < 2) return refuse(`fewer than two readings of ${curve.name} lie in the range of ${correlation.id}`);
  const { beds: found, lines } = bedsByLevel({
    depths: rows.map((row) => row.depth),
    levels: rows.map((row) => Math.log(row.strength)),
    noun: "strength",
    first: depths.reduce((least, depth) => Math.min(least, depth), Number.POSITIVE_INFINITY),
    last: depths.reduce((most, depth) => Math.max(most, depth), Number.NEGATIVE_INFINITY),
    unit: depthUnit,
    rocks: options.rocks,
    minimumThickness: options.minimumThickness,
    mostBeds: options.mostBeds,
  });
  const bedFaults: ImportFault[] = [];
  const beds = found.map((bed): ImportedBed => {
    const depthsText = { top: depthText(bed.top, depthUnit), bottom: depthText(bed.bottom, depthUnit) };
    const phrase = bed.phrase === undefined ? {} : { phrase: bed.phrase };
    const values = bed.readings.map((at) => rows[at]?.value ?? Number.NaN);
    if (values.length === 0) {
      return {
        ...depthsText,
        ...phrase,
        notes: `No reading of ${curve.name} here lies in the range of the correlation.`,
      };
    }
    const { note, messages, reading } = bedStrength({ values, bed, curve, correlation, options, unit: reader.unit });
    for (const message of messages) {
      const what = `${depthsText.top} to ${depthsText.bottom}: ${message}`;
      bedFaults.push({
        code: "correlation-doubtful",
        what,
        rows: values.length,
        effect: "the strength stands, in doubt",
      });
    }
    return { ...depthsText, ...phrase, strengthFrom: { correlation: correlation.id, reading }, notes: note };
  });
  return {
    refused: false,
    ground: { beds, source: options.source ?? `log curve ${curve.name}, strength by ${correlation.id}` },
    report: {
      lines: [
        ...las.report.lines,
        `Strength from ${curve.name} in ${reader.unit.name} by ${correlation.id}: ${correlation.relation}, made on ${correlation.madeOn}. A factor two either way is usual.`,
        ...lines,
      ],
      faults: [...las.report.faults, ...faults, ...bedFaults, ...phraseFaults(beds)],
    },
  };
}

/** How the curve's readings become what the correlation asks for. */
interface CurveReader {
  readonly unit: ChannelUnit;
  readonly si: (value: number) => number;
}

function curveReader(
  curve: LasCurve,
  correlation: StrengthCorrelation,
  said: string | undefined,
): CurveReader | { reason: string } {
  const wanted = DIMENSION[correlation.input];
  const text = said ?? curve.unit;
  const unit = channelUnit(text, [wanted]);
  if (unit) return { unit, si: (value) => value * unit.factor };
  // Slowness and speed are one reading turned over.
  const turned = wanted === "speed" ? "slowness" : wanted === "slowness" ? "speed" : undefined;
  const inverse = turned === undefined ? undefined : channelUnit(text, [turned]);
  if (inverse) return { unit: inverse, si: (value) => 1 / (value * inverse.factor) };
  const stated = text === "" ? "states no unit" : `is in "${text}"`;
  return {
    reason: `curve ${curve.name} ${stated}, but ${correlation.id} asks for ${INPUT_WORDS[correlation.input]}; choose another curve or correlation, or say its unit`,
  };
}

function strengthRows(parts: {
  index: LasCurve;
  curve: LasCurve;
  depthUnit: ChannelUnit;
  reader: CurveReader;
  correlation: StrengthCorrelation;
  options: LasBedsOptions;
}): { rows: LogRow[]; faults: ImportFault[]; depths: number[] } {
  const { index, curve, depthUnit, reader, correlation, options } = parts;
  const rows: LogRow[] = [];
  const depths: number[] = [];
  let none = 0;
  let outside = 0;
  index.values.forEach((place, at) => {
    const depth = place * depthUnit.factor;
    if (Number.isNaN(depth)) return;
    depths.push(depth);
    const value = reader.si(curve.values[at] ?? Number.NaN);
    if (!Number.isFinite(value)) {
      none++;
    } else if (value < correlation.lowest * (1 - HAIR) || value > correlation.highest * (1 + HAIR)) {
      outside++;
    } else {
      const strength = correlation.strength({ value, ...extras(options) });
      if (strength > 0) rows.push({ depth, value, strength });
      else outside++;
    }
  });
  const faults: ImportFault[] = [];
  if (none > 0) {
    const what = `${counted(none, "row")} without a reading of ${curve.name}`;
    faults.push({ code: "curve-null", what, rows: none, effect: "nothing is worked out there" });
  }
  if (outside > 0) {
    const what = `${counted(outside, "reading")} of ${curve.name} outside the range of ${correlation.id}`;
    faults.push({
      code: "outside-correlation",
      what,
      rows: outside,
      effect: "set aside: the correlation says nothing there",
    });
  }
  return { rows, faults, depths };
}

function extras({ clayShare, density }: LasBedsOptions): { clayShare?: number; density?: number } {
  return { ...(clayShare === undefined ? {} : { clayShare }), ...(density === undefined ? {} : { density }) };
}

function bedStrength(parts: {
  values: readonly number[];
  bed: { phrase?: string };
  curve: LasCurve;
  correlation: StrengthCorrelation;
  options: LasBedsOptions;
  unit: ChannelUnit;
}): { note: string; messages: string[]; reading: string } {
  const { values, bed, curve, correlation, options, unit } = parts;
  const middle = shareOf(values, 0.5);
  requireFinite({ middle });
  const rockId = bed.phrase === undefined ? undefined : classifyGround(bed.phrase).rockId;
  const result = strengthFromLog({
    correlation: correlation.id,
    value: middle,
    ...(rockId === undefined ? {} : { rockId }),
    ...extras(options),
  });
  const text = (value: number) => readingText(value, correlation.input, unit);
  const system = unit.name.includes("ft") ? "field" : "metric";
  const strength = result.ucs && formatQuantity("strength", result.ucs.mid, system, { figures: 3 });
  const note = `Median of ${counted(values.length, "reading")} of ${curve.name}: ${text(middle)} (middle 80 % ${text(shareOf(values, 0.1))} to ${text(shareOf(values, 0.9))}), which gives ${strength ?? "no strength"}.`;
  return { note, messages: result.findings.map((finding) => finding.message), reading: text(middle) };
}

/** A reading as a person would type it: slowness in the log's own unit, the rest in the usual one. */
function readingText(value: number, input: LogInputKind, unit: ChannelUnit): string {
  if (input === "porosity") return `${figuresText(100 * value)} %`;
  if (input === "youngsModulus") return `${figuresText(value / 1e9)} GPa`;
  if (input === "velocity") return `${figuresText(value, 4)} m/s`;
  const slowness = unit.dimension === "slowness" ? unit : channelUnit("us/ft", ["slowness"]);
  return slowness ? `${figuresText(value / slowness.factor, 4)} ${slowness.name}` : `${value} s/m`;
}
