import type { Store, VersionEntry } from "@bitwright/store";

/** A worked example that comes with the program. */
export interface ExampleJob {
  /** Name in the shop. */
  readonly name: string;
  /** The traveler file. */
  readonly text: string;
}

const WHO = "Bitwright";
const NOTE = "Worked example that comes with Bitwright: an invented shop, an invented job.";

/** Fills a shop that holds nothing at all with the worked examples, the first of them as the newest; tells how many. */
export async function fillWithExamples({ papers }: Store, examples: readonly ExampleJob[]): Promise<number> {
  for (const kind of ["traveler", "list", "setting"] as const) if ((await papers.list(kind)).length > 0) return 0;
  for (const { name, text } of [...examples].reverse()) {
    await papers.save({ kind: "traveler", name, body: text, basedOn: 0, who: WHO, note: NOTE });
  }
  return examples.length;
}

/** Whether a version is a worked example as it came; one that somebody has changed is their own. */
export function isExample({ who, note }: VersionEntry): boolean {
  return who === WHO && note === NOTE;
}
