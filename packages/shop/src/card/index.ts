export { wholeFigure } from "./card-figures.ts";
export type { CardPaper } from "./card-paper.ts";
export { cardText } from "./card-text.ts";
export { feedRows } from "./feed-rows.ts";
