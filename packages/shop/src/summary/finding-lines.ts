import { SOURCE_KIND_WORDS } from "@bitwright/engine";
import type { QuantityKind, StationFinding, Workup } from "@bitwright/traveler";
import type { Figures } from "./figures.ts";
import { wrapped } from "./text-table.ts";

/** Every finding, the gravest first, with its figure and its limit; one that is found in several places is said once. */
export function findingLines(workup: Pick<Workup, "findings">, figures: Figures, width: number): string[] {
  const told = toldFindings(workup, figures);
  if (told.length === 0) return ["None."];
  return told.flatMap(({ severity, places, message, figure, source }) => {
    const line = `${severity.toUpperCase()} ${places}: ${message}${figure} (${SOURCE_KIND_WORDS[source.kind]})`;
    return wrapped(line, width, 2);
  });
}

/** A finding in words, with every place where it is met. */
export interface ToldFinding extends Pick<StationFinding, "code" | "severity" | "message" | "source" | "station"> {
  /** The places in one phrase. */
  readonly places: string;
  /** The places one by one. */
  readonly where: readonly string[];
  /** The figure found and its limit in brackets, with a space before them; empty where there are none. */
  readonly figure: string;
}

/** The findings of a workup in words, the gravest first, each said once. */
export function toldFindings({ findings }: Pick<Workup, "findings">, figures: Figures): ToldFinding[] {
  const alike = new Map<string, StationFinding[]>();
  for (const finding of findings) {
    const { severity, message, source, unit, limit } = finding;
    const key = [severity, message, source.kind, unit, limit].join("|");
    alike.set(key, [...(alike.get(key) ?? []), finding]);
  }
  return [...alike.values()].map((group) => {
    const [{ code, severity, message, source, station }] = group;
    const where = group.map((one) => one.where);
    return {
      code,
      severity,
      message,
      source,
      station,
      places: placesOf(group),
      where,
      figure: figuresOf(group, figures),
    };
  });
}

/** The places of a finding; `cutter 1, in shale` and `cutter 2, in shale` become `cutters 1, 2, in shale`. */
function placesOf(group: readonly StationFinding[]): string {
  const byGround = new Map<string, string[]>();
  for (const { where } of group) {
    const at = where.indexOf(", in ");
    const [part, ground] = at < 0 ? [where, ""] : [where.slice(0, at), where.slice(at)];
    const parts = byGround.get(ground) ?? [];
    const numbered = /^cutter (\d+)$/.exec(part);
    const short = numbered && parts[0]?.startsWith("cutter ") ? numbered[1] : part;
    if (!parts.includes(short) && !parts.includes(part)) byGround.set(ground, [...parts, short]);
  }
  return [...byGround].map(([ground, parts]) => partsInWords(parts) + ground).join("; ");
}

function partsInWords(parts: readonly string[]): string {
  if (parts.length === 1 || !parts[0].startsWith("cutter ")) return parts.join("; ");
  return parts.join(", ").replace("cutter", "cutters");
}

/** The figures of one finding, or their range over the places where it is met, and the limit they share. */
function figuresOf(group: readonly StationFinding[], figures: Figures): string {
  const [first] = group;
  const { limit } = first;
  const values = group.flatMap(({ value }) => (value === undefined ? [] : [value]));
  if (values.length === 0) return limit === undefined ? "" : ` [limit ${shown(first, limit, figures)}]`;
  const low = Math.min(...values);
  const high = Math.max(...values);
  if (limit === undefined) return ` [${span(shown(first, low, figures), shown(first, high, figures))}]`;
  const [from, fromLimit] = shownApart(first, low, limit, figures);
  const [to, toLimit] = shownApart(first, high, limit, figures);
  return ` [${span(from, to)}, limit ${fromLimit.length > toLimit.length ? fromLimit : toLimit}]`;
}

/** `2,240 to 4,120 lbf`: the unit once where both carry the same. */
function span(low: string, high: string): string {
  if (low === high) return low;
  const unit = high.slice(high.indexOf(" "));
  return `${low.endsWith(unit) ? low.slice(0, -unit.length) : low} to ${high}`;
}

function shown(finding: StationFinding, si: number, figures: Figures): string {
  const kind = kindOf(finding);
  return kind === undefined ? plain(finding, si) : figures.of(kind, si);
}

function shownApart(
  finding: StationFinding,
  value: number,
  limit: number,
  figures: Figures,
): readonly [string, string] {
  const kind = kindOf(finding);
  return kind === undefined ? [plain(finding, value), plain(finding, limit)] : figures.apart(kind, value, limit);
}

function plain({ unit = "-" }: StationFinding, si: number): string {
  return `${Number(si.toPrecision(3))} ${unit === "-" ? "" : unit}`.trim();
}

const KIND_OF_UNIT: Readonly<Record<string, QuantityKind>> = {
  N: "force",
  N·m: "torque",
  Pa: "pressure",
  "rad/s": "rotary speed",
  W: "power",
  s: "duration",
  rad: "angle",
  K: "temperature",
};

/** The quantity a finding's SI unit means: depth, diameter and part of a bit share the metre, and so do others. */
function kindOf({ code, station, unit = "" }: StationFinding): QuantityKind | undefined {
  if (unit === "m") {
    if (/pin-|^hole-/.test(code)) return "diameter";
    if (code === "life-ends-gauge") return "length";
    const ofTheHole = ["ground", "string", "inquiry", "life"].includes(station);
    return ofTheHole || /casing|unfit|wall-will-not-stand|in-step/.test(code) ? "depth" : "length";
  }
  if (unit === "m/s") {
    if (/rate|cuttings/.test(code)) return "rate";
    return /port|slot/.test(code) ? "speed" : "uphole speed";
  }
  if (unit === "m³/s") return code.startsWith("air-") ? "air flow" : code.startsWith("power.") ? "fuel flow" : "flow";
  return KIND_OF_UNIT[unit];
}
