export { layoutSheets } from "./layout-sheets.ts";
export { type ParetoDrawingInput, paretoDrawing } from "./pareto-drawing.ts";
