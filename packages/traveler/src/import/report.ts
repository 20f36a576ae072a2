/**
 * What every import hands back beside its result: how the file was read, and each fault by name with the rows it
 * touches. The terminal prints it, a page shows it before anything is accepted. Nothing is left out without a fault.
 */

/** One fault of a file. */
export interface ImportFault {
  /** Stable name for tests and links, for example `depth-runs-backward`. */
  readonly code: string;
  /** What is wrong, in one plain sentence. */
  readonly what: string;
  /** How many rows or lines it touches [-]. */
  readonly rows: number;
  /** What is done about it, and what that means for the result. */
  readonly effect: string;
  /** The first few lines of the file it stands on, counted from 1 [-]; absent where it concerns the whole file. */
  readonly lines?: readonly number[];
}

export interface ImportReport {
  /** How the file was read, one plain sentence each. */
  readonly lines: readonly string[];
  readonly faults: readonly ImportFault[];
}

/** A file that cannot be read, and why. */
export interface ImportRefusal {
  readonly refused: true;
  /** One plain sentence: what stands in the way and what would help. */
  readonly reason: string;
  /** Line of the file, counted from 1 [-]; absent where the whole file is meant. */
  readonly line?: number;
  /** What had been read until then. */
  readonly report: ImportReport;
}

/** How many line numbers a fault names before it leaves the rest to its count [-]. */
const LINES_NAMED = 5;

/** One kind of fault, told once however many lines it stands on. */
export interface FaultKind {
  readonly code: string;
  /** The sentence, for a count of lines. */
  readonly what: (count: number) => string;
  readonly effect: string;
}

/** Gathers faults while a file is read: lines of one kind become one fault, kinds keep the order they were met in. */
export function faultLog(): { note: (kind: FaultKind, line?: number) => void; faults: () => ImportFault[] } {
  const met = new Map<string, { kind: FaultKind; count: number; lines: number[] }>();
  return {
    note: (kind, line) => {
      const entry = met.get(kind.code) ?? { kind, count: 0, lines: [] };
      met.set(kind.code, entry);
      entry.count++;
      if (line !== undefined && entry.lines.length < LINES_NAMED) entry.lines.push(line);
    },
    faults: () =>
      [...met.values()].map(({ kind, count, lines }) => {
        const fault = { code: kind.code, what: kind.what(count), rows: count, effect: kind.effect };
        return lines.length > 0 ? { ...fault, lines } : fault;
      }),
  };
}

/** A fault from the lines it stands on: their number is the count, the first few are named. */
export function faultOnLines(parts: {
  code: string;
  what: string;
  effect: string;
  lines: readonly number[];
}): ImportFault {
  const { code, what, effect, lines } = parts;
  return { code, what, rows: lines.length, effect, lines: lines.slice(0, LINES_NAMED) };
}

/** A refusal, with what had been read until then. */
export function refusal(parts: { reason: string; line?: number | undefined; report?: ImportReport }): ImportRefusal {
  const { reason, line, report = { lines: [], faults: [] } } = parts;
  return line === undefined ? { refused: true, reason, report } : { refused: true, reason, line, report };
}

/** The report as lines of plain text, ready to print. */
export function reportText(report: ImportReport): string[] {
  const faults = report.faults.map((fault) => {
    const where = fault.lines && fault.lines.length > 0 ? ` (line ${listed(fault.lines, fault.rows)})` : "";
    return `${fault.what.replace(/\.$/, "")}${where}: ${fault.effect}`;
  });
  return [...report.lines, ...faults];
}

function listed(lines: readonly number[], rows: number): string {
  const more = rows - lines.length;
  return more > 0 ? `${lines.join(", ")} and ${more} more` : lines.join(", ");
}

/** `1 row`, `3 rows`: a count with its noun. */
export function counted(count: number, noun: string, plural = `${noun}s`): string {
  return `${count.toLocaleString("en-US")} ${count === 1 ? noun : plural}`;
}
