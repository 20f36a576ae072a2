export { formatQuantity, inUnit, type QuantityFormat, unitFor } from "./format-quantity.ts";
export {
  expectation,
  type Parsed,
  parseQuantity,
  type Quantity,
  type QuantityInput,
  type QuantityLimits,
} from "./parse-quantity.ts";
export { QUANTITY_KINDS, type QuantityKind, type UnitSystem } from "./quantity-kind.ts";
export { siUnit } from "./si-unit.ts";
export { dimensionsWith, unitKey, unitOf } from "./unit-lookup.ts";
export type { Dimension, Unit } from "./unit-table.ts";
