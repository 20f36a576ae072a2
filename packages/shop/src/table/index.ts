export { type CutterTableInput, cutterTable, cutterTableRows, type PerCutterFigures } from "./cutter-table.ts";
