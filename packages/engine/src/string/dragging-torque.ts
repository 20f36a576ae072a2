import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/** What `draggingTorque` needs. */
export interface DraggingTorqueInput {
  /** Drag of the hole wall on the string while it is fed D [N]. */
  readonly drag: number;
  /** Outer diameter of the pipe d [m]. */
  readonly outerDiameter: number;
}

/**
 * Torque that the string takes by itself where it drags: the friction that holds it back in feeding, turned to the side.
 *
 * T = D d/2.
 *
 * @returns torque [N·m]
 * @throws RangeError when the drag is negative or the diameter not positive
 * @source (d) one friction acts against the way of the pipe's skin, which in drilling is nearly all round
 * @example
 * draggingTorque({ drag: 2000, outerDiameter: 0.0889 }) // → 88.9
 */
export function draggingTorque({ drag, outerDiameter }: DraggingTorqueInput): number {
  requireNotNegative({ drag });
  requirePositive({ outerDiameter });
  return (drag * outerDiameter) / 2;
}
