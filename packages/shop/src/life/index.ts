export { type HeatDrawingInput, heatDrawing } from "./heat-drawing.ts";
export { holesInWords } from "./holes-in-words.ts";
export { endsText, LIFE_FIGURES, lifeBandText, lifeDriversText } from "./life-bands-words.ts";
export { lifeCsv } from "./life-csv.ts";
export { type LifeDrawingInput, lifeDrawing } from "./life-drawing.ts";
export { lifeSheets } from "./life-sheets.ts";
