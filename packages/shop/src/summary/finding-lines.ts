import { SOURCE_KIND_WORDS } from "@bitwright/engine";
import type { QuantityKind, StationFinding, Workup } from "@bitwright/traveler";
import type { Figures } from "./figures.ts";
import { wrapped } from "./text-table.ts";

/** Every finding, the gravest first, with its figure and its limit. */
export function findingLines({ findings }: Workup, figures: Figures, width: number): string[] {
  if (findings.length === 0) return ["None."];
  const seen = new Set<string>();
  return findings.flatMap((finding) => {
    const line = findingLine(finding, figures);
    if (seen.has(line)) return [];
    seen.add(line);
    return wrapped(line, width, 2);
  });
}

function findingLine(finding: StationFinding, figures: Figures): string {
  const { severity, where, message, source } = finding;
  return `${severity.toUpperCase()} ${where}: ${message}${figureOf(finding, figures)} (${SOURCE_KIND_WORDS[source.kind]})`;
}

function figureOf(finding: StationFinding, figures: Figures): string {
  const { value, limit, unit } = finding;
  const kind = kindOf(finding);
  const show = (si: number) =>
    kind === undefined
      ? `${Number(si.toPrecision(3))} ${unit === "-" ? "" : (unit ?? "")}`.trim()
      : figures.of(kind, si);
  const parts = [
    ...(value === undefined ? [] : [show(value)]),
    ...(limit === undefined ? [] : [`limit ${show(limit)}`]),
  ];
  return parts.length === 0 ? "" : ` [${parts.join(", ")}]`;
}

const KIND_OF_UNIT: Readonly<Record<string, QuantityKind>> = {
  N: "force",
  N·m: "torque",
  Pa: "pressure",
  "m³/s": "flow",
  "rad/s": "rotary speed",
  W: "power",
  rad: "angle",
  K: "temperature",
};
/** Lengths from here up are depths, below it parts of a bit [m]. */
const LEAST_DEPTH = 1;

/** The quantity a finding's SI unit means: depth or part share the metre, rate and flow speeds the metre a second. */
function kindOf({ code, value = 0, limit = 0, unit = "" }: StationFinding): QuantityKind | undefined {
  if (unit === "m") return Math.max(Math.abs(value), Math.abs(limit)) >= LEAST_DEPTH ? "depth" : "length";
  if (unit === "m/s") {
    if (/rate|cuttings/.test(code)) return "rate";
    return /port|slot/.test(code) ? "speed" : "uphole speed";
  }
  return KIND_OF_UNIT[unit];
}
