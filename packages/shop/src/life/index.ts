export { type HeatDrawingInput, heatDrawing } from "./heat-drawing.ts";
export { lifeCsv } from "./life-csv.ts";
export { type LifeDrawingInput, lifeDrawing } from "./life-drawing.ts";
export { lifeSheets } from "./life-sheets.ts";
