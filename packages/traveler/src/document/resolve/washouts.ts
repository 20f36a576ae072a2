import { formatQuantity, type Quantity } from "../../quantity/index.ts";
import type { ResolvedHole, ResolvedWashout } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenWashouts = NonNullable<ReadTraveler["inquiry"]["washouts"]>;

/** The washouts and the hole that they have to lie within. */
export interface WashoutCheck {
  readonly given: GivenWashouts;
  readonly bitHole: ResolvedHole;
}

/** Washouts from the top down; nothing where one lies outside its hole, in another, or is no wider than the hole. */
export function washoutsOf({ given, bitHole }: WashoutCheck, notes: ReadingNotes): ResolvedWashout[] | undefined {
  const { from, to, diameter, diameterAsTyped } = bitHole;
  const washouts: ResolvedWashout[] = [];
  const depth = (si: number) => formatQuantity("depth", si, "field");
  let sound = true;
  const refuse = (field: string, got: Quantity, expected: string) => {
    notes.refuse({ field, got: `"${got.text}"`, expected });
    sound = false;
  };
  for (const [at, one] of given.entries()) {
    const field = `inquiry.washouts[${at}]`;
    const above = washouts.at(-1)?.to ?? from;
    if (one.from.si < above) refuse(`${field}.from`, one.from, `give a depth from ${depth(above)} down`);
    if (one.to.si > to) refuse(`${field}.to`, one.to, `give a depth of at most ${depth(to)}, where the hole ends`);
    if (!(one.to.si > one.from.si)) refuse(`${field}.to`, one.to, `give a depth below ${one.from.text}`);
    if (!(one.diameter.si > diameter)) {
      refuse(`${field}.diameter`, one.diameter, `give a diameter over the ${diameterAsTyped} that was drilled`);
    }
    washouts.push({ from: one.from.si, to: one.to.si, diameter: one.diameter.si });
  }
  return sound ? washouts : undefined;
}
