import type { Workup } from "@bitwright/traveler";
import type { CardPaper } from "./card-paper.ts";

/** What the card of a workup says of itself besides its content. */
export function cardPaperOf(
  { inquiry, flow: { circuit, leastAirFlow } }: Workup,
  { units, program }: Pick<CardPaper, "program" | "units">,
): CardPaper {
  const { shop, date } = inquiry.job;
  const medium = inquiry.inquiry.fluid.kind;
  const blownWith = { medium, ...(leastAirFlow === undefined ? {} : { leastAirFlow }) };
  return { units, program, shop, ...(date === undefined ? {} : { date }), ...(circuit ? {} : { blownWith }) };
}
