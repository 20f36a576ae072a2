export { depthSheets } from "./depth-sheets.ts";
export { depthTable } from "./depth-table.ts";
