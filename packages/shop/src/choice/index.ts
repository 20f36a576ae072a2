export { choiceSheets } from "./choice-sheets.ts";
export { choiceText } from "./choice-text.ts";
export type { MoneyStyle } from "./choice-words.ts";
