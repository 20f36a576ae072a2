export { bitPrice, cutterPriceOf, type PricedBit } from "./bit-price.ts";
export { type CheapestPull, type CostAlongLifeInput, cheapestPull, type LifePoint } from "./cost-along-life.ts";
export { type CostedLength, costPerLength, handlingPerLength, timePrice } from "./cost-per-length.ts";
export type { CutterPrice, PriceSheet } from "./price-sheet.ts";
export * from "./usual-prices.ts";
