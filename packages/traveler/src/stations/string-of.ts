import {
  draggingTorque,
  hangingWeight,
  STANDARD_GRAVITY,
  type StringMakeUp,
  type StringSection,
  stringOfLength,
  weightOnBit,
} from "@bitwright/engine";
import type { ResolvedInquiry } from "../document/resolved-traveler.ts";

/** Pipe and collars of a traveler as the string room takes them. */
export function stringOf({ pipe, collars }: ResolvedInquiry): StringMakeUp {
  const run = { jointLength: pipe.jointLength, linearWeight: pipe.linearMass * STANDARD_GRAVITY };
  const collarLength = collars.reduce((sum, { length }) => sum + length, 0);
  if (collarLength === 0) return { pipe: run };
  const collarMass = collars.reduce((sum, { length, linearMass }) => sum + length * linearMass, 0);
  const linearWeight = (collarMass / collarLength) * STANDARD_GRAVITY;
  return { pipe: run, collars: { length: collarLength, linearWeight } };
}

/** Pipe and collars by their size, from the bit up, for a string of a length [m]. */
export function sectionsOf({ pipe, collars }: ResolvedInquiry, length: number): StringSection[] {
  const sized = [...collars, { ...pipe, length }].map((piece) => ({
    outerDiameter: piece.outsideDiameter,
    bore: piece.bore,
    length: piece.length,
    linearWeight: piece.linearMass * STANDARD_GRAVITY,
  }));
  return stringOfLength(sized, length);
}

/** Torque that the string takes by itself, from the drag that was given [N·m]. */
export function stringDrag({ rig, pipe }: ResolvedInquiry): number {
  return draggingTorque({ drag: rig.drag, outerDiameter: pipe.outsideDiameter });
}

/** The most weight that rig and string can put on a bit at a depth [N]. */
export function weightAvailable(inquiry: ResolvedInquiry, depth: number): number {
  const { rig, fluid } = inquiry;
  return weightOnBit({
    pullDown: rig.pullDown,
    holdBack: 0,
    hangingWeight: hangingWeight({ makeUp: stringOf(inquiry), fluidDensity: fluid.density, length: depth }),
    topHeadWeight: rig.topHeadWeight,
    drag: rig.drag,
  });
}
