import { checkIndex, checkWellItems } from "./las-checks.ts";
import { type LasFile, type LasSet, lasItem } from "./las-file.ts";
import { lasItems, wellItems } from "./las-items.ts";
import { type LasSection, lasSections, sectionsByLetter } from "./las-section.ts";
import { lasSets } from "./las-sets.ts";
import { statedDelimiter, statedVersion, statedWrap } from "./las-version.ts";
import { counted, faultLog, type ImportRefusal, refusal } from "./report.ts";
import { plainText } from "./text-encoding.ts";
import { Unreadable } from "./unreadable.ts";

type Log = ReturnType<typeof faultLog>;

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
  const versionItems = lasItems(versionSection, log);
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

  const { sets, wrapped } = lasSets({ sections, wrap, delimiter, nullValue, log });
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
    .flatMap((section) => lasItems(section, log));
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
