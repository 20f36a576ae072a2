export { bitPrice, cutterPriceOf, type PricedBit } from "./bit-price.ts";
export {
  type BreakEvenInput,
  breakEvenFootage,
  breakEvenRate,
  type NeverPaying,
  type NeverPays,
  type PayingFootage,
  type PayingRate,
} from "./break-even.ts";
export { type CheapestPull, type CostAlongLifeInput, cheapestPull, type LifePoint } from "./cost-along-life.ts";
export { type CostedLength, costPerLength, handlingPerLength, timePrice } from "./cost-per-length.ts";
export type { CutterPrice, PriceSheet } from "./price-sheet.ts";
export { type ReworkValue, type ReworkValueInput, reworkValue } from "./rework-value.ts";
export * from "./usual-prices.ts";
