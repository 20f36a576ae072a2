export { type CutterTableInput, cutterTableCsv, cutterTableRows, type PerCutterFigures } from "./cutter-table.ts";
