import {
  formatQuantity,
  type LifeBands,
  type LifeFigure,
  type QuantityKind,
  type UnitSystem,
} from "@bitwright/traveler";
import { sharesText } from "../bands/band-words.ts";

/** The figures of a life's spread in the order in which they are told. */
export const LIFE_FIGURES: Readonly<Record<LifeFigure, { readonly name: string; readonly kind?: QuantityKind }>> = {
  footage: { name: "hole drilled", kind: "depth" },
  holes: { name: "whole holes" },
  timeOnBottom: { name: "time on bottom", kind: "duration" },
  meanRate: { name: "mean rate", kind: "rate" },
};

/** A figure of a life, to the two digits that a band is good for. */
function lifeFigureText(figure: LifeFigure, si: number, units: UnitSystem): string {
  const { kind } = LIFE_FIGURES[figure];
  if (kind === undefined) return String(Math.round(si));
  return formatQuantity(kind, si, units, { figures: 2, ...(kind === "duration" ? { unit: "h" } : {}) });
}

/** P10, P50 and P90 of a figure of a life in words. */
export function lifeBandText({ bands }: LifeBands, figure: LifeFigure, units: UnitSystem): string {
  const { band } = bands.figures[figure];
  if (!band) return "-";
  return [band.low, band.mid, band.high].map((si) => lifeFigureText(figure, si, units)).join(" / ");
}

/** What drives the spread of a figure of a life, in words. */
export function lifeDriversText({ bands }: LifeBands, figure: LifeFigure, most = 3): string {
  return sharesText(
    bands.figures[figure].drivers.map(({ input, share }) => ({ name: input, share })),
    most,
  );
}

/** What ended the lives, in words. */
export function endsText({ bands }: LifeBands): string {
  return sharesText(
    bands.outcomes.map(({ outcome, share }) => ({ name: outcome, share })),
    4,
  );
}
