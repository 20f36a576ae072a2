export { type DrawingScale, scaleThatFits } from "./drawing-scale.ts";
export { DRAWING_ROOM, drawingSheet } from "./drawing-sheet.ts";
export { holeInBoth } from "./hole-words.ts";
export { type Label, type Obstacle, placeLabels, type StandingBox } from "./label-places.ts";
export { CUT_RAMP, INK, PAPER, ROCK, rampStep, SOFT_INK, STEEL } from "./palette.ts";
export { spread } from "./spread.ts";
export { HALO, TYPE, textAt } from "./text.ts";
export { linesWithin, textWidth } from "./text-width.ts";
export type { SheetTitle } from "./title-block.ts";
