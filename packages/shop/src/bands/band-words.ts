import type { Band } from "@bitwright/engine";
import {
  type BedBands,
  type BedFigure,
  formatQuantity,
  inUnit,
  type QuantityKind,
  type UnitSystem,
  unitFor,
} from "@bitwright/traveler";
import { LIMIT_SHORT } from "../map/limit-words.ts";

/** What each figure of a bed's spread is, and the kind of quantity it has. */
export const BAND_FIGURES: Readonly<Record<BedFigure, { readonly name: string; readonly kind: QuantityKind }>> = {
  rate: { name: "rate", kind: "rate" },
  freeRate: { name: "rate, nothing holding it", kind: "rate" },
  weightForRate: { name: "weight for the rate of the card", kind: "force" },
  torque: { name: "torque", kind: "torque" },
  mechanicalEnergy: { name: "specific energy (MSE)", kind: "strength" },
};

/** Units of the figures: one for each kind, so that columns can be read down. */
const UNITS: Readonly<Record<UnitSystem, Partial<Record<QuantityKind, string>>>> = {
  field: {},
  metric: { force: "kN", torque: "N m" },
};

/** The unit in which a figure of a spread is shown. */
export function bandUnit(figure: BedFigure, units: UnitSystem): string {
  const { kind } = BAND_FIGURES[figure];
  return UNITS[units][kind] ?? unitFor(kind, units);
}

/** A figure of a spread in its unit. */
export function inBandUnit(figure: BedFigure, si: number, units: UnitSystem): number {
  return inUnit(BAND_FIGURES[figure].kind, si, bandUnit(figure, units));
}

/** P10, P50 and P90 of a figure with its unit, to the two figures that a band is good for: `31 / 120 / 120 ft/h`. */
export function bandText(figure: BedFigure, band: Band | undefined, units: UnitSystem): string {
  if (!band) return "-";
  const unit = bandUnit(figure, units);
  const bare = (si: number) => {
    const text = formatQuantity(BAND_FIGURES[figure].kind, si, units, { figures: 2, unit, fractions: false });
    return text.slice(0, text.length - unit.length).trimEnd();
  };
  return `${[band.low, band.mid, band.high].map(bare).join(" / ")} ${unit}`;
}

/** Parts of a whole in words, the largest first, those under a per cent left out: `strength 95 %, friction 3 %`. */
export function sharesText(shares: readonly { readonly name: string; readonly share: number }[], most: number): string {
  const said = shares.filter(({ share }) => share >= 0.005).slice(0, most);
  return said.map(({ name, share }) => `${name} ${Math.round(100 * share)} %`).join(", ");
}

/** What drives the spread of a figure, in words. */
export function driversText({ bands }: BedBands, figure: BedFigure, most = 3): string {
  const { drivers } = bands.figures[figure];
  return sharesText(
    drivers.map(({ input, share }) => ({ name: input, share })),
    most,
  );
}

/** What held the rate, in how many of the samples, in words. */
export function heldText({ bands }: BedBands): string {
  return sharesText(
    bands.outcomes.map(({ outcome, share }) => ({
      name: LIMIT_SHORT[outcome as keyof typeof LIMIT_SHORT] ?? outcome,
      share,
    })),
    4,
  );
}
