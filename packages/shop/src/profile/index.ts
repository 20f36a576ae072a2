export { type ProfileDrawingInput, profileDrawing } from "./profile-drawing.ts";
