export { wholeFigure } from "./card-figures.ts";
export { CARD_LINK_BYTES } from "./card-link.ts";
export type { CardPaper } from "./card-paper.ts";
export { cardPaperOf } from "./card-paper-of.ts";
export { cardSheet } from "./card-sheet.ts";
export { cardText } from "./card-text.ts";
export { feedRows } from "./feed-rows.ts";
export { phonePage } from "./phone-page.ts";
export { SHEET_STEPS } from "./sheet-step.ts";
