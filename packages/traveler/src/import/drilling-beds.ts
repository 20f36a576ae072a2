import { advancePerRevolution, drillingStrength, requirePositive } from "@bitwright/engine";
import { formatQuantity } from "../quantity/index.ts";
import { bedsByLevel } from "./beds-by-level.ts";
import { shareOf } from "./depth-bins.ts";
import type { DrillingRecord } from "./drilling-record.ts";
import { depthText, type GroundImport, type ImportedBed, type NamedRock, phraseAt } from "./ground-section.ts";
import { phraseFaults } from "./phrase-faults.ts";
import { counted, type ImportFault, type ImportRefusal, refusal } from "./report.ts";

export interface DrillingBedsOptions {
  /** Diameter of the bit that drilled the record [m]. */
  readonly bitDiameter: number;
  /** The rocks, from the depth each begins at: the record tells strength, never a name. */
  readonly rocks: readonly NamedRock[];
  /** Least thickness of a bed [m]; where it is not given a fiftieth of the drilled length, at least 3 m. */
  readonly minimumThickness?: number;
  /** Most beds to make [-]; 12 where it is not given. */
  readonly mostBeds?: number;
  /** Whether the apparent drilling strength is to stand as the rock's strength; it holds more than that, so only on request. */
  readonly useAsStrength?: boolean;
  /** What the record is, for the source line of the ground. */
  readonly source?: string;
}

/**
 * Strength that no rock exceeds, so that a reading above it is the bit's wear [Pa]: 100,000 psi, the most that the
 * traveler takes for a bed.
 *
 * @source (b) strongest quartzites and fresh basalts crush near 300 to 500 MPa, recalled from rock tables; rounded up
 */
const STRONGEST_ROCK = 689.475e6;

/** A usable row with what it says of the ground. */
interface StrengthRow {
  /** Depth [m]. */
  readonly depth: number;
  /** Apparent drilling strength [Pa]. */
  readonly strength: number;
}

/**
 * Beds from a drilling record: pieces of even apparent drilling strength S = W/(a d), on a logarithmic scale, parted
 * too where the user names another rock. S holds the contact load of whatever bit drilled the record, so it parts beds
 * and is noted beside them; it is no rock strength unless asked for.
 *
 * @throws RangeError when the bit diameter, the least thickness or the most beds is not positive
 */
export function bedsFromDrillingRecord(
  record: DrillingRecord,
  options: DrillingBedsOptions,
): GroundImport | ImportRefusal {
  requirePositive({ bitDiameter: options.bitDiameter });
  const rows = strengthRows(record, options.bitDiameter / 2);
  if (rows.length < 2) {
    const reason =
      "too few rows of the record give a drilling strength: it needs depth, rate, weight on bit and rotary speed together";
    return refusal({ reason, report: record.report });
  }
  const unit = record.depthUnit;
  const depths = record.depth.filter((depth) => !Number.isNaN(depth));
  const first = depths.reduce((least, depth) => Math.min(least, depth), Number.POSITIVE_INFINITY);
  const last = depths.reduce((most, depth) => Math.max(most, depth), Number.NEGATIVE_INFINITY);
  const { beds: found, lines } = bedsByLevel({
    depths: rows.map((row) => row.depth),
    levels: rows.map((row) => Math.log(row.strength)),
    noun: "drilling strength",
    first,
    last,
    unit,
    rocks: options.rocks,
    minimumThickness: options.minimumThickness,
    mostBeds: options.mostBeds,
  });

  const system = unit.factor < 1 ? "field" : "metric";
  const beds = found.map((bed): ImportedBed => {
    const strengths = bed.readings.map((at) => rows[at]?.strength ?? Number.NaN);
    const band = strengths.length > 0 ? strengthBand(strengths, system) : undefined;
    return {
      top: depthText(bed.top, unit),
      bottom: depthText(bed.bottom, unit),
      ...(bed.phrase === undefined ? {} : { phrase: bed.phrase }),
      ...(options.useAsStrength && band && isRockStrength(strengths) ? { strength: band } : {}),
      notes: strengthNote({ band, rows: strengths.length, used: options.useAsStrength === true }),
    };
  });
  const above = aboveRecord(first, record, options.rocks);
  const all = above ? [above, ...beds] : beds;

  const unmeasured = beds.filter((_, at) => found[at]?.readings.length === 0);
  const faults: ImportFault[] = [...phraseFaults(all)];
  if (unmeasured.length > 0) {
    faults.push({
      code: "bed-without-reading",
      what: `${counted(unmeasured.length, "bed")} in which no row gives a drilling strength: ${unmeasured.map((bed) => `${bed.top} to ${bed.bottom}`).join("; ")}`,
      rows: unmeasured.length,
      effect: "the bed stands on the named rock alone",
    });
  }
  if (options.useAsStrength) {
    const beyond = beds.filter((bed, at) => bed.strength === undefined && (found[at]?.readings.length ?? 0) > 0);
    if (beyond.length > 0) {
      faults.push({
        code: "apparent-strength-beyond-rock",
        what: `${counted(beyond.length, "bed")} where it is beyond any rock's: ${beyond.map((bed) => `${bed.top} to ${bed.bottom}`).join("; ")}`,
        rows: beyond.length,
        effect: "not taken there; the named rock's own strength stands",
      });
    }
    faults.push({
      code: "apparent-strength-used",
      what: "The apparent drilling strength stands as the rock's strength, as asked",
      rows: rows.length,
      effect: "it holds the contact load of a worn bit, of another kind perhaps, and reads the rock too strong",
    });
  }
  const diameter = formatQuantity("diameter", options.bitDiameter, system);
  return {
    refused: false,
    ground: { beds: all, source: options.source ?? "drilling record, beds by apparent drilling strength" },
    report: {
      lines: [
        ...record.report.lines,
        `Beds by even apparent drilling strength S = W/(a d), with one bit diameter, ${diameter}, for the whole record. A step may be another bit or its wear as well as another rock.`,
        ...lines,
      ],
      faults: [...record.report.faults, ...faults],
    },
  };
}

function strengthRows(record: DrillingRecord, holeRadius: number): StrengthRow[] {
  const { depth, rate, weight, rotarySpeed, setAside } = record;
  if (!rate || !weight || !rotarySpeed) return [];
  const rows: StrengthRow[] = [];
  setAside.forEach((code, at) => {
    if (code !== undefined) return;
    const advance = advancePerRevolution({ rate: rate[at] ?? 0, rotarySpeed: rotarySpeed[at] ?? 0 });
    const strength = drillingStrength({ weight: weight[at] ?? 0, advance, holeRadius });
    rows.push({ depth: depth[at] ?? 0, strength });
  });
  return rows;
}

/** The rock that the user named from the surface, down to where the record begins. */
function aboveRecord(first: number, record: DrillingRecord, rocks: readonly NamedRock[]): ImportedBed | undefined {
  const phrase = phraseAt(rocks, 0);
  const unit = record.depthUnit;
  if (phrase === undefined || first <= 0) return undefined;
  const notes = "Above the record: nothing measured, the rock as named.";
  return { top: `0 ${unit.name}`, bottom: depthText(first, unit), phrase, notes };
}

const isRockStrength = (strengths: readonly number[]): boolean => shareOf(strengths, 0.9) <= STRONGEST_ROCK;

type StrengthBand = NonNullable<ImportedBed["strength"]>;

function strengthBand(strengths: readonly number[], system: "field" | "metric"): StrengthBand {
  const unit = system === "field" ? "psi" : "MPa";
  const text = (share: number) => formatQuantity("strength", shareOf(strengths, share), system, { unit, figures: 3 });
  return { low: text(0.1), mid: text(0.5), high: text(0.9) };
}

function strengthNote(parts: { band: StrengthBand | undefined; rows: number; used: boolean }): string {
  const { band, rows, used } = parts;
  if (!band) return "No row of the record gives a drilling strength here.";
  const told = `Apparent drilling strength ${band.mid} (${band.low} to ${band.high} in the middle 80 % of ${counted(rows, "row")}).`;
  return used
    ? `${told} Taken as the rock's strength on request; it holds the contact load of the bit that drilled it.`
    : `${told} It holds the contact load of the bit that drilled it and is not the rock's strength.`;
}
