import type { BitLayout } from "@bitwright/engine";
import { DRAWING_ROOM, type DrawingScale, scaleThatFits } from "../sheet/index.ts";
import type { PagePoint } from "../svg/index.ts";
import { AROUND_HOLE } from "./around-hole.ts";
import type { ToPage } from "./seen-cutter.ts";

/** Where the bit lies on the page, seen from below. */
export interface ViewFromBelow {
  readonly scale: DrawingScale;
  /** Millimetres of page for each metre of bit [mm/m]. */
  readonly perMetre: number;
  readonly toPage: ToPage;
  /** The hole on the page [mm]. */
  readonly hole: { readonly middle: PagePoint; readonly radius: number };
}

const MM_PER_M = 1000;

/** The largest true scale at which the hole and what stands around it fit above the notes. */
export function viewFromBelow(
  { holeDiameter }: Pick<BitLayout, "holeDiameter">,
  /** Height kept free for notes under the view [mm]. */
  notes = 0,
): ViewFromBelow {
  const holeMm = holeDiameter * MM_PER_M;
  const room = {
    width: DRAWING_ROOM.right - DRAWING_ROOM.left - 2 * AROUND_HOLE.side,
    height: DRAWING_ROOM.bottom - DRAWING_ROOM.top - AROUND_HOLE.above - AROUND_HOLE.below - notes,
  };
  const scale = scaleThatFits({ width: holeMm, height: holeMm, room });
  const middle: PagePoint = [
    (DRAWING_ROOM.left + DRAWING_ROOM.right) / 2,
    DRAWING_ROOM.top + AROUND_HOLE.above + room.height / 2,
  ];
  const perMetre = scale.factor * MM_PER_M;
  return {
    scale,
    perMetre,
    // z points at the viewer, so x to the right and y up keep the bit frame's hand: azimuth grows counter-clockwise.
    toPage: ([x, y]) => [middle[0] + perMetre * x, middle[1] - perMetre * y],
    hole: { middle, radius: (perMetre * holeDiameter) / 2 },
  };
}
