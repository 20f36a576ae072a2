import { inUnit, type QuantityKind } from "@bitwright/traveler";

/** A figure as a cell of CSV text, in the unit named; empty where it is not known. */
export function csvFigure(kind: QuantityKind, si: number | undefined, unit: string, figures = 5): string {
  return si === undefined ? "" : Number(inUnit(kind, si, unit).toPrecision(figures)).toString();
}
