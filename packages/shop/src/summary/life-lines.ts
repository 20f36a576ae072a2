import type { Workup } from "@bitwright/traveler";
import { holesInWords } from "../life/holes-in-words.ts";
import type { Figures } from "./figures.ts";
import { wrapped } from "./text-table.ts";

/** How far the bit goes in this ground, hole after hole. */
export function lifeLines({ life: { life, footageBand } }: Workup, figures: Figures, width: number): string[] {
  if (!life) return ["No bed of this hole is drilled with this bit."];
  const hottest = Math.max(...life.steps.map(({ hottestTemperature }) => hottestTemperature));
  const last = life.steps.at(-1);
  return [
    `${figures.about("depth", life.footage)} in ${holesInWords(life)} like this one, ${(life.timeOnBottom / 3600).toFixed(0)} h on bottom.`,
    ...(footageBand && footageBand.high > 1.01 * footageBand.low
      ? wrapped(
          `An order of magnitude: ${figures.band("depth", footageBand)} over what is known of wear. Bits that come back narrow it.`,
          width,
        )
      : []),
    ...(last
      ? wrapped(
          `Worn by then to grade ${last.innerGrade.toFixed(1)} inside and ${last.outerGrade.toFixed(1)} outside, ${figures.of("length", last.undergauge)} under size; the hottest edge ${figures.of("temperature", hottest)}.`,
          width,
        )
      : []),
  ];
}
