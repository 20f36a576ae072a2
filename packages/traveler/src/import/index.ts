export { type DelimitedOptions, type DelimitedTable, type DroppedRow, readDelimited } from "./delimited.ts";
export { bedsFromDrillingRecord, type DrillingBedsOptions } from "./drilling-beds.ts";
export type { ChannelName } from "./drilling-channels.ts";
export {
  type DrillingRecord,
  type DrillingRecordOptions,
  drillingRecord,
  type RecordChannel,
} from "./drilling-record.ts";
export type { GroundImport, ImportedBed, ImportedGround, NamedRock } from "./ground-section.ts";
export { readLas } from "./las.ts";
export { bedsFromLas, type LasBedsOptions } from "./las-beds.ts";
export { type LasCurve, type LasFile, type LasItem, type LasSet, lasCurve, lasItem } from "./las-file.ts";
export { bedsFromLithologyTable, type LithologyBedsOptions } from "./lithology-beds.ts";
export {
  intervalOrder,
  type LithologyRow,
  type LithologyTable,
  type LithologyTableOptions,
  readLithologyTable,
} from "./lithology-table.ts";
export { type ImportFault, type ImportRefusal, type ImportReport, reportText } from "./report.ts";
