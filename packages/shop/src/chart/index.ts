export { tickStep, ticks } from "./axis-ticks.ts";
export {
  type AxisRange,
  type ChartPanel,
  levelLine,
  markedPoint,
  onPanel,
  panelAxes,
  panelLine,
  rangeFromZero,
  stackedPanels,
} from "./chart-panel.ts";
export { plain } from "./plain-number.ts";
