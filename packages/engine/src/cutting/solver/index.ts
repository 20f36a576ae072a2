export { LEAST_FACE_OVERLAP, LEAST_SWEEP_OVERLAP } from "./candidate-cover.ts";
export type { LayoutFigures } from "./layout-figures.ts";
export {
  type EvenMeasure,
  type LayoutFreedom,
  type LayoutQuestion,
  type SearchWatch,
  USUAL_ADVANCES,
  USUAL_CANDIDATES,
  USUAL_FREEDOM,
} from "./layout-question.ts";
export {
  type LayoutSolver,
  layoutSolver,
  type SolvedLayout,
  type SolvedLayouts,
  solveLayout,
  solveLayoutInSteps,
} from "./layout-solver.ts";
export type { TwoAims } from "./pareto-list.ts";
export { type ChunkResult, chunksOfSearch, type FoundPlan } from "./solve-chunk.ts";
export { FIRST_FLAT } from "./solver-setting.ts";
export { MEASURE_WORDS } from "./solver-workings.ts";
