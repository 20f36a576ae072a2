import type { DepthStudy, QuantityKind, UnitSystem } from "@bitwright/traveler";
import { csvFigure } from "../table/csv-figure.ts";
import { csvText } from "../table/csv-text.ts";

const UNITS = {
  field: { depth: "ft", force: "lbf", pressure: "psi", rate: "ft/h", duration: "min" },
  metric: { depth: "m", force: "N", pressure: "kPa", rate: "m/h", duration: "min" },
} as const satisfies Record<UnitSystem, Partial<Record<QuantityKind, string>>>;

type Kind = keyof (typeof UNITS)["field"];

/** Every joint as CSV text: weight, feed and gauge, and what the flow cleans; pull-down above zero, hold-back below. */
export function depthCsv({ joints }: DepthStudy, units: UnitSystem): string {
  const unit = UNITS[units];
  const head = (name: string, kind: Kind) => `${name} [${unit[kind]}]`;
  const cell = (kind: Kind, si: number | undefined) => csvFigure(kind, si, unit[kind]);
  return csvText([
    [
      "joint",
      head("bit at", "depth"),
      "ground",
      head("weight wanted", "force"),
      head("string in fluid", "force"),
      head("feed", "force"),
      head("feed gauge", "pressure"),
      head("most weight", "force"),
      head("neutral point above the bit", "depth"),
      "rig",
      head("rate", "rate"),
      head("ceiling, least", "rate"),
      head("ceiling", "rate"),
      head("ceiling, most", "rate"),
      head("bottoms up", "duration"),
      head("chips up", "duration"),
      head("before a connection", "duration"),
    ],
    ...joints.map(({ cleaning, ...joint }) => [
      String(joint.joint),
      cell("depth", joint.depth),
      joint.bed,
      cell("force", joint.targetWeight),
      cell("force", joint.hangingWeight),
      cell("force", joint.feedForce),
      cell("pressure", joint.gaugeReading),
      cell("force", joint.mostWeight),
      cell("depth", joint.neutralPoint),
      joint.verdict,
      cell("rate", joint.rate),
      cell("rate", cleaning?.rateCeiling.low),
      cell("rate", cleaning?.rateCeiling.mid),
      cell("rate", cleaning?.rateCeiling.high),
      cell("duration", cleaning?.bottomsUpTime),
      cell("duration", cleaning?.chipsUpTime),
      cell("duration", cleaning?.circulationTime),
    ]),
  ]);
}
