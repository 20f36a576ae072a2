/** A numbered line of a file. */
export interface NumberedLine {
  readonly text: string;
  /** Counted from 1 [-]. */
  readonly line: number;
}

/** What a section of a LAS file holds. `set` is told by name only in LAS 3; before it there is one set of curves. */
type LasSectionKind = "version" | "well" | "definition" | "data" | "parameter" | "other";

export interface LasSection {
  readonly kind: LasSectionKind;
  /** As it stands behind the tilde. */
  readonly title: string;
  /** The word of its title, in small letters and without a number in brackets. */
  readonly name: string;
  /** In LAS 3: the set it belongs to, in small letters, `log` for the log itself. */
  readonly set: string;
  /** In LAS 3: the definition that a data section names behind its stroke, in small letters. */
  readonly tiedTo?: string;
  /** Line of its title, counted from 1 [-]. */
  readonly line: number;
  readonly lines: readonly NumberedLine[];
}

/** Parts a file at the lines whose first mark is a tilde; what stands above the first is `above`. */
export function lasSections(text: string): { above: NumberedLine[]; sections: LasSection[] } {
  const above: NumberedLine[] = [];
  const open: { title: string; line: number; lines: NumberedLine[] }[] = [];
  const lines = text.split("\n");
  lines.forEach((line, at) => {
    const title = /^\s*~\s*(.*)$/.exec(line);
    if (title) open.push({ title: (title[1] ?? "").trim(), line: at + 1, lines: [] });
    else (open.at(-1)?.lines ?? above).push({ text: line, line: at + 1 });
  });
  return { above, sections: open.map((section) => ({ ...section, ...kindOf(section.title) })) };
}

/** The sections of a file of version 1.2 or 2.0: there the letter behind the tilde decides, whatever follows it. */
export function sectionsByLetter(sections: readonly LasSection[]): LasSection[] {
  const kinds: Readonly<Record<string, LasSectionKind>> = {
    V: "version",
    W: "well",
    C: "definition",
    P: "parameter",
    A: "data",
  };
  return sections.map((section) => ({
    ...section,
    kind: kinds[section.title.charAt(0).toUpperCase()] ?? "other",
    set: "log",
  }));
}

/** Kind and set by the whole word, as LAS 3 names them, the older names still understood. */
function kindOf(title: string): Pick<LasSection, "kind" | "name" | "set" | "tiedTo"> {
  const [named = "", behind] = title.split("|");
  const word = bare(named.trim().split(/\s+/)[0] ?? "");
  const tiedTo = behind === undefined ? undefined : bare(behind);
  const tied = tiedTo === undefined ? { name: word } : { name: word, tiedTo };
  if (/^v(er|$)/.test(word)) return { ...tied, kind: "version", set: "" };
  if (/^w(ell)?$/.test(word)) return { ...tied, kind: "well", set: "" };
  if (/^c(urves?)?$/.test(word)) return { ...tied, kind: "definition", set: "log" };
  if (/^a(sc(ii)?)?$/.test(word)) return { ...tied, kind: "data", set: "log" };
  if (/^p(arameters?)?$/.test(word)) return { ...tied, kind: "parameter", set: "log" };
  const parted = /^(?<set>.+?)_(?<role>definition|data|parameter)(?<more>.*)$/.exec(word)?.groups;
  if (parted) {
    const kind = parted.role === "data" ? "data" : parted.role === "parameter" ? "parameter" : "definition";
    return { ...tied, kind, set: `${parted.set}${parted.more ?? ""}` };
  }
  return { ...tied, kind: tiedTo === undefined ? "other" : "data", set: word };
}

/** A section's or a definition's name without its number in brackets, in small letters. */
function bare(name: string): string {
  return name
    .trim()
    .toLowerCase()
    .replace(/\s*\[\d+\]\s*$/, "")
    .replace(/\s+/g, "_");
}
