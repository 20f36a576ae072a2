import type { Workup } from "@bitwright/traveler";
import { powerTable, powerWords } from "../power/power-table.ts";
import type { Figures } from "./figures.ts";

/** What the rig's engine gives in each bed, and its fuel. */
export function powerLines({ power }: Workup, figures: Figures, width: number): string[] {
  if (!power) return ["Nothing is drilled with this bit, so no power is asked for."];
  return [...powerTable(power, figures), "", ...powerWords(power, figures, width)];
}
