import type { CardFigure, CardFigureKind } from "@bitwright/engine";
import { formatQuantity, inUnit, type UnitSystem, unitFor } from "@bitwright/traveler";

/** Units of the card's columns: one for each kind, so that a column can be read down without looking at units. */
const METRIC_UNIT: Partial<Record<CardFigureKind, string>> = { force: "kN", pressure: "kPa", torque: "kN m" };

/** The unit in which the card prints a kind of figure. */
export function cardUnit(kind: CardFigureKind, units: UnitSystem): string {
  return (units === "metric" ? METRIC_UNIT[kind] : undefined) ?? unitFor(kind, units);
}

/** Significant figures that a gauge or a tape can be read to, for values of a hundred units and more. */
const FIGURES: Readonly<Record<CardFigureKind, number>> = {
  depth: 4,
  diameter: 4,
  flow: 3,
  force: 3,
  "fuel flow": 2,
  length: 3,
  pressure: 3,
  rate: 2,
  "rotary speed": 3,
  torque: 3,
  volume: 2,
};

/** Forces under this are set to two figures: a thousand pounds [N]. */
const SMALL_FORCE = 4448;

/** Figures of a value: nobody sets a feed to a pound, a gauge to a tenth, a rotary to half a turn. */
function figuresOf(kind: CardFigureKind, si: number, inUnits: number): number {
  if (kind === "force") return si < SMALL_FORCE ? 2 : FIGURES.force;
  if (kind === "pressure" || kind === "rotary speed") return inUnits < 100 ? 2 : FIGURES[kind];
  return FIGURES[kind];
}

/** A figure or its range without the unit, for a column that names it: `4,800-6,120`; a dash where there is none. */
export function bareFigure(figure: CardFigure | undefined, units: UnitSystem): string {
  if (!figure) return "-";
  const low = bare(figure.kind, figure.value, units);
  const high = figure.to === undefined ? low : bare(figure.kind, figure.to, units);
  return low === high ? low : `${low}-${high}`;
}

/** A figure or its range with its unit: `2,040-3,060 lbf`. */
export function wholeFigure(figure: CardFigure, units: UnitSystem): string {
  if (figure.kind === "diameter") return formatQuantity("diameter", figure.value, units);
  return `${bareFigure(figure, units)} ${cardUnit(figure.kind, units)}`;
}

function bare(kind: CardFigureKind, value: number, units: UnitSystem): string {
  const unit = cardUnit(kind, units);
  const figures = figuresOf(kind, Math.abs(value), Math.abs(inUnit(kind, value, unit)));
  const text = formatQuantity(kind, value, units, { unit, figures, fractions: false });
  return text.slice(0, text.length - unit.length).trim();
}
