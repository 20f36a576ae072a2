export { type AxisRange, rangeAround, rangeFromZero } from "./axis-range.ts";
export { evenAxis, tickStep, ticks } from "./axis-ticks.ts";
export {
  CHART_ROOM,
  type ChartPanel,
  GRID,
  levelLine,
  markedPoint,
  onPanel,
  panelAxes,
  panelFrame,
  panelLine,
  stackedPanels,
} from "./chart-panel.ts";
export { plain } from "./plain-number.ts";
