/** One line of a LAS header section, parted by its three marks. */
export interface LasLine {
  readonly mnemonic: string;
  readonly unit: string;
  readonly data: string;
  readonly description: string;
}

/** A header line that the three marks do not part. */
export interface LasLineFault {
  /** The mark that is missing. */
  readonly error: "no dot" | "no colon after dot";
  /** What can still be told: the words before the missing mark. */
  readonly partial: LasLine;
}

/**
 * Parts a header line by the rule of the standard: the first dot ends the mnemonic, the first space after that dot ends
 * the unit, the last colon on the line begins the description. A unit that runs straight to the colon leaves no data.
 *
 * @source (a) CWLS LAS 2.0 standard, text of January 2014, the header line and its three delimiters
 */
export function lasLine(text: string): LasLine | LasLineFault {
  const dot = text.indexOf(".");
  if (dot < 0) return { error: "no dot", partial: withoutDot(text) };
  const mnemonic = text.slice(0, dot).trim();
  const behind = text.slice(dot + 1);
  const colon = behind.lastIndexOf(":");
  const unitEnd = endOfUnit(behind);
  const unit = behind.slice(0, unitEnd);
  if (colon < 0) {
    const partial = { mnemonic, unit, data: behind.slice(unitEnd).trim(), description: "" };
    return { error: "no colon after dot", partial };
  }
  const data = colon >= unitEnd ? behind.slice(unitEnd, colon).trim() : "";
  return { mnemonic, unit, data, description: behind.slice(colon + 1).trim() };
}

/** The first space ends the unit, or the last colon where that comes first: in `DEPT.M:1 DEPTH` the unit is `M`. */
function endOfUnit(behind: string): number {
  const space = behind.search(/\s/);
  const colon = behind.lastIndexOf(":");
  const end = space < 0 ? behind.length : space;
  return colon < 0 ? end : Math.min(end, colon);
}

function withoutDot(text: string): LasLine {
  const colon = text.lastIndexOf(":");
  const before = (colon < 0 ? text : text.slice(0, colon)).trim();
  return { mnemonic: before, unit: "", data: "", description: colon < 0 ? "" : text.slice(colon + 1).trim() };
}

/** The format behind a LAS 3 description, `{F}`, and the set that a line is tied to, `| RUN[1]`, taken off its end. */
export function lasDescription(description: string): { text: string; format?: string; tiedTo?: string } {
  const tied = /^(?<text>.*?)\s*\|\s*(?<tiedTo>[^|]*)$/.exec(description)?.groups;
  const rest = tied?.text ?? description;
  const formatted = /^(?<text>.*?)\s*\{\s*(?<format>[^{}]*?)\s*\}\s*$/.exec(rest)?.groups;
  return {
    text: formatted?.text ?? rest,
    ...(formatted?.format === undefined ? {} : { format: formatted.format }),
    ...(tied?.tiedTo === undefined ? {} : { tiedTo: tied.tiedTo.trim() }),
  };
}
