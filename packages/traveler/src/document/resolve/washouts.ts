import { formatQuantity, type Quantity } from "../../quantity/index.ts";
import type { ResolvedWashout } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenWashouts = NonNullable<ReadTraveler["inquiry"]["holes"][number]["washouts"]>;

/** The washouts of a hole and what they have to lie within. */
export interface WashoutCheck {
  readonly given: GivenWashouts;
  /** Path of the hole in the document. */
  readonly path: string;
  /** Depth where the hole begins [m]. */
  readonly from: number;
  /** Depth where it ends [m]. */
  readonly to: number;
  readonly diameter: Quantity;
}

/** Washouts from the top down; nothing where one lies outside its hole, in another, or is no wider than the hole. */
export function washoutsOf({ given, path, from, to, diameter }: WashoutCheck, notes: ReadingNotes) {
  const washouts: ResolvedWashout[] = [];
  const depth = (si: number) => formatQuantity("depth", si, "field");
  let sound = true;
  const refuse = (field: string, got: Quantity, expected: string) => {
    notes.refuse({ field, got: `"${got.text}"`, expected });
    sound = false;
  };
  for (const [at, one] of given.entries()) {
    const field = `${path}.washouts[${at}]`;
    const above = washouts.at(-1)?.to ?? from;
    if (one.from.si < above) refuse(`${field}.from`, one.from, `give a depth from ${depth(above)} down`);
    if (one.to.si > to) refuse(`${field}.to`, one.to, `give a depth of at most ${depth(to)}, where the hole ends`);
    if (!(one.to.si > one.from.si)) refuse(`${field}.to`, one.to, `give a depth below ${one.from.text}`);
    if (!(one.diameter.si > diameter.si)) {
      refuse(`${field}.diameter`, one.diameter, `give a diameter over the ${diameter.text} that was drilled`);
    }
    washouts.push({ from: one.from.si, to: one.to.si, diameter: one.diameter.si });
  }
  return sound ? washouts : undefined;
}
