import type { CardRow } from "@bitwright/engine";
import type { UnitSystem } from "@bitwright/traveler";
import { byRate } from "./bed-words.ts";
import { bareFigure, cardUnit } from "./card-figures.ts";

/** Column of the table of beds that holds the name of the ground. */
export const GROUND = 2;

/** Heads of the table of beds with the units under them; a column that says nothing on this job has empty ones. */
export function bedHeads(units: UnitSystem, pumped: boolean): readonly [readonly string[], readonly string[]] {
  const length = cardUnit("depth", units);
  return [
    ["FROM", "TO", "GROUND", "ON THE BIT", "TURN", pumped ? "FLOW" : "", "EXPECT", pumped ? "CLEANS" : ""],
    [
      length,
      length,
      "",
      `${cardUnit("force", units)} w/ pipe`,
      "rpm",
      pumped ? cardUnit("flow", units) : "",
      cardUnit("rate", units),
      pumped ? cardUnit("rate", units) : "",
    ],
  ];
}

/** The figures of a bed, its depths alone where the bit does not drill it; the name of the ground is left empty. */
export function bedCells(row: CardRow, units: UnitSystem, pumped: boolean): readonly string[] {
  const depths = [bareFigure(row.from, units), bareFigure(row.to, units), ""];
  if (!row.drilled) return depths;
  const weight = byRate(row) ? "by rate" : bareFigure(row.weight, units);
  const figures = [row.rotarySpeed, pumped ? row.flow : undefined, row.rate, pumped ? row.rateCeiling : undefined];
  return [...depths, weight, ...figures.map((figure) => bareFigure(figure, units))];
}
