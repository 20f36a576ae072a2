import { tickStep } from "./axis-ticks.ts";

/** A range of figures along an axis, in the unit of the axis. */
export interface AxisRange {
  readonly from: number;
  readonly to: number;
}

/** Room kept over the largest figure, so that its words stand clear of the frame. */
const HEADROOM = 1.18;

/** A range from zero, or from under the least figure, that ends a little over the largest, both on a tick. */
export function rangeFromZero(values: readonly number[], most = 5): AxisRange {
  const largest = HEADROOM * values.reduce((found, value) => Math.max(found, value), 0);
  const least = values.reduce((found, value) => Math.min(found, value), 0);
  if (!(largest - least > 0)) return { from: 0, to: 1 };
  const step = tickStep(largest - least, most);
  return { from: step * Math.floor((least / step) * (1 + 1e-9)), to: step * Math.ceil((largest / step) * (1 + 1e-9)) };
}

/** A range that holds the values with some room on both sides, not under zero, its ends on ticks. */
export function rangeAround(
  values: readonly number[],
  {
    ofSpan,
    ofLargest,
    least: leastRoom = 0,
    most,
  }: {
    /** Room as a share of what the values span [-]. */
    readonly ofSpan: number;
    /** Least room as a share of the largest [-]. */
    readonly ofLargest: number;
    /** Least room, in the unit of the axis. */
    readonly least?: number;
    /** Ticks at most [-]. */
    readonly most: number;
  },
): AxisRange {
  const [least, largest] = [Math.min(...values), Math.max(...values)];
  const room = Math.max(ofSpan * (largest - least), ofLargest * largest, leastRoom);
  const step = tickStep(largest - least + 2 * room, most);
  return {
    from: Math.max(0, step * Math.floor((least - room) / step)),
    to: step * Math.ceil((largest + room) / step),
  };
}
