import type { SolvedLayout } from "@bitwright/engine";
import { type ChartPanel, onPanel } from "../chart/index.ts";
import type { PagePoint } from "../svg/index.ts";

/** Unevenness of a layout, in percent. */
export const unevenness = ({ figures }: SolvedLayout): number => 100 * figures.evenness;
/** Side force of a layout as a share of the weight, in percent. */
export const sideForce = ({ figures }: SolvedLayout): number => 100 * figures.imbalance;

/** Where a layout lies on a panel. */
export function placeOf(panel: ChartPanel, layout: SolvedLayout): PagePoint {
  return onPanel(panel, unevenness(layout), sideForce(layout));
}

/** Side force, as a share of the weight, up to which a bit counts as well balanced and is accepted at all, in percent. */
export const BALANCE_MARKS = [
  { at: 5, words: "well balanced under 5 %" },
  { at: 10, words: "accepted under 10 %" },
] as const;
