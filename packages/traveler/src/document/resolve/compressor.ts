import { commonPractice } from "@bitwright/engine";
import { present } from "../present.ts";
import type { ResolvedCompressor } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenCompressor = NonNullable<ReadTraveler["inquiry"]["compressor"]>;

/** The compressor; it has an engine of its own where nobody said what drives it. */
export function resolveCompressor(given: GivenCompressor, notes: ReadingNotes): ResolvedCompressor {
  const { flow, pressure, engine, enginePower } = given;
  // A power of its own is an engine of its own.
  if (engine === undefined && enginePower === undefined) {
    notes.assume({
      field: "inquiry.compressor.engine",
      text: "own",
      why: "most compressors that drill have an engine of their own; one on the rig's engine loads that as well",
      source: commonPractice(),
    });
  }
  if (engine === "rig" && enginePower !== undefined) {
    const expected = 'leave it out, or give "own" as engine';
    notes.refuse({
      field: "inquiry.compressor.enginePower",
      got: `"${enginePower.text}"`,
      wrong: `got "${enginePower.text}" for a compressor that the rig's engine drives`,
      expected,
    });
  }
  return {
    flow: flow.si,
    pressure: pressure.si,
    ownEngine: engine !== "rig",
    ...present({ enginePower: enginePower?.si }),
  };
}
