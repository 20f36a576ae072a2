import { SOURCE_KIND_WORDS } from "@bitwright/engine";
import type { UnitSystem, Workup } from "@bitwright/traveler";
import { bitLines } from "./bit-lines.ts";
import { figuresIn } from "./figures.ts";
import { findingLines } from "./finding-lines.ts";
import { groundLines } from "./ground-lines.ts";
import { lifeLines } from "./life-lines.ts";
import { powerLines } from "./power-lines.ts";
import { runningLines } from "./running-lines.ts";
import { stabilityLines } from "./stability-lines.ts";
import { flowLines, stringLines } from "./string-flow-lines.ts";
import { wrapped } from "./text-table.ts";

/** How the summary is written. */
export interface SummaryOptions {
  readonly units: UnitSystem;
  /** Name and version of the program, printed at the head. */
  readonly program: string;
  /** Columns of running text; tables may be wider. */
  readonly width?: number;
}

const USUAL_WIDTH = 110;

/** What was assumed, a line each; prices and times, of which this page uses little, in one. */
function assumedLines({ assumed }: Workup, width: number): string[] {
  const prices = assumed.filter(({ field }) => field.startsWith("prices."));
  const others = assumed.filter((one) => !prices.includes(one));
  const lines = others.flatMap(({ field, text, why, source }) =>
    wrapped(`- ${field}: ${text}. ${why} (${SOURCE_KIND_WORDS[source.kind]})`, width, 2),
  );
  if (prices.length > 0) {
    const count = prices.length === 1 ? "1 usual price" : `${prices.length} usual prices and times`;
    const use = "only the fuel of the hole rests on them here, by the times; `bitwright rank` goes by them all";
    lines.push(...wrapped(`- prices: ${count}; ${use}.`, width, 2));
  }
  return lines.length === 0 ? ["Nothing."] : lines;
}

/** The whole job as a driller's office would read it on a terminal. */
export function summaryText(workup: Workup, { units, program, width = USUAL_WIDTH }: SummaryOptions): string {
  const figures = figuresIn(units);
  const { job, inquiry } = workup.inquiry;
  const { bitHole } = inquiry;
  const section = (title: string, lines: readonly string[]) => ["", title, "=".repeat(title.length), ...lines];
  const number = job.number === undefined ? "" : `, no. ${job.number}`;
  return [
    `${job.name}${number}`,
    [job.customer, job.shop, job.date].filter((part) => part !== undefined && part !== "").join(" · "),
    `${figures.of("diameter", bitHole.diameter)} ${bitHole.name}, ${figures.range("depth", bitHole.from, bitHole.to)} · ${program}`,
    ...section("Is PDC the tool?", groundLines(workup, figures, width)),
    ...section("The bit", bitLines(workup, width)),
    ...section("How to run it", runningLines(workup, figures, width)),
    ...section("Weight and feed", stringLines(workup, figures, width)),
    ...section("Steadiness", stabilityLines(workup, figures, width)),
    ...section("Flow", flowLines(workup, figures)),
    ...section("Power and fuel", powerLines(workup, figures, width)),
    ...section("How far it goes", lifeLines(workup, figures, width)),
    ...section("Findings", findingLines(workup, figures, width)),
    ...section("Assumed, because the traveler does not say", assumedLines(workup, width)),
    "",
    ...wrapped(workup.card.standing, width),
  ].join("\n");
}
