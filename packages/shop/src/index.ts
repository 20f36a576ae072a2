export * from "./card/index.ts";
export * from "./face/index.ts";
export * from "./profile/index.ts";
export type { SheetTitle } from "./sheet/index.ts";
export { type Sheet, type SheetOptions, sheetsOf } from "./sheets.ts";
export { type SummaryOptions, summaryText } from "./summary/summary-text.ts";
export * from "./table/index.ts";
