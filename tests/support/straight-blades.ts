import type { EdgeTrace } from "@bitwright/engine";
import { coveringCutters } from "./random-layout.ts";

/**
 * Straight blades from the axis to the hole radius, evenly around, all with one flat length: the bit of which weight and
 * torque are known in closed form. One sharp blade takes W = ζ ε a d and T = ε a² d / 2.
 */
export function straightBlades({
  holeRadius,
  backRake,
  blades = 1,
  flatLength = 0,
}: {
  /** [m] */
  readonly holeRadius: number;
  /** [rad] */
  readonly backRake: number;
  /** How many [-]. */
  readonly blades?: number;
  /** Of each [m]. */
  readonly flatLength?: number;
}): EdgeTrace {
  const cells = 400;
  const cellWidth = holeRadius / cells;
  const passes = cells * blades;
  const [any] = coveringCutters(holeRadius);
  const cutter = { ...any, backRake, sideRake: 0, chamferWidth: 0, wornHeight: 0 };
  const azimuth = Float64Array.from({ length: passes }, (_, k) => (2 * Math.PI * (blades - 1 - (k % blades))) / blades);
  const even = (value: number) => new Float64Array(passes).fill(value);
  return {
    layout: { holeDiameter: 2 * holeRadius, cutters: Array.from({ length: blades }, () => cutter) },
    holeRadius,
    cellWidth,
    cellRadius: Float64Array.from({ length: cells }, (_, cell) => (cell + 0.5) * cellWidth),
    firstPass: Int32Array.from({ length: cells + 1 }, (_, cell) => cell * blades),
    cutter: Int32Array.from({ length: passes }, (_, k) => blades - 1 - (k % blades)),
    height: even(0),
    azimuth,
    cosAzimuth: azimuth.map(Math.cos),
    sinAzimuth: azimuth.map(Math.sin),
    slope: even(0),
    cosSlope: even(1),
    flatLength: even(flatLength),
    chamferHeight: even(0),
    edgeAngle: even(0),
    overreach: new Float64Array(blades),
  };
}
