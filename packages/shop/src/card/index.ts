export { type CardPaper, cardText } from "./card-text.ts";
