import type { LasItem, LasSet } from "./las-file.ts";
import { lasItems } from "./las-items.ts";
import { type LasDelimiter, lasRows } from "./las-rows.ts";
import type { LasSection } from "./las-section.ts";
import { lasCurves } from "./las-values.ts";
import { counted, type faultLog } from "./report.ts";
import { Unreadable } from "./unreadable.ts";

type Log = ReturnType<typeof faultLog>;

/**
 * Every data section with the definition it belongs to.
 *
 * @throws Unreadable when the log, or every set of a file without one, cannot be read
 */
export function lasSets(parts: {
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
    const definitions = definitionsOf.get(definition) ?? lasItems(definition, log);
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
