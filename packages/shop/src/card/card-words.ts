import { type CardContent, type CardFeed, FEED_DEAD_BAND } from "@bitwright/engine";
import type { UnitSystem } from "@bitwright/traveler";
import { wholeFigure } from "./card-figures.ts";
import { oneLine } from "./card-lines.ts";
import type { CardPaper } from "./card-paper.ts";

/** What the rig does at a joint, in the word of the card. */
export const RIG_DOES: Readonly<Record<CardFeed["act"], string>> = {
  "pull down": "PUSH",
  "hold back": "HOLD",
  "let it hang": "HANG",
};

/** Said where no reading of the feed gauge can be given. */
export const NO_GAUGE = "No gauge readings: the rig's force for each unit of feed pressure was not given.";

/** Customer, shop and date, as far as they are known. */
export function whoWords({ customer }: CardContent, { shop, date }: CardPaper): string {
  return [customer, shop, date]
    .filter((text) => text !== undefined && text !== "")
    .map((text) => oneLine(text ?? ""))
    .join(", ");
}

/** Said first of all where no bed is for the bit. */
export function notHereWords({ rows }: CardContent): string | undefined {
  if (rows.some(({ drilled }) => drilled)) return undefined;
  return "DO NOT RUN THIS BIT IN THIS HOLE. No bed of it is ground for a PDC bit.";
}

/** How deep to case, and why. */
export function casingOrder({ casing, casingWords }: CardContent, units: UnitSystem, why: boolean): string | undefined {
  if (!casing) return undefined;
  const reason = why ? (casingWords[0] ?? "") : "";
  return `CASE TO ${wholeFigure(casing, units)} BEFORE THIS BIT GOES IN. ${reason}`.trim();
}

/** How hard to make the bit up, and what fuel to bring. */
export function gearWords({ makeUp, fuel }: CardContent, units: UnitSystem, withFuel: boolean): string | undefined {
  const short = makeUp?.short
    ? `; the rig has ${wholeFigure(makeUp.short, units)}: tongs with gauge`
    : ", with compound";
  const words = [
    ...(makeUp ? [`MAKE UP ${makeUp.thread} to ${wholeFigure(makeUp.torque, units)}${short}.`] : []),
    ...(fuel && withFuel
      ? [`FUEL ${wholeFigure(fuel.drilling, units)} drilling, about ${wholeFigure(fuel.hole, units)} for the hole.`]
      : []),
  ];
  return words.length === 0 ? undefined : words.join(" ");
}

/** How to start the bit. */
export function breakInWords({ breakIn: start }: CardContent, units: UnitSystem): string | undefined {
  if (!start) return undefined;
  // In ground too soft to set a weight the steps alone say how to begin.
  const weight =
    (start.weight.to ?? start.weight.value) < FEED_DEAD_BAND ? "" : `${wholeFigure(start.weight, units)}, `;
  const figures = `First ${wholeFigure(start.length, units)}: ${weight}${wholeFigure(start.rotarySpeed, units)}.`;
  return `${figures} ${start.steps.join(" ")}`;
}

/** Warnings that differ only in the place in front of them, told once with all their places. */
export function toldOnce(warnings: readonly string[]): string[] {
  const places = new Map<string, string[]>();
  for (const warning of warnings) {
    const at = warning.indexOf(": ");
    const message = warning.slice(at + 2);
    places.set(message, [...(places.get(message) ?? []), warning.slice(0, Math.max(at, 0))]);
  }
  return [...places].map(([message, where]) => `${where.join("; ")}: ${message}`);
}
