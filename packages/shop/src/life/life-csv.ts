import type { Life, LifeBed } from "@bitwright/engine";
import { inUnit, type QuantityKind, type UnitSystem } from "@bitwright/traveler";
import { LIMIT_SHORT } from "../map/limit-words.ts";
import { csvText } from "../table/csv-text.ts";

/** Units and decimals of the columns. */
const COLUMNS = {
  field: {
    depth: ["ft", 1],
    rate: ["ft/h", 1],
    force: ["lbf", 0],
    torque: ["ft-lbf", 0],
    temperature: ["°F", 0],
    length: ["in", 4],
  },
  metric: {
    depth: ["m", 2],
    rate: ["m/h", 2],
    force: ["N", 0],
    torque: ["N m", 0],
    temperature: ["°C", 0],
    length: ["mm", 3],
  },
} as const satisfies Record<UnitSystem, Partial<Record<QuantityKind, readonly [unit: string, decimals: number]>>>;

type Kind = keyof (typeof COLUMNS)["field"];

/** The march of a life stretch by stretch as CSV text; worn heights of the cutters in millimetres in both systems. */
export function lifeCsv(
  { steps }: Pick<Life, "steps">,
  { beds, units }: { readonly beds: readonly LifeBed[]; readonly units: UnitSystem },
): string {
  const columns = COLUMNS[units];
  const head = (name: string, kind: Kind) => `${name} [${columns[kind][0]}]`;
  const cell = (kind: Kind, si: number) => inUnit(kind, si, columns[kind][0]).toFixed(columns[kind][1]);
  const cutters = steps[0]?.wornHeights.length ?? 0;
  return csvText([
    [
      head("hole drilled", "depth"),
      "hole",
      "bed",
      head("depth", "depth"),
      "time on bottom [h]",
      head("rate", "rate"),
      "held by",
      head("weight on bit", "force"),
      head("torque", "torque"),
      head("hottest", "temperature"),
      "hottest cutter",
      "inner grade",
      "outer grade",
      head("gauge lost", "length"),
      head("gauge cutters lost", "length"),
      head("side force", "force"),
      ...Array.from({ length: cutters }, (_, k) => `worn height ${k + 1} [mm]`),
    ],
    ...steps.map((step) => [
      cell("depth", step.footage),
      String(step.holeNumber),
      beds[step.bedIndex].name,
      cell("depth", step.depth),
      inUnit("duration", step.timeOnBottom, "h").toFixed(2),
      cell("rate", step.rate),
      LIMIT_SHORT[step.binds],
      cell("force", step.weight),
      cell("torque", step.torque),
      cell("temperature", step.hottestTemperature),
      String(step.hottestCutter),
      step.innerGrade.toFixed(2),
      step.outerGrade.toFixed(2),
      cell("length", step.undergauge),
      cell("length", step.cutterUndergauge),
      cell("force", step.sideForce),
      ...step.wornHeights.map((height) => inUnit("length", height, "mm").toFixed(3)),
    ]),
  ]);
}
