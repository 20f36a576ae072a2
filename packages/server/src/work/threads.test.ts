import { describe, expect, it } from "vitest";
import { travelerText } from "../../../../tests/support/shop-of-test.ts";
import { startThreads } from "./threads.ts";

const text = travelerText("Ridge");
const fault = (error: unknown) => {
  throw error;
};

describe("startThreads", () => {
  it("can be ended at any time while the threads load", async () => {
    for (const wait of [0, 30, 60, 120, 240]) {
      const threads = startThreads("Bitwright test", fault);
      threads.warm();
      await new Promise((resolve) => setTimeout(resolve, wait));
      await threads.close();
    }
  });

  it("ends a thread at once where it is told to, and the next study finds one", async () => {
    const threads = startThreads("Bitwright test", fault);
    const told: string[] = [];
    const options = { candidates: 10_000_000 };
    const busy = threads.study(text, { kind: "layout", options }, ({ doing }) => told.push(doing));
    const ended = expect(busy.answer).rejects.toThrow(/abort/i);
    await expect.poll(() => told.at(-1), { timeout: 20_000 }).toBe("trying layouts");
    const from = performance.now();
    busy.kill();
    await ended;
    expect(performance.now() - from).toBeLessThan(1000);
    const next = await threads.study(text, { kind: "depth", options: {} }, () => undefined).answer;
    expect(next.ok && JSON.parse(next.value.json)).toHaveProperty("joints");
    await threads.close();
  });

  it("gives what is wrong with a document, and works the next one up", async () => {
    const threads = startThreads("Bitwright test", fault);
    const half = JSON.stringify({ format: "bitwright-traveler", version: 1 });
    const refused = await threads.workup(half);
    expect(!refused.ok && refused.problems.map(({ field }) => field)).toContain("job");
    expect((await threads.findings(text)).ok).toBe(true);
    await threads.close();
  });
});
