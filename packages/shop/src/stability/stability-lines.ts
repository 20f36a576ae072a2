import { MUCH_STICKING, type ReviewedCrossing, type ReviewedString, type SteadySpeeds } from "@bitwright/engine";
import type { BedStability } from "@bitwright/traveler";
import type { Figures } from "../summary/figures.ts";
import { textTable } from "../summary/text-table.ts";
import { REGIME_WORDS } from "./regime-words.ts";

/** Balance, rubbing and the string, bed by bed, as a table; with the steady speeds where they were scanned. */
export function steadinessTable(
  beds: readonly (BedStability & { readonly speeds?: SteadySpeeds })[],
  figures: Figures,
): string[] {
  const scanned = beds.some(({ speeds }) => speeds !== undefined);
  return textTable(
    [
      "ground",
      "side force",
      "pushes",
      "advance",
      "wings rub at",
      "on its string the bit",
      ...(scanned ? ["steady at"] : []),
    ],
    beds.map(({ name, review, speeds }) => {
      const { imbalance, advance, rubbing, string } = review;
      const [first] = rubbing?.first ?? [];
      return [
        name,
        figures.of("share", imbalance.whole.share),
        imbalance.direction?.words ?? "-",
        figures.of("advance", advance),
        first === undefined ? "-" : figures.of("advance", first.advance),
        string === undefined ? "-" : onString(string),
        ...(scanned ? [steadySpans(speeds, figures)] : []),
      ];
    }),
    [0, 2, 5, 6],
  );
}

function onString({ march, feedHolds }: ReviewedString): string {
  // The march is chaotic: its shares of the time are worth no figure.
  const often = (share: number) => (share < MUCH_STICKING ? "now and then" : "much of the time");
  const share =
    march.regime === "stick-slip"
      ? `, at rest ${often(march.stickShare)}`
      : march.regime === "bit bounce"
        ? `, off bottom ${often(march.bounceShare)}`
        : "";
  const held = feedHolds && march.regime !== "steady" ? "; not if the feed is held" : "";
  return `${REGIME_WORDS[march.regime]}${share}${held}`;
}

function steadySpans(speeds: SteadySpeeds | undefined, figures: Figures): string {
  if (!speeds) return "-";
  if (speeds.steady.length === 0) return "no speed tried";
  return speeds.steady
    .map(({ slowestSpeed, fastestSpeed }) =>
      slowestSpeed === fastestSpeed
        ? figures.of("rotary speed", slowestSpeed)
        : figures.range("rotary speed", slowestSpeed, fastestSpeed),
    )
    .join(", ");
}

/** The boundaries that the bit crosses, as a table; nothing where it crosses none. */
export function crossingTable(beds: readonly Pick<BedStability, "review">[], figures: Figures): string[] {
  const crossings = beds.flatMap(({ review }) => review.crossings);
  if (crossings.length === 0) return [];
  return textTable(
    ["across", "over", "cutter pressed most", "over its most in one bed", "side force", "weight if the feed is held"],
    crossings.map(({ from, to, crossing }: ReviewedCrossing) => [
      `${from} into ${to}`,
      figures.of("length", crossing.span),
      `${crossing.peak.cutter}, ${figures.of("force", crossing.peak.force)}`,
      `${crossing.peak.overloadRatio.toFixed(2)} times`,
      figures.of("share", crossing.mostLateral.heldWeight.lateralShare),
      figures.of("force", crossing.mostWeight.heldAdvance.weight),
    ]),
  );
}
