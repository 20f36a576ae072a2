import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/** A point of the curve of a centrifugal pump. */
export interface PumpPoint {
  /** [m³/s] */
  readonly flow: number;
  /** Pressure that the pump gives at this flow [Pa]. */
  readonly pressure: number;
}

/** What `pumpCurvePressure` needs. */
export interface PumpCurvePressureInput {
  /** Points by rising flow and falling pressure, two at least. */
  readonly curve: readonly PumpPoint[];
  /** Flow looked at [m³/s]. */
  readonly flow: number;
}

/**
 * Pressure that a centrifugal pump gives at a flow: straight between the points of its curve, level before the first, none
 * past the last.
 *
 * @returns pressure [Pa]
 * @throws RangeError when there are fewer than two points, flows do not rise or pressures do not fall
 * @source (d) the points of the curve
 * @example
 * pumpCurvePressure({ curve: [{ flow: 0, pressure: 4e5 }, { flow: 0.01, pressure: 2e5 }], flow: 0.005 }) // → 3e5
 */
export function pumpCurvePressure({ curve, flow }: PumpCurvePressureInput): number {
  requirePositive({ "points of a pump curve past the first": curve.length - 1 });
  for (const [k, { flow: at, pressure }] of curve.entries()) {
    const before = curve[k - 1];
    if (!before) continue;
    requirePositive({ "rise of flow from one point of the curve to the next": at - before.flow });
    requireNotNegative({ "fall of pressure from one point of the curve to the next": before.pressure - pressure });
  }
  const next = curve.findIndex((point) => point.flow >= flow);
  if (next < 0) return 0;
  if (next === 0) return curve[0].pressure;
  const [from, to] = [curve[next - 1], curve[next]];
  return from.pressure + ((flow - from.flow) / (to.flow - from.flow)) * (to.pressure - from.pressure);
}
