import { type CardContent, type CardFigure, type CardRow, FEED_DEAD_BAND } from "@bitwright/engine";
import { formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { wholeFigure } from "./card-figures.ts";
import { oneLine } from "./card-lines.ts";
import type { BlownWith, CardPaper } from "./card-paper.ts";

/** Whether a bed takes less weight than a feed gauge shows. */
export function byRate({ drilled, weight }: CardRow): boolean {
  return drilled && weight !== undefined && (weight.to ?? weight.value) < FEED_DEAD_BAND;
}

/** Why a bed is not for the bit and what to use there, without the words that the card says in capitals. */
export function insteadWords({ remarks }: CardRow): string {
  return oneLine(remarks[0] ?? "").replace(/^Not with this bit\.\s*/, "");
}

/** What the marks of the table mean, at length and where room is short. */
const LONG = {
  care: "! fit with care: stay at the low end, watch the signs below.",
  cleans: "CLEANS: the fastest rate whose chips this flow carries; drill no faster.",
} as const;
const SHORT = {
  care: "!: with care, at the low end.",
  cleans: "CLEANS: drill no faster, the flow carries no more.",
} as const;

/** What stands under the beds: the rule of thumb as a range over them, and what the marks mean; one sentence an entry. */
export function bedLegend({ rows }: CardContent, { units, blownWith }: CardPaper, short: boolean): string[] {
  const { care, cleans } = short ? SHORT : LONG;
  const weight = over(
    rows.map(({ practiceWeight }) => practiceWeight),
    units,
  );
  const speed = over(
    rows.map(({ practiceSpeed }) => practiceSpeed),
    units,
  );
  return [
    ...(weight && speed ? [`Rule of thumb (common practice): ${weight} at ${speed}.`] : []),
    ...(rows.some(({ drilled, verdict }) => drilled && verdict !== "fit") ? [care] : []),
    ...(!blownWith && rows.some(({ rateCeiling }) => rateCeiling) ? [cleans] : []),
  ];
}

/** What "by rate" asks for, where a bed is run so. */
export function byRateWords({ rows }: CardContent): string[] {
  const words = "by rate: too soft to set a weight. Feed to the rate expected, hold the string's weight back.";
  return rows.some(byRate) ? [words] : [];
}

/** What takes the place of the pump's flow. */
export function blowingWords({ medium, leastAirFlow }: BlownWith, units: UnitSystem): string {
  const word = medium.slice(0, 1).toUpperCase() + medium.slice(1);
  if (leastAirFlow === undefined) return `${word}: not worked out here; by the sheet of its maker.`;
  const least = formatQuantity("air flow", leastAirFlow, units, { figures: 3 });
  return `${word}: at least ${least} of free air to lift the chips from the end of this hole.`;
}

function over(figures: readonly (CardFigure | undefined)[], units: UnitSystem): string {
  const known = figures.filter((figure) => figure !== undefined);
  if (known.length === 0) return "";
  const values = known.flatMap(({ value, to }) => [value, to ?? value]);
  return wholeFigure({ kind: known[0].kind, value: Math.min(...values), to: Math.max(...values) }, units);
}
