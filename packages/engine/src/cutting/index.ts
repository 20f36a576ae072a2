export { type ContactShape, contactShapeOf, freshChamferHeight } from "./contact-shape.ts";
export type { EdgeTrace } from "./edge-trace.ts";
export { type Engagement, emptyEngagement, engage } from "./engage.ts";
export { type TraceGrid, traceEdges, USUAL_CELL_WIDTH } from "./trace-edges.ts";
