import type { CardContent } from "@bitwright/engine";
import { firstSentences } from "./card-lines.ts";
import { toldOnce } from "./card-words.ts";
import { feedRows } from "./feed-rows.ts";
import { SHORT_CAUTION, type SheetStep } from "./sheet-step.ts";

/** What the printed card leaves out at a step, and where it stands; empty where it leaves out nothing. */
export function leftOutWords(content: CardContent, step: SheetStep): string {
  const left = [
    ...joints(content, step),
    ...counted(
      content.rows
        .filter(({ drilled }) => drilled)
        .reduce((sum, { remarks }) => sum + Math.max(0, remarks.length - step.remarks), 0),
      "remark on a bed",
      "remarks on beds",
    ),
    ...counted(Math.max(0, toldOnce(content.warnings).length - step.warnings), "warning", "warnings"),
    ...(step.causes || content.stopSigns.length === 0 ? [] : ["the causes behind the stop signs"]),
    ...(content.cautions.some(({ text }) => firstSentences(text, step.sentences, SHORT_CAUTION) !== text)
      ? ["parts of the cautions"]
      : []),
    ...counted(Math.max(0, content.rows.length - step.beds), "bed", "beds"),
  ];
  if (left.length === 0) return "";
  return `Left out for room: ${left.join(", ")}. The phone page, card.html, has all of it.`;
}

function joints(content: CardContent, { joints: most }: SheetStep): string[] {
  const all = content.rows.reduce((sum, { feed }) => sum + feed.length, 0);
  const shown = feedRows(content, most).length;
  if (shown === all) return [];
  return [`${all - shown} of ${all} joints (between two that are printed the feed goes evenly)`];
}

function counted(count: number, one: string, more: string): string[] {
  if (count === 0) return [];
  return [`${count} ${count === 1 ? one : more}`];
}
