import { derivedFrom } from "@bitwright/engine";
import type { ResolvedBed, ResolvedGround, ResolvedHole } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import { readingOf } from "./bed-log-reading.ts";
import { assumeTableStrength, rockOf } from "./bed-rock.ts";
import { depthText, SAME_DEPTH, spanOf } from "./bed-span.ts";
import type { ReadingNotes } from "./reading-notes.ts";
import type { KnownRocks } from "./rocks.ts";

interface GroundQuestion {
  readonly traveler: ReadTraveler;
  readonly rocks: KnownRocks;
  /** The hole this bit drills; absent where something is wrong with the holes. */
  readonly bitHole: ResolvedHole | undefined;
}

/** The beds in SI, in order, each with the rock it was given or its phrase was read as. */
export function resolveGround({ traveler, rocks, bitHole }: GroundQuestion, notes: ReadingNotes): ResolvedGround {
  const beds: ResolvedBed[] = [];
  for (const [at, given] of traveler.ground.beds.entries()) {
    const path = `ground.beds[${at}]`;
    const span = spanOf({ given, path, above: beds.at(-1) }, notes);
    const rock = rockOf(given, path, rocks, notes);
    const strengthFrom = readingOf(given, path, notes);
    if (given.strength && given.strengthFrom) {
      const expected = "give the strength itself or a log reading to work it from, not both";
      notes.refuse({ field: `${path}.strengthFrom`, got: "strength and strengthFrom", expected });
    }
    if (!given.strength && !given.strengthFrom) assumeTableStrength({ ...given, ...rock }, path, traveler, notes);
    if (!span) continue;
    beds.push({
      path,
      name: given.phrase ?? given.rock ?? `bed ${at + 1}`,
      ...span,
      ...(given.phrase === undefined ? {} : { phrase: given.phrase }),
      ...rock,
      ...(given.strength ? { strength: given.strength } : {}),
      ...(strengthFrom ? { strengthFrom } : {}),
      ...(given.notes === undefined ? {} : { notes: given.notes }),
    });
  }
  const reaching = bitHole && notes.problems.length === 0 ? reachingDown(beds, bitHole, notes) : beds;
  const { source } = traveler.ground;
  return { beds: reaching, ...(source === undefined ? {} : { source }) };
}

/** The beds with the last one carried on to the bottom of the hole, where the log ends above it. */
function reachingDown(beds: readonly ResolvedBed[], bitHole: ResolvedHole, notes: ReadingNotes): ResolvedBed[] {
  const last = beds.at(-1);
  if (!last || last.bottom >= bitHole.to - SAME_DEPTH) return [...beds];
  notes.assumeNumber({
    field: `${last.path}.bottom`,
    kind: "depth",
    si: bitHole.to,
    why: `the beds end at ${depthText(last.bottom)} and the hole goes deeper: the last bed is taken to go on`,
    source: derivedFrom(`${bitHole.path}.to`),
  });
  return [...beds.slice(0, -1), { ...last, bottom: bitHole.to }];
}
