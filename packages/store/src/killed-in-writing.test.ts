import { spawn } from "node:child_process";
import { expect, it } from "vitest";
import { projectFile } from "../../../tests/support/command.ts";
import { longTraveler, numberedFile } from "../../../tests/support/numbered-papers.ts";
import { describePlaces } from "../../../tests/support/places.ts";
import { openForTest } from "../../../tests/support/shop-of-test.ts";

/** What a process said before it was killed. */
interface Said {
  readonly begun: readonly number[];
  readonly kept: readonly number[];
  readonly files: readonly string[];
}

/** Lets a process save, and kills it with SIGKILL some time after it has begun its second save [ms]. */
function killedWhileSaving(place: string, manner: "honest" | "early", after: number): Promise<Said> {
  return new Promise((ended, failed) => {
    const words = ["--import", "tsx", projectFile("tests/support/saving-process.ts"), place, manner];
    const child = spawn(process.execPath, words, { cwd: projectFile("."), stdio: ["ignore", "pipe", "pipe"] });
    let out = "";
    let complaint = "";
    let aimed = false;
    child.stderr.on("data", (bytes) => {
      complaint += bytes;
    });
    child.stdout.on("data", (bytes) => {
      out += bytes;
      if (aimed || (out.match(/begin/g)?.length ?? 0) < 2) return;
      aimed = true;
      if (after === 0) child.kill("SIGKILL");
      else setTimeout(() => child.kill("SIGKILL"), after);
    });
    child.on("close", (_, signal) => {
      // Only whole lines count: what was cut off was never said.
      const lines = out.split("\n").slice(0, -1);
      const after = (mark: string) => lines.filter((line) => line.startsWith(mark)).map((line) => line.split(" ")[1]);
      if (signal !== "SIGKILL") failed(new Error(`the process ended by itself: ${complaint}`));
      else ended({ begun: after("begin").map(Number), kept: after("kept").map(Number), files: after("file") });
    });
  });
}

/** What was said to be kept and is not there, or is not what was given. */
async function lostOf(place: string, { begun, kept, files }: Said): Promise<string[]> {
  const store = await openForTest(place);
  const lost = await store.faults();
  const paper = { kind: "traveler", name: "ridge" } as const;
  const newest = (await store.papers.list("traveler"))[0]?.newest.version ?? 0;
  for (const version of new Set([...kept, ...begun.filter((one) => one <= newest)])) {
    const body = version <= newest ? (await store.papers.read(paper, version)).body : "";
    if (body !== longTraveler(version)) lost.push(`version ${version}`);
  }
  // At most the save that was under way may be there beyond what was said.
  if (newest > Math.max(...begun)) lost.push(`version ${newest} was never begun`);
  const there = newest === 0 ? [] : await store.attachments.list("ridge");
  for (const name of files) if (!there.some((one) => one.name === name)) lost.push(`file ${name}`);
  for (const one of there) {
    const bytes: Uint8Array[] = [];
    for await (const piece of store.attachments.bytes(one)) bytes.push(piece);
    if (!Buffer.concat(bytes).equals(Buffer.concat(numberedFile(Number.parseInt(one.name, 10))))) {
      lost.push(`half of file ${one.name}`);
    }
  }
  await store.close();
  return lost;
}

/** Whether the process died after it had begun a save and before it said that it was kept. */
const inTheMiddle = ({ begun, kept }: Said) => Math.max(...begun) > Math.max(0, ...kept);

const MOST_ROUNDS = 20;

await describePlaces(({ fresh }) => {
  it("loses nothing it has said to be kept, killed in the middle of writes", async () => {
    const place = await fresh();
    let middle = 0;
    for (let round = 0; middle < 3 && round < MOST_ROUNDS; round += 1) {
      // From the first moment of a save to some way into it, or into the file after it.
      const said = await killedWhileSaving(place, "honest", (round * 3) % 11);
      if (inTheMiddle(said)) middle += 1;
      expect(await lostOf(place, said)).toEqual([]);
    }
    expect(middle).toBe(3);
  });

  it("would be seen to lose versions if it said so before they were kept", async () => {
    const place = await fresh();
    let lost: string[] = [];
    for (let round = 0; lost.length === 0 && round < MOST_ROUNDS; round += 1) {
      lost = await lostOf(place, await killedWhileSaving(place, "early", 0));
    }
    expect(lost.filter((one) => /^version \d+$/.test(one)).length).toBeGreaterThan(0);
  });
});
