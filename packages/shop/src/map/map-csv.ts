import { type BedMap, inUnit, type MapStudy, type QuantityKind, type UnitSystem } from "@bitwright/traveler";
import { csvText } from "../table/csv-text.ts";
import { LIMIT_SHORT } from "./limit-words.ts";

/** Units and decimals of the columns of the tables. */
const COLUMNS = {
  field: { depth: ["ft", 1], force: ["lbf", 0], advance: ["in/rev", 4], rate: ["ft/h", 1], torque: ["ft-lbf", 0] },
  metric: { depth: ["m", 2], force: ["kN", 3], advance: ["mm/rev", 3], rate: ["m/h", 2], torque: ["N m", 0] },
} as const satisfies Record<UnitSystem, Partial<Record<QuantityKind, readonly [unit: string, decimals: number]>>>;

type ColumnKind = keyof (typeof COLUMNS)["field"];

/** Rates over even steps of weight and speed, with the limits that each point passes; one row for each point of each bed. */
export function mapTableCsv({ beds }: MapStudy, units: UnitSystem): string {
  const { head, cell, rpm } = writers(units);
  return csvText([
    [
      ...bedHeads(head),
      "rotary speed [rpm]",
      head("weight on bit", "force"),
      head("advance", "advance"),
      head("rate", "rate"),
      head("torque", "torque"),
      "limits passed",
    ],
    ...beds.flatMap((bed) =>
      bed.table.map((point) => [
        ...bedCells(bed, cell),
        rpm(point.rotarySpeed),
        cell("force", point.weight),
        cell("advance", point.advance),
        cell("rate", point.rate),
        cell("torque", point.torque),
        point.passes.map((limit) => LIMIT_SHORT[limit]).join(" "),
      ]),
    ),
  ]);
}

/** Where each limit is met, speed by speed, and the points marked on the map; one row for each. */
export function mapLinesCsv({ beds }: MapStudy, units: UnitSystem): string {
  const { head, cell, rpm } = writers(units);
  return csvText([
    [
      ...bedHeads(head),
      "line or point",
      "rotary speed [rpm]",
      head("weight on bit", "force"),
      head("advance", "advance"),
      head("rate", "rate"),
    ],
    ...beds.flatMap((bed) => {
      const { best, lines } = bed.map;
      const named = [
        ...(best ? [{ name: `best, held by ${LIMIT_SHORT[best.binds]}`, points: [best] }] : []),
        { name: "card", points: [bed.run] },
        ...(bed.rulePoint ? [{ name: "rule of thumb", points: [bed.rulePoint] }] : []),
        ...lines.map(({ limit, points }) => ({ name: `limit: ${LIMIT_SHORT[limit]}`, points })),
      ];
      return named.flatMap(({ name, points }) =>
        points.map((point) => [
          ...bedCells(bed, cell),
          name,
          rpm(point.rotarySpeed),
          cell("force", point.weight),
          cell("advance", point.advance),
          cell("rate", point.rate),
        ]),
      );
    }),
  ]);
}

type Cell = (kind: ColumnKind, si: number) => string;

function bedHeads(head: (name: string, kind: ColumnKind) => string): string[] {
  return ["bed", head("from", "depth"), head("to", "depth")];
}

function bedCells({ name, top, bottom }: BedMap, cell: Cell): string[] {
  return [name, cell("depth", top), cell("depth", bottom)];
}

function writers(units: UnitSystem) {
  const columns = COLUMNS[units];
  return {
    head: (name: string, kind: ColumnKind) => `${name} [${columns[kind][0]}]`,
    cell: (kind: ColumnKind, si: number) => inUnit(kind, si, columns[kind][0]).toFixed(columns[kind][1]),
    rpm: (si: number) => inUnit("rotary speed", si, "rpm").toFixed(1),
  };
}
