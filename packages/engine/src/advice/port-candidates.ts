import {
  LEAST_PORT_DIAMETER,
  LEAST_PORT_DIAMETER_UNSCREENED,
  PORT_SPEED_RANGE,
  portArea,
  portPressureDrop,
  portSpeed,
} from "../flow/index.ts";
import { LARGEST_PORT_SHARE, PORT_STEP } from "./port-limits.ts";

/** Round ports of one size. */
export interface PortsChoice {
  /** How many [-]. */
  readonly count: number;
  /** Diameter of one [m]. */
  readonly diameter: number;
}

/** A set of ports with what the pump makes of it. */
export interface PortCandidate extends PortsChoice {
  /** Total area [m²]. */
  readonly area: number;
  /** Speed in the ports [m/s]. */
  readonly speed: number;
  /** Pressure lost through the ports [Pa]. */
  readonly pressureDrop: number;
}

/**
 * Smallest port for what the pump passes, on the next drill up.
 *
 * @returns diameter [m]
 * @source (c) common practice, no source: 3/8 in at least, 1/2 in without a screen, never less than the largest lump
 */
export function leastPort(lumpSize: number | undefined): number {
  const least = lumpSize === undefined ? LEAST_PORT_DIAMETER_UNSCREENED : Math.max(LEAST_PORT_DIAMETER, lumpSize);
  // Not a drill further for a rounding error.
  return Math.ceil(least / PORT_STEP - 1e-9) * PORT_STEP;
}

/** Sets of ports that the body has room for: from one to every two wings to one to each wing, drill by drill. */
export function portSets({
  holeDiameter,
  wings,
  least,
}: {
  readonly holeDiameter: number;
  readonly wings: number;
  readonly least: number;
}): readonly PortsChoice[] {
  const fewest = Math.max(1, Math.ceil(wings / 2));
  const smallestStep = Math.round(least / PORT_STEP);
  const largestStep = Math.max(smallestStep, Math.floor((LARGEST_PORT_SHARE * holeDiameter) / PORT_STEP));
  const sets: PortsChoice[] = [];
  for (let count = fewest; count <= Math.max(fewest, wings); count++) {
    for (let step = smallestStep; step <= largestStep; step++) sets.push({ count, diameter: step * PORT_STEP });
  }
  return sets;
}

/** A set of ports with its area, speed and drop at the pump's flow. */
export function portCandidate(
  { count, diameter }: PortsChoice,
  pump: { readonly density: number; readonly flow: number; readonly dischargeCoefficient: number },
): PortCandidate {
  const area = portArea(Array.from({ length: count }, () => diameter));
  return {
    count,
    diameter,
    area,
    speed: portSpeed({ flow: pump.flow, area }),
    pressureDrop: portPressureDrop({ ...pump, area }),
  };
}

/** Whether the speed lies in the window of common practice. */
export function speedInWindow({ speed }: Pick<PortCandidate, "speed">): boolean {
  return speed >= PORT_SPEED_RANGE.low && speed <= PORT_SPEED_RANGE.mid;
}

/** Speeds whose ratio is within about a tenth count as equally near to the one aimed at. */
const EQUAL_MISS = 0.1;

/**
 * The best set: inside the pump's pressure first, then inside the window of speed, then nearest to the speed aimed at,
 * then the largest and fewest ports.
 */
export function bestPorts({
  candidates,
  aim,
  pressureForBit,
}: {
  readonly candidates: readonly PortCandidate[];
  readonly aim: number;
  readonly pressureForBit: number;
}): PortCandidate {
  const rank = (each: PortCandidate): readonly number[] => {
    const affordable = each.pressureDrop <= pressureForBit;
    return [
      affordable ? 0 : 1,
      // Where the pump can afford none of them, the largest area is the least bad.
      affordable ? 0 : -each.area,
      speedInWindow(each) ? 0 : 1,
      Math.round(Math.abs(Math.log(each.speed / aim)) / EQUAL_MISS),
      -each.diameter,
      each.count,
    ];
  };
  return candidates.reduce((best, next) => (byRank(rank(next), rank(best)) < 0 ? next : best));
}

/** Order of two rows of figures: smaller is better, the first figure that differs decides. */
export function byRank(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, k) => value !== b[k]);
  return at < 0 ? 0 : a[at] - b[at];
}
