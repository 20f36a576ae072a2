import { classifyGround, rockById } from "@bitwright/engine";
import type { ImportedBed } from "./ground-section.ts";
import { counted, type ImportFault } from "./report.ts";

const span = (bed: ImportedBed): string => `${bed.top} to ${bed.bottom}`;

/** Beds whose rock cannot be told from their words, and beds whose rock was guessed from them. */
export function phraseFaults(beds: readonly ImportedBed[]): ImportFault[] {
  const unnamed = beds.filter((bed) => bed.rock === undefined && bed.phrase === undefined);
  const read = beds.flatMap((bed) =>
    bed.rock === undefined && bed.phrase !== undefined ? [{ bed, reading: classifyGround(bed.phrase) }] : [],
  );
  const unknown = read.filter(({ reading }) => reading.rockId === undefined);
  const guessed = read.filter(({ reading }) => reading.rockId !== undefined && reading.confidence === "guess");
  const faults: ImportFault[] = [];
  if (unnamed.length > 0) {
    faults.push({
      code: "bed-without-rock",
      what: `${counted(unnamed.length, "bed")} for which no rock was named: ${unnamed.map(span).join("; ")}`,
      rows: unnamed.length,
      effect: "left without a rock; name one before a bit is chosen",
    });
  }
  if (unknown.length > 0) {
    faults.push({
      code: "phrase-names-no-rock",
      what: `${counted(unknown.length, "bed")} whose words name no rock: ${unknown.map(({ bed }) => `${span(bed)} "${bed.phrase}"`).join("; ")}`,
      rows: unknown.length,
      effect: "left without a rock; name one before a bit is chosen",
    });
  }
  if (guessed.length > 0) {
    const guesses = guessed.map(({ bed, reading }) => `"${bed.phrase}" as ${rockById(reading.rockId ?? "").name}`);
    faults.push({
      code: "phrase-guessed",
      what: `${counted(guessed.length, "bed")} whose words leave a doubt: ${[...new Set(guesses)].join("; ")}`,
      rows: guessed.length,
      effect: "read so; look at them",
    });
  }
  return faults;
}
