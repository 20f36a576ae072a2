export { depthSheets } from "./depth-sheets.ts";
export { depthTable } from "./depth-table.ts";
export { stripSheet } from "./strip-sheet.ts";
