import { describe, expect, it } from "vitest";
import { type StudyJob, studyJobs } from "./study-jobs.ts";
import type { StudyUnderWay } from "./threads.ts";
import type { StudyWord } from "./worker.ts";

type Answer = Awaited<StudyUnderWay["answer"]>;
const ASKED = { kind: "bands", options: {} } as const;
const FOUND: Answer = { ok: true, value: { json: '{"a":1}', sheets: [{ name: "a.csv", text: "a" }] } };

/** Studies that end when a test says so; what each was told is kept. */
function jobsByHand() {
  const studies: {
    readonly tell: (word: StudyWord) => void;
    readonly end: (answer: Answer) => void;
    readonly fail: (error: Error) => void;
    readonly told: string[];
  }[] = [];
  const faults: unknown[] = [];
  let id = 0;
  const jobs = studyJobs({
    newId: () => `${++id}`,
    onFault: (error) => faults.push(error),
    threads: {
      study(_text, _asked, tell) {
        const told: string[] = [];
        let [end, fail]: [(answer: Answer) => void, (error: Error) => void] = [() => {}, () => {}];
        const answer = new Promise<Answer>((resolve, reject) => {
          [end, fail] = [resolve, reject];
        });
        studies.push({ tell, end, fail, told });
        const kill = () => {
          told.push("kill");
          fail(new Error("the thread was ended"));
        };
        return { answer, stop: () => told.push("stop"), kill };
      },
    },
  });
  return { jobs, studies, faults };
}

describe("studyJobs", () => {
  it("follows a study from waiting to done, and tells every change once", async () => {
    const { jobs, studies } = jobsByHand();
    const { id } = jobs.start("{}", ASKED);
    const seen: StudyJob[] = [];
    jobs.watch(id, (job) => seen.push(job));
    expect(jobs.find(id)).toMatchObject({ state: "waiting", progress: { done: 0 } });
    studies[0]?.tell({ done: 3, of: 10, doing: "drawing" });
    studies[0]?.end(FOUND);
    await expect.poll(() => jobs.find(id)?.state).toBe("done");
    expect(seen.map(({ state, progress }) => [state, progress.done])).toEqual([
      ["running", 3],
      ["done", 10],
    ]);
    expect(jobs.find(id)).toMatchObject({ result: '{"a":1}', sheets: [{ name: "a.csv" }] });
    expect(jobs.underWay()).toBe(0);
  });

  it("asks a study to end, and keeps what it ends with", async () => {
    const { jobs, studies } = jobsByHand();
    const { id } = jobs.start("{}", ASKED);
    studies[0]?.tell({ done: 3, of: 10, doing: "drawing" });
    const cancelled = jobs.cancel(id);
    studies[0]?.end(FOUND);
    expect(await cancelled).toMatchObject({ state: "stopped", progress: { done: 3, of: 10 }, result: '{"a":1}' });
    expect(studies[0]?.told).toEqual(["stop"]);
  });

  it("ends the thread of one that does not listen, within a second", async () => {
    const { jobs, studies, faults } = jobsByHand();
    const { id } = jobs.start("{}", ASKED);
    studies[0]?.tell({ done: 3, doing: "drawing" });
    const from = performance.now();
    const job = await jobs.cancel(id);
    expect(performance.now() - from).toBeLessThan(1000);
    expect(job?.state).toBe("stopped");
    expect(job).not.toHaveProperty("result");
    expect([studies[0]?.told, faults]).toEqual([["stop", "kill"], []]);
  });

  it("lets one that has heard write down what it has, but not for ever", async () => {
    const { jobs, studies } = jobsByHand();
    const [slow, hanging] = [jobs.start("{}", ASKED).id, jobs.start("{}", ASKED).id];
    const heard = { done: 3, doing: "ending", ending: true };
    for (const { tell } of studies) tell({ done: 3, doing: "drawing" });
    const cancelled = [jobs.cancel(slow), jobs.cancel(hanging)];
    for (const { tell } of studies) tell(heard);
    setTimeout(() => studies[0]?.end(FOUND), 1500);
    expect(await cancelled[0]).toMatchObject({ state: "stopped", result: '{"a":1}' });
    expect(await cancelled[1]).not.toHaveProperty("result");
    expect(studies.map(({ told }) => told)).toEqual([["stop"], ["stop", "kill"]]);
  });

  it("tells of a fault, and says of the study only that it failed", async () => {
    const { jobs, studies, faults } = jobsByHand();
    const { id } = jobs.start("{}", ASKED);
    studies[0]?.fail(new Error("a secret of the inside"));
    await expect.poll(() => jobs.find(id)?.state).toBe("failed");
    expect(jobs.find(id)?.failed).toEqual({ detail: "The program failed in this study.", problems: [] });
    expect(faults).toEqual([new Error("a secret of the inside")]);
  });

  it("forgets the oldest of those that are over, and none that runs", async () => {
    const { jobs, studies } = jobsByHand();
    const { id: running } = jobs.start("{}", ASKED);
    const ids: string[] = [];
    for (let k = 0; k < 60; k++) {
      ids.push(jobs.start("{}", ASKED).id);
      studies.at(-1)?.end(FOUND);
      await expect.poll(() => jobs.find(ids.at(-1) ?? "")?.state).toBe("done");
    }
    expect(jobs.find(running)?.state).toBe("waiting");
    expect(jobs.find(ids[0] ?? "")).toBeUndefined();
    expect(jobs.find(ids.at(-1) ?? "")?.state).toBe("done");
    expect(ids.filter((id) => jobs.find(id)).length).toBeLessThan(60);
  });

  it("stops all when the server ends", () => {
    const { jobs, studies } = jobsByHand();
    const ids = [jobs.start("{}", ASKED).id, jobs.start("{}", ASKED).id];
    jobs.close();
    expect(ids.map((id) => jobs.find(id)?.state)).toEqual(["stopped", "stopped"]);
    expect(studies.map(({ told }) => told)).toEqual([["kill"], ["kill"]]);
  });
});
