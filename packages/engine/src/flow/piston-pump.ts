import { type Band, band, requireBetween, requireNotNegative, requirePositive } from "../quantity/index.ts";

/** Whether a piston pumps on its way out only, or both ways. */
export type PumpAction = "single" | "double";

/** The fluid end of a piston pump. */
export interface PistonPump {
  /** How many cylinders [-]. */
  readonly cylinders: number;
  readonly action: PumpAction;
  /** Bore of the liner D [m]. */
  readonly linerDiameter: number;
  /** Way of the piston from end to end L [m]. */
  readonly strokeLength: number;
  /** Rod that takes room on one side of a piston that pumps both ways d; not looked at where it pumps one way [m]. */
  readonly rodDiameter?: number;
}

/**
 * Share of the swept volume that a piston pump delivers, .85 to .9 [-].
 *
 * @source (c) common practice, no source
 */
export const PISTON_PUMP_EFFICIENCY: Band = band(0.85, 0.875, 0.9);

/**
 * Volume that the pistons of a pump sweep in one stroke, which is once out and back of each piston.
 *
 * V = n (π/4) D² L where pistons pump one way, n (π/4) (2 D² - d²) L where they pump both ways.
 *
 * @returns volume [m³]
 * @throws RangeError when a measure is not positive, or a rod is no thinner than its liner
 * @source (d) volume of a cylinder
 * @example
 * pistonPumpDisplacement({ cylinders: 3, action: "single", linerDiameter: 0.1778, strokeLength: 0.3048 }) // → 0.022703
 */
export function pistonPumpDisplacement({
  cylinders,
  action,
  linerDiameter,
  strokeLength,
  rodDiameter = 0,
}: PistonPump): number {
  requirePositive({ cylinders, linerDiameter, strokeLength });
  const oneWay = cylinders * (Math.PI / 4) * linerDiameter ** 2 * strokeLength;
  if (action === "single") return oneWay;
  requireNotNegative({ rodDiameter });
  requirePositive({ "liner less rod": linerDiameter - rodDiameter });
  return oneWay * (2 - (rodDiameter / linerDiameter) ** 2);
}

/** What `pistonPumpFlow` needs. */
export interface PistonPumpFlowInput {
  readonly pump: PistonPump;
  /** Strokes of one piston, out and back, in a second s [1/s]. */
  readonly strokeRate: number;
  /** Share of the swept volume that is delivered η [-]. */
  readonly volumetricEfficiency: number;
}

/**
 * Flow of a piston pump.
 *
 * Q = η s V with the volume V swept in a stroke.
 *
 * @returns flow [m³/s]
 * @throws RangeError when an input is not positive or the efficiency is over 1
 * @source (d) swept volume, efficiency and strokes
 * @example
 * pistonPumpFlow({ pump: { cylinders: 2, action: "double", linerDiameter: 0.127, strokeLength: 0.1524, rodDiameter: 0.0381 }, strokeRate: 1, volumetricEfficiency: 0.85 }) // → 6.2687e-3
 */
export function pistonPumpFlow({ pump, strokeRate, volumetricEfficiency }: PistonPumpFlowInput): number {
  requirePositive({ strokeRate });
  requirePositive({ volumetricEfficiency });
  requireBetween("volumetricEfficiency", volumetricEfficiency, 0, 1);
  return volumetricEfficiency * strokeRate * pistonPumpDisplacement(pump);
}
