import { checkIndex, checkWellItems } from "./las-checks.ts";
import { type LasFile, type LasItem, type LasSet, lasItem } from "./las-file.ts";
import { lasLine } from "./las-line.ts";
import { type LasDelimiter, lasRows } from "./las-rows.ts";
import { type LasSection, lasSections, sectionsByLetter } from "./las-section.ts";
import { lasCurves } from "./las-values.ts";
import { counted, faultLog, type ImportRefusal, refusal } from "./report.ts";
import { plainText } from "./text-encoding.ts";

type Log = ReturnType<typeof faultLog>;

/** Thrown inside the reader only: the first thing that makes a file unreadable, with its line. */
class Unreadable extends Error {
  readonly line: number | undefined;
  constructor(reason: string, line?: number) {
    super(reason);
    this.line = line;
  }
}

/**
 * Reads a LAS file of version 1.2, 2.0 or 3.0, from its bytes or its text. What breaks the grammar so that a value's
 * place cannot be told is refused, with the line; what breaks a rule of content is read and named.
 *
 * @source (a) CWLS LAS 2.0 standard, text of January 2014, with the differences of 1992 and February 2017; CWLS LAS 3
 * structure document
 */
export function readLas(given: Uint8Array | string): LasFile | ImportRefusal {
  const log = faultLog();
  try {
    return read(given, log);
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    return refusal({ reason: error.message, line: error.line, report: { lines: [], faults: log.faults() } });
  }
}

function read(given: Uint8Array | string, log: Log): LasFile {
  const { text, encoding } = plainText(given);
  const { above, sections: titled } = lasSections(text);
  if (titled.length === 0) throw new Unreadable("this is no LAS file: no line begins with a tilde (~)");
  noteBytes(text, log);
  const stray = above.filter((line) => line.text.trim() !== "" && !line.text.trim().startsWith("#"));
  for (const { line } of stray) {
    log.note(
      { code: "text-above", what: (n) => `${counted(n, "line")} above the first section`, effect: "not used" },
      line,
    );
  }

  const versionSection = titled.find((section) => section.kind === "version");
  if (!versionSection) {
    throw new Unreadable("there is no version section (~V), so the rules of the file are not known", titled[0]?.line);
  }
  const versionItems = items(versionSection, log);
  const version = statedVersion(versionItems, versionSection, log);
  const sections = version.rules === "3" ? titled : sectionsByLetter(titled);
  const wrap = statedWrap(versionItems, log);
  const delimiter = statedDelimiter(versionItems, version.rules, log);
  checkSections(sections, version.rules, log);

  const wellSection = sections.find((section) => section.kind === "well");
  if (!wellSection) throw new Unreadable("there is no well section (~W)");
  const well = wellItems(wellSection, version.rules, log);
  checkWellItems(well, log);
  const nullText = lasItem(well, "NULL")?.data ?? "";
  const nullValue = nullText !== "" && Number.isFinite(Number(nullText)) ? Number(nullText) : undefined;

  const { sets, wrapped } = readSets({ sections, wrap, delimiter, nullValue, log });
  const main = sets.find((set) => set.name === "log") ?? sets[0];
  const index = main?.curves[0];
  if (!main || !index) throw new Unreadable("the file holds no data rows");
  if (index.texts) {
    const first = index.texts[0] ?? "";
    const line = main.rowLines[0];
    throw new Unreadable(`the index ${index.mnemonic} is text ("${first}"); an index must be a plain number`, line);
  }
  checkIndex(well, index, main.rowLines, log);

  const parameters = sections
    .filter((section) => section.kind === "parameter")
    .flatMap((section) => items(section, log));
  const encodingText = encoding === "ASCII" ? "" : `, ${encoding}`;
  return {
    refused: false,
    version: version.text,
    wrapped,
    delimiter,
    encoding,
    ...(nullValue === undefined ? {} : { nullValue }),
    well,
    parameters,
    curves: main.curves,
    sets,
    report: {
      lines: [
        `LAS ${version.text}${encodingText}, ${wrapped ? "wrapped" : "not wrapped"}; columns parted by ${delimiter}.`,
        ...sets.map(setText),
        nullValue === undefined ? "No null value is stated." : `No reading is written as ${nullText}.`,
      ],
      faults: log.faults(),
    },
  };
}

const setText = (set: LasSet): string =>
  `Set ${set.name}: ${counted(set.rowLines.length, "row")}; ${set.curves
    .map((curve) => `${curve.name} [${curve.unit || "no unit"}]`)
    .join(", ")}.`;

function noteBytes(text: string, log: Log): void {
  text.split("\n").forEach((line, at) => {
    if (!/[^\t\x20-\x7e]/.test(line)) return;
    log.note(
      {
        code: "letters-beyond-ascii",
        what: (n) => `${counted(n, "line")} with letters that the standard does not allow`,
        effect: "kept as they are",
      },
      at + 1,
    );
  });
}

/** The header lines of a section; one that its marks do not part is kept as far as it can be told. */
function items(section: LasSection, log: Log): LasItem[] {
  const found: LasItem[] = [];
  for (const { text, line } of section.lines) {
    const trimmed = text.trim();
    if (trimmed.startsWith("#")) continue;
    if (trimmed === "") {
      log.note(
        {
          code: "blank-line-in-header",
          what: (n) => `${counted(n, "blank line")} in the header`,
          effect: "passed over",
        },
        line,
      );
      continue;
    }
    const parted = lasLine(text);
    if (!("error" in parted)) {
      if (/:\s/.test(parted.data)) {
        log.note(
          {
            code: "colon-before-the-last",
            what: (n) => `${counted(n, "header line")} with a colon that may begin the description before the last one`,
            effect: "the last colon begins it, as the standard says; look at the value",
          },
          line,
        );
      }
      found.push({ ...parted, line });
      continue;
    }
    const missing = parted.error === "no dot" ? "a dot behind the mnemonic" : "a colon before the description";
    log.note(
      {
        code: parted.error === "no dot" ? "header-line-without-dot" : "header-line-without-colon",
        what: (n) => `${counted(n, "header line")} without ${missing}`,
        effect: "the words before the missing mark are taken as the name",
      },
      line,
    );
    found.push({ ...parted.partial, line });
  }
  return found;
}

/** Version 1.2 puts the value behind the colon in the well section, except for the four that place the index. */
function wellItems(section: LasSection, rules: string, log: Log): LasItem[] {
  const plain = items(section, log);
  if (rules !== "1.2") return plain;
  return plain.map((item) =>
    /^(STRT|STOP|STEP|NULL)$/i.test(item.mnemonic) ? item : { ...item, data: item.description, description: item.data },
  );
}

function statedVersion(
  versionItems: readonly LasItem[],
  section: LasSection,
  log: Log,
): { text: string; rules: "1.2" | "2" | "3" } {
  const item = lasItem(versionItems, "VERS");
  if (!item) throw new Unreadable("the version section does not say the version (VERS)", section.line);
  const value = Number(item.data);
  if (value === 1.2) return { text: "1.2", rules: "1.2" };
  if (value === 2 || value === 3) return { text: value.toFixed(1), rules: value === 2 ? "2" : "3" };
  if (value > 2 && value < 3) {
    log.note(
      {
        code: "unknown-version",
        what: () => `Version ${item.data} is not known`,
        effect: "read by the rules of version 2.0",
      },
      item.line,
    );
    return { text: item.data, rules: "2" };
  }
  throw new Unreadable(`the version is "${item.data}"; 1.2, 2.0 and 3.0 are read`, item.line);
}

function statedWrap(versionItems: readonly LasItem[], log: Log): boolean | undefined {
  const item = lasItem(versionItems, "WRAP");
  if (!item) return undefined;
  const said = item.data.toUpperCase();
  if (said === "YES" || said === "NO") return said === "YES";
  log.note(
    { code: "wrap-unclear", what: () => `WRAP is "${item.data}", not YES or NO`, effect: "judged from the rows" },
    item.line,
  );
  return undefined;
}

function statedDelimiter(versionItems: readonly LasItem[], rules: string, log: Log): LasDelimiter {
  const item = lasItem(versionItems, "DLM");
  if (!item || item.data === "") return "space";
  if (rules !== "3") {
    log.note(
      {
        code: "delimiter-before-3",
        what: () => "The file names a delimiter, which only version 3 does",
        effect: "followed",
      },
      item.line,
    );
  }
  const named: Readonly<Record<string, LasDelimiter>> = { SPACE: "space", COMMA: "comma", TAB: "tab" };
  const delimiter = named[item.data.toUpperCase()];
  if (!delimiter) throw new Unreadable(`the delimiter is "${item.data}"; SPACE, COMMA and TAB are read`, item.line);
  return delimiter;
}

/** Before version 3 the four sections stand once each; in version 3 sets repeat. */
function checkSections(sections: readonly LasSection[], rules: string, log: Log): void {
  const first = sections[0];
  if (first && first.kind !== "version") {
    log.note(
      { code: "version-not-first", what: () => "The version section is not the first", effect: "read all the same" },
      first.line,
    );
  }
  if (rules === "3") return;
  const names = { version: "version (~V)", well: "well (~W)", definition: "curve (~C)", data: "data (~A)" } as const;
  for (const [kind, name] of Object.entries(names)) {
    const found = sections.filter((section) => section.kind === kind);
    if (found.length === 0) throw new Unreadable(`there is no ${name} section`);
    const second = found[1];
    if (second) throw new Unreadable(`there is more than one ${name} section; a file holds one log`, second.line);
  }
  const last = sections.at(-1);
  if (last && last.kind !== "data") {
    log.note(
      { code: "data-not-last", what: () => "A section stands behind the data", effect: "read all the same" },
      last.line,
    );
  }
}

/** Every data section with the definition it belongs to. */
function readSets(parts: {
  sections: readonly LasSection[];
  wrap: boolean | undefined;
  delimiter: LasDelimiter;
  nullValue: number | undefined;
  log: Log;
}): { sets: LasSet[]; wrapped: boolean } {
  const { sections, wrap, delimiter, nullValue, log } = parts;
  const sets: LasSet[] = [];
  const unread: Unreadable[] = [];
  // Two data sections may share a definition; its lines are read, and their faults noted, once.
  const definitionsOf = new Map<LasSection, LasItem[]>();
  let wrapped = false;
  sections.forEach((section, at) => {
    if (section.kind !== "data") return;
    const definition = definitionOf(section, sections, at);
    if (!definition)
      throw new Unreadable(`no curves are defined for the data section "~${section.title}"`, section.line);
    const definitions = definitionsOf.get(definition) ?? items(definition, log);
    if (!definitionsOf.has(definition)) noteNameless(definitions, log);
    definitionsOf.set(definition, definitions);
    const mnemonics = definitions.map((item) => item.mnemonic);
    const titleWords = section.title.split("|")[0]?.trim().split(/\s+/).slice(1) ?? [];
    const rows = lasRows({ lines: section.lines, mnemonics, wrap, delimiter, titleWords, log });
    if ("reason" in rows) {
      unread.push(new Unreadable(rows.reason, rows.line));
      if (section.set === "log") throw unread[0];
      const { reason } = rows;
      log.note(
        {
          code: `set-unread-${section.set}`,
          what: () => `Set ${section.set}: ${reason}`,
          effect: "this set is left out",
        },
        rows.line ?? section.line,
      );
      return;
    }
    wrapped ||= rows.wrapped;
    const curves = lasCurves({ definitions, rows, nullValue, commaDecimals: delimiter !== "comma", log });
    noteRepeated(curves, log);
    const same = sets.filter((set) => set.name === section.set || set.name.startsWith(`${section.set} (`)).length;
    const name = same === 0 ? section.set : `${section.set} (${same + 1})`;
    if (same > 0) {
      log.note(
        {
          code: "set-repeats",
          what: (n) => `${counted(n, "further data section")} of a set that was there before`,
          effect: "kept as sets of their own; the first is the log",
        },
        section.line,
      );
    }
    sets.push({ name, curves, rowLines: rows.lines });
  });
  if (sets.length === 0 && unread[0]) throw unread[0];
  return { sets, wrapped };
}

/** The definition a data section names, else the last one before it of the same set, else the only one there is. */
function definitionOf(data: LasSection, sections: readonly LasSection[], at: number): LasSection | undefined {
  const definitions = sections.filter((section) => section.kind === "definition");
  const before = sections.slice(0, at).filter((section) => section.kind === "definition");
  const named = data.tiedTo === undefined ? [] : definitions.filter((section) => section.name === data.tiedTo);
  return (
    named.at(-1) ??
    before.filter((section) => section.set === data.set).at(-1) ??
    (definitions.length === 1 ? definitions[0] : undefined)
  );
}

function noteNameless(definitions: readonly LasItem[], log: Log): void {
  for (const item of definitions) {
    if (item.mnemonic !== "") continue;
    log.note(
      {
        code: "curve-without-name",
        what: (n) => `${counted(n, "curve")} without a mnemonic`,
        effect: "named by its column",
      },
      item.line,
    );
  }
}

function noteRepeated(curves: readonly { name: string; mnemonic: string }[], log: Log): void {
  for (const curve of curves) {
    if (curve.name === curve.mnemonic) continue;
    log.note({
      code: "mnemonic-repeats",
      what: (n) => `${counted(n, "curve")} with a mnemonic that was there before`,
      effect: "numbered",
    });
  }
}
