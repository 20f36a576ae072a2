import { type QuantityKind, type UnitSystem, unitFor } from "@bitwright/traveler";

/** The one unit of a column, which suits its largest figure, so that it can be read down. */
export function columnUnit(kind: QuantityKind, values: readonly number[], units: UnitSystem): string {
  return unitFor(kind, units, Math.max(0, ...values.map(Math.abs)));
}
