import type { EdgeTrace } from "@bitwright/engine";
import { coveringCutters } from "./random-layout.ts";

/**
 * One straight sharp blade from the axis to the hole radius: the bit of which weight and torque are known in closed form,
 * W = ζ ε a d and T = ε a² d / 2.
 */
export function sharpBlade({
  holeRadius,
  backRake,
}: {
  /** [m] */
  readonly holeRadius: number;
  /** [rad] */
  readonly backRake: number;
}): EdgeTrace {
  const cells = 200;
  const cellWidth = holeRadius / cells;
  const [any] = coveringCutters(holeRadius);
  const cutter = { ...any, backRake, sideRake: 0, chamferWidth: 0, wornHeight: 0 };
  const even = (value: number) => new Float64Array(cells).fill(value);
  return {
    layout: { holeDiameter: 2 * holeRadius, cutters: [cutter] },
    holeRadius,
    cellWidth,
    cellRadius: Float64Array.from({ length: cells }, (_, cell) => (cell + 0.5) * cellWidth),
    firstPass: Int32Array.from({ length: cells + 1 }, (_, cell) => cell),
    cutter: new Int32Array(cells),
    height: even(0),
    azimuth: even(0),
    cosAzimuth: even(1),
    sinAzimuth: even(0),
    slope: even(0),
    cosSlope: even(1),
    flatLength: even(0),
    chamferHeight: even(0),
    edgeAngle: even(0),
    overreach: new Float64Array(1),
  };
}
