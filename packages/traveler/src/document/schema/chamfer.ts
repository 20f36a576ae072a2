import type { QuantityLimits } from "../../quantity/index.ts";

/** Chamfers from a sharp edge to the widest that is ground. */
export const CHAMFER_WIDTH: QuantityLimits = { least: "0 in", most: "0.2 in" };
/** Chamfers measured from the plane of the face; short of a right angle. */
export const CHAMFER_ANGLE: QuantityLimits = { least: "0 deg", most: "85 deg" };
