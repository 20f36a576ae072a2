import { channelUnit } from "./channel-unit.ts";

/** The head of one column, parted into its name and the unit it states. */
export interface ColumnHead {
  /** As it stands in the file. */
  readonly header: string;
  /** The name without the unit. */
  readonly name: string;
  /** The unit as written, where one is stated that is known. */
  readonly unit?: string;
  /** Words in brackets that are no known unit, for example `1 ft` in `ROP(1 ft)`. */
  readonly aside?: string;
}

/** Units that may stand behind a name without brackets; others are words too (`in`, `t`, `h`) and would be misread. */
const BARE_UNITS = new Set(
  [
    "ft",
    "feet",
    "m",
    "metres",
    "meters",
    "psi",
    "kpa",
    "bar",
    "rpm",
    "gpm",
    "klbf",
    "klbs",
    "kn",
    "ft/h",
    "ft/hr",
  ].concat(["m/h", "m/hr", "ft-lbf", "ft-lb", "us/ft", "us/m", "%"]),
);

/**
 * Name and unit of a column head: `Depth(ft)`, `Rotary Speed [rpm]`, `from_m`, `Flow Out %`. Words in brackets that are
 * no unit are kept as an aside: a recorder that writes `ROP(1 ft)` has said a step, not a unit.
 */
export function columnHead(header: string): ColumnHead {
  const text = header.trim();
  const bracketed = /^(?<name>.*?)\s*[([{]\s*(?<inside>[^()[\]{}]*?)\s*[)\]}]\s*\.?$/.exec(text)?.groups;
  if (bracketed) {
    const { name = "", inside = "" } = bracketed;
    if (inside !== "" && channelUnit(inside)) return { header: text, name, unit: inside };
    return inside === "" ? { header: text, name } : { header: text, name, aside: inside };
  }
  const bare = /^(?<name>.*[^\s_,])(?:\s*[_,]\s*|\s+)(?<unit>[A-Za-z/%-]+)$/.exec(text)?.groups;
  if (bare && BARE_UNITS.has((bare.unit ?? "").toLowerCase()) && bare.name !== undefined) {
    return { header: text, name: bare.name.trim(), unit: bare.unit ?? "" };
  }
  return { header: text, name: text };
}
