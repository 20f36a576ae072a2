export type { CardPaper } from "./card-paper.ts";
export { cardText } from "./card-text.ts";
