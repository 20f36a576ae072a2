import type { CardFeed } from "@bitwright/engine";
import type { UnitSystem } from "@bitwright/traveler";
import { bareFigure, cardUnit } from "./card-figures.ts";
import { RIG_DOES } from "./card-words.ts";

/** Column of the table of joints that holds what the rig does. */
export const ACT = 3;

/** Heads of the table of joints. */
export function jointHeads(units: UnitSystem, gauge: boolean): string[] {
  const heads = [cardUnit("depth", units), "wanted", "string", "do", "by"];
  return gauge ? [...heads, cardUnit("pressure", units)] : heads;
}

/** One joint: depth, wanted on the bit, given by the string, what the rig does and by how much, its gauge. */
export function jointCells(joint: CardFeed, units: UnitSystem, gauge: boolean): string[] {
  const { depth, wanted, string, act, force, gauge: reading } = joint;
  const cells = [
    bareFigure(depth, units),
    bareFigure(wanted, units),
    bareFigure(string, units),
    RIG_DOES[act],
    act === "let it hang" ? "" : bareFigure(force, units),
  ];
  return gauge ? [...cells, bareFigure(reading, units)] : cells;
}
