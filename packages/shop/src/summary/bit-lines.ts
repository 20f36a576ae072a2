import type { Choice } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";
import { wrapped } from "./text-table.ts";

/** The bit in one line, then each choice with its first reason. */
export function bitLines({ advice, bit }: Workup, width: number): string[] {
  const { cutter, chamfer, backRake, wings, sweep, profile, body, leached, ports, gauge } = advice.bit;
  const choices: readonly [string, Choice<unknown>][] = [
    ["cutter", cutter],
    ["chamfer", chamfer],
    ["back rake", backRake],
    ["wings", wings],
    ["sweep", sweep],
    ["profile", profile],
    ["body", body],
    ["diamond", leached],
    ["ports", ports],
    ["gauge", gauge],
  ];
  return [
    ...wrapped(bit.inWords, width),
    ...bit.departures.flatMap((words) => wrapped(`- ${words}`, width, 2)),
    "Why the rules choose so:",
    ...choices.flatMap(([name, { reasons }]) => wrapped(`- ${name}: ${reasons[0].sentence}`, width, 2)),
  ];
}
