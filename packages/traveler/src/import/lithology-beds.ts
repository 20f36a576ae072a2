import { classifyGround } from "@bitwright/engine";
import type { ChannelUnit } from "./channel-unit.ts";
import { depthText, type GroundImport, type ImportedBed } from "./ground-section.ts";
import {
  DEPTH_ROOM,
  intervalOrder,
  type LithologyRow,
  type LithologyTableOptions,
  readLithologyTable,
} from "./lithology-table.ts";
import { phraseFaults } from "./phrase-faults.ts";
import { counted, type ImportFault, type ImportRefusal, refusal } from "./report.ts";

export interface LithologyBedsOptions extends LithologyTableOptions {
  /** The bore to take, where the table holds several. */
  readonly bore?: string;
  /** What the table is, for the source line of the ground. */
  readonly source?: string;
}

/** Words of a bed that nobody described. */
const NOT_DESCRIBED = "not described";

/** How many bores a refusal names [-]. */
const BORES_NAMED = 5;

/** Beds from a table of described intervals: sorted, overlaps settled, gaps kept as beds that need a rock. */
export function bedsFromLithologyTable(
  given: string | Uint8Array,
  options: LithologyBedsOptions = {},
): GroundImport | ImportRefusal {
  const table = readLithologyTable(given, options);
  if (table.refused) return table;
  const names = [...table.bores.keys()];
  const name = options.bore ?? names[0] ?? "";
  if (options.bore === undefined && names.length > 1) {
    const reason = `the table holds ${names.length} bores; say which: ${names.slice(0, BORES_NAMED).join(", ")} …`;
    return refusal({ reason, report: table.report });
  }
  const rows = table.bores.get(name);
  if (!rows) {
    const reason = `the table has no bore "${name}"; it has ${names.slice(0, BORES_NAMED).join(", ")} …`;
    return refusal({ reason, report: table.report });
  }
  const pieces = merged(settledPieces(rows));
  const beds = pieces.map((piece) => bedOf(piece, table.unit));
  const boreText = name === "" ? "" : ` of bore ${name}`;
  return {
    refused: false,
    ground: { beds, source: options.source ?? `described intervals${boreText}` },
    report: {
      lines: [
        ...table.report.lines,
        `${counted(rows.length, "interval")}${boreText} made into ${counted(beds.length, "bed")}; neighbours of the same words are one bed.`,
      ],
      faults: [...table.report.faults, ...orderFaults(rows, pieces, table.unit), ...phraseFaults(beds)],
    },
  };
}

/** A depth range with the row that speaks for it and those it silenced. */
interface Piece {
  readonly from: number;
  readonly to: number;
  readonly phrase: string;
  /** Words of the other rows that cover it. */
  readonly others: readonly string[];
  readonly isGap: boolean;
}

/**
 * The hole parted at every depth that a row names; for each part one row speaks. A row whose words name a rock plainly
 * before one that leaves a doubt, and that before one that names none; then the row that begins deeper, for a driller
 * writes a new line where the ground changes; then the one that stands first.
 */
function settledPieces(rows: readonly LithologyRow[]): Piece[] {
  const depths = [...new Set([0, ...rows.flatMap((row) => [row.from, row.to])])].sort((a, b) => a - b);
  const plainness = new Map(rows.map((row) => [row, PLAINNESS[classifyGround(row.description).confidence]]));
  const rank = (row: LithologyRow) => plainness.get(row) ?? 0;
  return depths.slice(1).flatMap((to, at): Piece[] => {
    const from = depths[at] ?? 0;
    if (to - from < DEPTH_ROOM) return [];
    const covering = rows.filter((row) => row.from <= from && row.to >= to);
    const [first, ...silenced] = covering.sort((a, b) => rank(b) - rank(a) || b.from - a.from || a.line - b.line);
    if (!first) return [{ from, to, phrase: NOT_DESCRIBED, others: [], isGap: true }];
    const phrase = first.description === "" ? NOT_DESCRIBED : first.description;
    const unlike = silenced.map((row) => row.description).filter((words) => words !== "" && !sameWords(words, phrase));
    return [{ from, to, ...withHazards(phrase, [...new Set(unlike)]), isGap: false }];
  });
}

const PLAINNESS = { clear: 2, guess: 1, unknown: 0 } as const;

/**
 * Silenced words that bring a hazard of their own, gravel or boulders, go into the phrase, where the reading of the
 * ground sees them; the rest go into the notes.
 */
function withHazards(phrase: string, others: readonly string[]): { phrase: string; others: string[] } {
  let told = phrase;
  const left: string[] = [];
  for (const words of others) {
    const joined = /^with\b/i.test(words) ? `${told} ${words}` : `${told} with ${words}`;
    const [alone, together] = [classifyGround(told), classifyGround(joined)];
    const adds = together.hazards.some((hazard) => !alone.hazards.includes(hazard));
    if (alone.rockId !== undefined && together.rockId === alone.rockId && adds) told = joined;
    else left.push(words);
  }
  return { phrase: told, others: left };
}

const sameWords = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

function merged(pieces: readonly Piece[]): Piece[] {
  const beds: Piece[] = [];
  for (const piece of pieces) {
    const above = beds.at(-1);
    if (above && sameWords(above.phrase, piece.phrase) && above.isGap === piece.isGap) {
      beds[beds.length - 1] = { ...above, to: piece.to, others: [...new Set([...above.others, ...piece.others])] };
    } else {
      beds.push(piece);
    }
  }
  return beds;
}

function bedOf(piece: Piece, unit: ChannelUnit): ImportedBed {
  const notes = piece.isGap
    ? "No row of the table describes this depth."
    : piece.others.length > 0
      ? `Also described as: ${piece.others.map((words) => `"${words}"`).join(", ")}.`
      : undefined;
  const bed = { top: depthText(piece.from, unit), bottom: depthText(piece.to, unit), phrase: piece.phrase };
  return notes === undefined ? bed : { ...bed, notes };
}

function orderFaults(rows: readonly LithologyRow[], pieces: readonly Piece[], unit: ChannelUnit): ImportFault[] {
  const { unsorted, overlaps } = intervalOrder(rows);
  const faults: ImportFault[] = [];
  if (unsorted > 0) {
    const what = `${counted(unsorted, "row")} below a deeper one in the file`;
    faults.push({ code: "intervals-unsorted", what, rows: unsorted, effect: "sorted by depth" });
  }
  if (overlaps > 0) {
    faults.push({
      code: "intervals-overlap",
      what: `${counted(overlaps, "interval")} beginning above the bottom of the one before`,
      rows: overlaps,
      effect:
        "where two cover a depth, the words that name a rock plainly are taken, else those that begin deeper, for a new line is written where the ground changes, else the first; the other words are joined to the phrase where they name a hazard, else stand in the notes",
    });
  }
  const gaps = pieces.filter((piece) => piece.isGap);
  if (gaps.length > 0) {
    const spans = gaps.map((gap) => `${depthText(gap.from, unit)} to ${depthText(gap.to, unit)}`);
    faults.push({
      code: "intervals-gap",
      what: `${counted(gaps.length, "gap")} that no row describes: ${spans.join("; ")}`,
      rows: gaps.length,
      effect: `not filled: left as "${NOT_DESCRIBED}", which needs a rock`,
    });
  }
  return faults;
}
