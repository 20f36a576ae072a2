import type { EngineParts } from "@bitwright/engine";
import type { PowerStation } from "@bitwright/traveler";
import { CUT_RAMP, STEEL } from "../sheet/index.ts";

/** A part of the engine's load as a sheet names and fills it; the fills stand apart in grey as well. */
export interface NamedPart {
  readonly part: keyof EngineParts;
  readonly name: string;
  readonly fill: string;
}

const PARTS: readonly NamedPart[] = [
  { part: "rotaryPower", name: "turning", fill: CUT_RAMP[3] },
  { part: "pumpPower", name: "mud pump", fill: STEEL.face },
  { part: "compressorPower", name: "compressor", fill: STEEL.line },
  { part: "feedPower", name: "pushing", fill: CUT_RAMP[1] },
  { part: "ownPower", name: "engine itself", fill: STEEL.tint },
];

/** The parts that some bed of a job has, in the order they are stacked. */
export function partsOf({ beds }: Pick<PowerStation, "beds">): NamedPart[] {
  return PARTS.filter(({ part }) => beds.some(({ parts }) => parts[part] > 0));
}
