/**
 * Saves version after version and file after file at a place until it is killed, saying `begin N` before and `kept N` after
 * each. With `early` it says `kept N` some time before it saves: the fault that a test of lost work must find.
 */

import { randomUUID } from "node:crypto";
import { writeSync } from "node:fs";
import { openStore } from "@bitwright/store";
import { longTraveler, numberedFile } from "./numbered-papers.ts";

const [place, manner] = process.argv.slice(2);
const say = (words: string) => writeSync(1, `${words}\n`);

const { papers, attachments } = await openStore({
  place,
  program: "Bitwright test",
  now: () => new Date(),
  newId: randomUUID,
});
const [before] = await papers.list("traveler");
for (let version = before?.newest.version ?? 0; ; version += 1) {
  const next = version + 1;
  const said = { who: "Ada", note: `number ${next}` };
  say(`begin ${next}`);
  if (manner === "early") {
    say(`kept ${next}`);
    // As a disk does that takes its time: a busy machine is sure to come in between.
    if (next > 1) await new Promise((resolve) => setTimeout(resolve, 1000));
  }
  await papers.save({ kind: "traveler", name: "ridge", body: longTraveler(next), basedOn: version, ...said });
  if (manner !== "early") say(`kept ${next}`);
  const file = `${next}-${randomUUID()}`;
  await attachments.add({ traveler: "ridge", name: file, mediaType: "text/plain", bytes: numberedFile(next), ...said });
  say(`file ${file}`);
}
