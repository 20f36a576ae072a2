export { type CrossingDrawingInput, crossingDrawing } from "./crossing-drawing.ts";
export { type SideForceDrawingInput, sideForceDrawing } from "./side-force-drawing.ts";
export { type SpeedsDrawingInput, speedsDrawing } from "./speeds-drawing.ts";
export { crossingTable, steadinessTable } from "./stability-lines.ts";
export { stabilitySheets } from "./stability-sheets.ts";
export { type StickSlipDrawingInput, stickSlipDrawing } from "./stick-slip-drawing.ts";
