export { type CutterFrame, cutterFrame, edgePoint } from "./cutter-frame.ts";
export type { BitLayout, CutterPose, PlacedCutter } from "./placed-cutter.ts";
