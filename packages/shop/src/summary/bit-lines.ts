import type { Choice } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";
import { wrapped } from "./text-table.ts";

/** The bit in one line, then each choice with its first reason. */
export function bitLines({ advice, bit, cut, inquiry }: Workup, width: number): string[] {
  if (cut.beds.length === 0) {
    const what = inquiry.bit.kind === "spec" ? "What the rules would come nearest to" : "The bit as it was measured";
    return wrapped(`Not to be run in this hole. ${what}: ${bit.inWords}.`, width);
  }
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
    inquiry.bit.kind === "spec"
      ? "Why the rules choose so:"
      : "For comparison, what the rules would say of a new bit here:",
    ...choices.flatMap(([name, { reasons }]) =>
      wrapped(`- ${name}: ${reasons.map(({ sentence }) => sentence).join(" ")}`, width, 2),
    ),
  ];
}
