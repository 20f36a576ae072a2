import { FEED_DEAD_BAND, type RateLimitName } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";
import type { Figures } from "./figures.ts";
import { textTable, wrapped } from "./text-table.ts";

/** What stops a faster rate, in words. */
export const LIMIT_WORDS: Readonly<Record<RateLimitName, string>> = {
  weight: "weight of rig and string",
  torque: "torque",
  power: "rotary power",
  advance: "advance",
  exposure: "exposure of the cutters",
  rate: "cleaning by the flow",
  contactTemperature: "heat at the edges",
};

const BY_RATE =
  "That weight is under what a feed gauge shows: feed to the rate expected and hold the string's weight back.";

/** How to run the bit in each bed, the computed beside the rule of thumb, and what stops it going faster. */
export function runningLines({ cut }: Workup, figures: Figures, width: number): string[] {
  if (cut.beds.length === 0) return ["No bed of this hole is drilled with this bit."];
  const weights = figures.column(
    "force",
    cut.beds.flatMap(({ weight, run: { computed, practice } }) => [weight, computed.weight, practice.weight]),
  );
  const torques = figures.column(
    "torque",
    cut.beds.map(({ drilling }) => drilling.bit.torque),
  );
  const run = textTable(
    ["ground", "weight", "rotary", "rate low / mid / high", "torque", "advance", "faster stops at"],
    cut.beds.map(({ bed, rotarySpeed, rate, drilling, run: point }, at) => [
      bed.name,
      weights[3 * at],
      figures.of("rotary speed", rotarySpeed),
      figures.band("rate", rate),
      torques[at],
      figures.of("advance", drilling.advance),
      LIMIT_WORDS[point.computed.binds],
    ]),
    [0, 6],
  );
  const rule = textTable(
    ["ground", "computed weight", "rotary", "rate", "rule weight", "rule rotary", "rate there", "MSE", "side force"],
    cut.beds.map(({ bed, run: { computed, practice }, rateByPractice, drilling }, at) => [
      bed.name,
      weights[3 * at + 1],
      figures.of("rotary speed", computed.rotarySpeed),
      figures.of("rate", computed.rate),
      weights[3 * at + 2],
      figures.of("rotary speed", practice.rotarySpeed),
      rateByPractice === undefined ? "bit buries" : figures.of("rate", rateByPractice),
      figures.of("strength", drilling.mechanicalEnergy),
      figures.of("share", drilling.bit.lateralShare),
    ]),
  );
  const why = cut.beds.flatMap(({ bed, weight, run: { reasons } }) =>
    [...reasons.map(({ sentence }) => sentence), ...(weight < FEED_DEAD_BAND ? [BY_RATE] : [])].flatMap((sentence) =>
      wrapped(`- ${bed.name}: ${sentence}`, width, 2),
    ),
  );
  return [...run, "", "Computed limit beside the rule of thumb (common practice):", ...rule, "", ...why];
}
