import { annulusSections } from "./annulus-sections.ts";
import { conduitSpeed } from "./conduit.ts";
import { type ReturnCleaning, type ReturnInput, returnCleaning } from "./return-cleaning.ts";
import { connectionCirculation, type RisingStretch, riseTime } from "./rise-time.ts";
import { slipBand } from "./slip-band.ts";

/** What `returnAtDepth` needs. */
export interface ReturnAtDepthInput extends ReturnInput {
  /** Time without flow at a connection [s]. */
  readonly connectionTime: number;
}

/** The return with the bit at one depth. */
export interface ReturnAtDepth extends ReturnCleaning {
  /** Depth of the bit [m]. */
  readonly depth: number;
  /** Time in which fluid at the bit comes to the surface: volume of the annulus over the flow [s]. */
  readonly bottomsUpTime: number;
  /** Time in which the slowest chips do; absent where they do not come up [s]. */
  readonly chipsUpTime?: number;
  /** Time to circulate before a connection; absent where chips do not rise [s]. */
  readonly circulationTime?: number;
}

/**
 * What the return lifts with the bit at one depth, and how long chips take up. Of the forms of slip the fastest fall
 * counts for the times: those are the last chips to come.
 *
 * @throws RangeError when an input is out of range or a pipe does not fit its hole
 * @source (d) relations of slip, transport and rise, each naming its own source
 */
export function returnAtDepth(input: ReturnAtDepthInput): ReturnAtDepth {
  const { flow, chip, fluid, slipForm, connectionTime } = input;
  const form = slipForm ? { form: slipForm } : {};
  const stretches = annulusSections(input)
    .map(({ annulus, length }): RisingStretch => {
      const slipSpeed = slipBand({ chip, fluid, annulus, flow, ...form }).speed.high;
      return { length, upholeSpeed: conduitSpeed({ flow, conduit: annulus }), slipSpeed };
    })
    .reverse();
  const chipsUpTime = riseTime(stretches);
  const circulationTime = connectionCirculation({ stretches, connectionTime });
  return {
    ...returnCleaning(input),
    depth: stretches.reduce((sum, { length }) => sum + length, 0),
    bottomsUpTime: riseTime(stretches.map((stretch) => ({ ...stretch, slipSpeed: 0 }))),
    ...(Number.isFinite(chipsUpTime) ? { chipsUpTime } : {}),
    ...(Number.isFinite(circulationTime) ? { circulationTime } : {}),
  };
}
