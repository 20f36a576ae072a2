import type { Band } from "@bitwright/engine";
import { formatQuantity, inUnit, type QuantityKind, type UnitSystem, unitFor } from "@bitwright/traveler";

/** Figures shown in one system of units. */
export interface Figures {
  readonly of: (kind: QuantityKind, si: number) => string;
  /** A figure that is known to three digits at best, whatever its kind: a footage of a whole life. */
  readonly about: (kind: QuantityKind, si: number) => string;
  /** The figures of one column, all in the unit that suits the largest, so that it can be read down. */
  readonly column: (kind: QuantityKind, values: readonly number[]) => readonly string[];
  /** Two figures in as many digits as it takes to see that they differ: `6.108 in`, `6.11 in`. */
  readonly apart: (kind: QuantityKind, one: number, other: number) => readonly [string, string];
  /** `low to high unit`, in one unit. */
  readonly range: (kind: QuantityKind, low: number, high: number) => string;
  /** Low, middle and high of a band in one unit: `41 / 63 / 88 ft/h`. */
  readonly band: (kind: QuantityKind, band: Band) => string;
}

const FIGURES_OF_A_BAND = 2;
const USUAL_FIGURES = 3;

/** Digits at which two figures that still read alike may as well be called alike. */
const MOST_FIGURES = 6;

/** Writes figures in a system of units, to the figures that an office reads. */
export function figuresIn(system: UnitSystem): Figures {
  const of = (kind: QuantityKind, si: number) =>
    formatQuantity(kind, si, system, { figures: figuresFor(kind, si, system) });
  const together = (kind: QuantityKind, values: readonly number[], figures: readonly number[], between: string) => {
    const unit = unitFor(kind, system, Math.max(...values.map(Math.abs)));
    const shown = values.map((value, at) =>
      formatQuantity(kind, value, system, { figures: figures[at], unit, fractions: false }),
    );
    const bare = (text: string) => text.slice(0, text.length - unit.length).trimEnd();
    return `${shown.map(bare).join(between)} ${unit}`;
  };
  return {
    of,
    about: (kind, si) => formatQuantity(kind, si, system, { figures: USUAL_FIGURES }),
    column: (kind, values) => {
      const unit = unitFor(kind, system, Math.max(0, ...values.map(Math.abs)));
      return values.map((value) =>
        formatQuantity(kind, value, system, { figures: figuresFor(kind, value, system), unit }),
      );
    },
    apart: (kind, one, other) => {
      let shown = [of(kind, one), of(kind, other)] as const;
      if (one === other) return shown;
      for (let figures = USUAL_FIGURES + 1; shown[0] === shown[1] && figures <= MOST_FIGURES; figures++) {
        const format = { figures, fractions: false };
        shown = [formatQuantity(kind, one, system, format), formatQuantity(kind, other, system, format)];
      }
      return shown;
    },
    range: (kind, low, high) =>
      together(
        kind,
        [low, high],
        [low, high].map((value) => figuresFor(kind, value, system)),
        " to ",
      ),
    band: (kind, { low, mid, high }) =>
      together(
        kind,
        [low, mid, high],
        [low, mid, high].map(() => FIGURES_OF_A_BAND),
        " / ",
      ),
  };
}

/** Diameters are read off exactly, depths to a tenth of a foot or metre; the rest is known to three figures at best. */
function figuresFor(kind: QuantityKind, si: number, system: UnitSystem): number {
  if (kind === "diameter") return 5;
  if (kind !== "depth") return USUAL_FIGURES;
  const inUnits = Math.abs(inUnit(kind, si, unitFor(kind, system, si)));
  return Math.max(1, Math.floor(Math.log10(Math.max(inUnits, 1))) + 2);
}
