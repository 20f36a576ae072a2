import type { Band } from "@bitwright/engine";
import { formatQuantity, type QuantityKind, type UnitSystem, unitFor } from "@bitwright/traveler";

/** Figures shown in one system of units. */
export interface Figures {
  readonly of: (kind: QuantityKind, si: number) => string;
  /** `low to high unit`, in one unit. */
  readonly range: (kind: QuantityKind, low: number, high: number) => string;
  /** Low, middle and high of a band in one unit: `41 / 63 / 88 ft/h`. */
  readonly band: (kind: QuantityKind, band: Band) => string;
}

const FIGURES_OF_A_BAND = 2;
const USUAL_FIGURES = 3;

/** Writes figures in a system of units, to the figures that an office reads. */
export function figuresIn(system: UnitSystem): Figures {
  const of = (kind: QuantityKind, si: number) => formatQuantity(kind, si, system, { figures: figuresFor(kind) });
  const together = (kind: QuantityKind, values: readonly number[], figures: number, between: string) => {
    const unit = unitFor(kind, system, Math.max(...values.map(Math.abs)));
    const shown = values.map((value) => formatQuantity(kind, value, system, { figures, unit, fractions: false }));
    const bare = (text: string) => text.slice(0, text.length - unit.length).trimEnd();
    return `${shown.map(bare).join(between)} ${unit}`;
  };
  return {
    of,
    range: (kind, low, high) => together(kind, [low, high], figuresFor(kind), " to "),
    band: (kind, { low, mid, high }) => together(kind, [low, mid, high], FIGURES_OF_A_BAND, " / "),
  };
}

/** Depths and diameters are read off exactly; the rest is known to three figures at best. */
function figuresFor(kind: QuantityKind): number {
  return kind === "depth" || kind === "diameter" ? 5 : USUAL_FIGURES;
}
