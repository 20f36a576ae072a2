import { derivedFrom } from "@bitwright/engine";
import { formatQuantity } from "../../quantity/index.ts";
import type { ResolvedBed } from "../resolved-traveler.ts";
import type { GivenBed } from "./given-bed.ts";
import type { ReadingNotes } from "./reading-notes.ts";

/** Two depths this near are one [m]. Logs that mix feet and metres round to the centimetre. */
export const SAME_DEPTH = 0.01;

/** A depth as it stands in a message. */
export const depthText = (si: number) => formatQuantity("depth", si, "field");

interface BedSpan {
  readonly given: GivenBed;
  readonly path: string;
  readonly above: ResolvedBed | undefined;
}

/** Top and bottom of a bed [m]; nothing where they cannot be. A bed without a top goes on from the one above. */
export function spanOf(
  { given, path, above }: BedSpan,
  notes: ReadingNotes,
): { top: number; bottom: number } | undefined {
  const entered = given.top?.si ?? above?.bottom ?? 0;
  // A top that misses the bottom above it by rounding is that bottom.
  const top = above && Math.abs(entered - above.bottom) <= SAME_DEPTH ? above.bottom : entered;
  if (above && given.top && top < above.bottom) {
    const unsorted = top < above.top;
    const wrong = unsorted
      ? `got "${given.top.text}", which lies above the bed before it (top at ${depthText(above.top)})`
      : `got "${given.top.text}", which lies inside the bed before it (down to ${depthText(above.bottom)})`;
    const expected = unsorted
      ? "list the beds from the top down"
      : `give ${depthText(above.bottom)} or deeper, or end the bed before it higher`;
    notes.refuse({ field: `${path}.top`, got: `"${given.top.text}"`, wrong, expected });
    return undefined;
  }
  if (given.bottom && given.thickness) {
    const apart = Math.abs(given.bottom.si - top - given.thickness.si);
    if (apart > SAME_DEPTH) {
      notes.refuse({
        field: `${path}.thickness`,
        got: `"${given.thickness.text}"`,
        wrong: `got "${given.thickness.text}" beside the bottom "${given.bottom.text}", which gives ${depthText(given.bottom.si - top)}`,
        expected: "give the bottom or the thickness, not both",
      });
      return undefined;
    }
  }
  const end = given.bottom ?? given.thickness;
  if (!end) {
    const expected = 'give the depth of the bed\'s bottom, for example "42 ft", or its thickness';
    notes.refuse({ field: `${path}.bottom`, got: "nothing", wrong: "nothing is given", expected });
    return undefined;
  }
  const bottom = given.bottom ? given.bottom.si : top + end.si;
  if (!(bottom > top)) {
    notes.refuse({
      field: given.bottom ? `${path}.bottom` : `${path}.thickness`,
      got: `"${end.text}"`,
      wrong: given.bottom
        ? `got "${end.text}", which is not below the bed's top at ${given.top?.text ?? depthText(top)}`
        : `got "${end.text}", a bed of no thickness`,
      expected: given.bottom ? "give a depth below the top" : 'give a thickness, for example "12 ft"',
    });
    return undefined;
  }
  if (top - (above?.bottom ?? 0) > SAME_DEPTH) gapRemark(path, above?.bottom ?? 0, top, notes);
  return { top, bottom };
}

function gapRemark(path: string, from: number, to: number, notes: ReadingNotes): void {
  notes.remark({
    code: "gap-between-beds",
    severity: "caution",
    where: path,
    message: `Nothing is said of the ground from ${depthText(from)} to ${depthText(to)}. That length is left out; fill it to have it worked up.`,
    value: to - from,
    limit: 0,
    unit: "m",
    source: derivedFrom("ground.beds"),
  });
}
