export { LIMIT_NAMES, LIMIT_SHORT } from "./limit-words.ts";
export { mapLinesCsv, mapTableCsv } from "./map-csv.ts";
export { type MapDrawingInput, mapDrawing } from "./map-drawing.ts";
