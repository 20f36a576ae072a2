import {
  MAKE_UP_TORQUES,
  pinForBitSize,
  REGULAR_CONNECTIONS,
  type RegularThread,
  recalledFrom,
  USUAL_PIPE_YIELD,
} from "@bitwright/engine";
import type { Quantity } from "../../quantity/index.ts";
import type { ResolvedHole, ResolvedPipe } from "../resolved-traveler.ts";
import { connectionName } from "./gear-lists.ts";
import type { ReadingNotes } from "./reading-notes.ts";

/** What a person may say of the bit's joint and of the steel above it. */
interface GivenJoint {
  readonly connection?: string | undefined;
  readonly subDiameter?: Quantity | undefined;
  readonly yieldStrength?: Quantity | undefined;
}

type BitJoint = Pick<ResolvedPipe, "connection" | "subDiameter" | "yieldStrength">;

/** The thread and the sub of the bit's joint and the steel of the pipe, their gaps filled where the size of the bit settles them. */
export function resolveBitJoint(given: GivenJoint, hole: ResolvedHole | undefined, notes: ReadingNotes): BitJoint {
  const connection = given.connection === undefined ? usualPin(hole, notes) : connectionName(given.connection);
  const thread = REGULAR_CONNECTIONS.find((listed) => listed.thread === connection)?.thread;
  const subDiameter = given.subDiameter?.si ?? (thread && slimmestSub(thread, notes));
  return {
    yieldStrength:
      given.yieldStrength?.si ??
      notes.assumeNumber({
        field: "inquiry.pipe.yieldStrength",
        kind: "strength",
        si: USUAL_PIPE_YIELD,
        why: "grade E, the least of the usual drill pipe; pipe of plain tube is weaker",
        source: recalledFrom("API Spec 5DP"),
      }),
    ...(connection === undefined ? {} : { connection }),
    ...(subDiameter === undefined ? {} : { subDiameter }),
  };
}

/** The pin that goes with the size of the bit; none where the sources part over it. */
function usualPin(hole: ResolvedHole | undefined, notes: ReadingNotes): string | undefined {
  const choice = hole && pinForBitSize(hole.diameter);
  if (choice?.decision !== "settled") return undefined;
  notes.assume({
    field: "inquiry.pipe.connection",
    text: choice.thread,
    why: "the pin that goes with a bit of this size; ask the driller what the string has",
    source: recalledFrom("API Spec 7-1 size bands"),
  });
  return choice.thread;
}

/** The smallest sub that the list of make-up torques has for a thread, which errs to the weak side. */
function slimmestSub(thread: RegularThread, notes: ReadingNotes): number | undefined {
  const row = MAKE_UP_TORQUES.find((listed) => listed.thread === thread);
  if (!row) return undefined;
  return notes.assumeNumber({
    field: "inquiry.pipe.subDiameter",
    kind: "diameter",
    si: row.subDiameter,
    why: `the slimmest bit sub in the list of make-up torques for ${thread}; a thicker one is made up harder`,
    source: row.source,
  });
}
