export type { PlaneLine } from "./passing-plane.ts";
export type { ProfileZone } from "./plane-view.ts";
export { type ProfileDrawingInput, profileDrawing } from "./profile-drawing.ts";
