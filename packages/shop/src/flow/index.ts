export { flowSheets } from "./flow-sheets.ts";
export { flowTable } from "./flow-table.ts";
