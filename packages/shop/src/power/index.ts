export { powerSheets } from "./power-sheets.ts";
export { powerTable, powerWords } from "./power-table.ts";
