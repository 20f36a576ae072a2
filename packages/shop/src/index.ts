export * from "./bands/index.ts";
export {
  CARD_LINK_BYTES,
  type CardPaper,
  cardText,
  feedRows,
  phonePage,
  wholeFigure,
} from "./card/index.ts";
export * from "./choice/index.ts";
export * from "./depth/index.ts";
export * from "./face/index.ts";
export * from "./flow/index.ts";
export * from "./life/index.ts";
export * from "./map/index.ts";
export * from "./power/index.ts";
export * from "./profile/index.ts";
export type { SheetTitle } from "./sheet/index.ts";
export { type Sheet, type SheetOptions, sheetsOf } from "./sheets.ts";
export * from "./solver/index.ts";
export * from "./stability/index.ts";
export { bandsSheets, mapSheets } from "./study-sheets.ts";
export { type Figures, figuresIn } from "./summary/figures.ts";
export { findingLines, type ToldFinding, toldFindings } from "./summary/finding-lines.ts";
export { fitAnswer } from "./summary/ground-lines.ts";
export { LIMIT_WORDS } from "./summary/running-lines.ts";
export { type SummaryOptions, summaryText } from "./summary/summary-text.ts";
export { textTable } from "./summary/text-table.ts";
export { qrSvg } from "./svg/index.ts";
export * from "./table/index.ts";
