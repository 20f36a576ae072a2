export { type FaceDrawingInput, faceDrawing } from "./face-drawing.ts";
export type { DrawnPorts } from "./port-places.ts";
