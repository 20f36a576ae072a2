import { describe, expect, it } from "vitest";
import { longWork, type Signals } from "./long-work.ts";

function* countTo(most: number, shouldStop: () => boolean): Generator<number, string, void> {
  for (let k = 1; k <= most; k++) {
    yield k;
    if (shouldStop()) return `stopped at ${k}`;
  }
  return `all ${most}`;
}

/** Signals that a test gives by hand. */
function signalsByHand() {
  const listeners = new Set<() => void>();
  const signals: Signals = {
    on: (_, listener) => listeners.add(listener),
    off: (_, listener) => listeners.delete(listener),
  };
  const interrupt = () => {
    for (const listener of [...listeners]) listener();
  };
  return { signals, listeners, interrupt };
}

describe("longWork", () => {
  it("says nothing of work that is soon done, and leaves no listener behind", async () => {
    const said: string[] = [];
    const { signals, listeners } = signalsByHand();
    const done = await longWork((shouldStop) => countTo(5, shouldStop), {
      terminal: { complain: (text) => said.push(text) },
      progressLine: (k) => `at ${k}`,
      signals,
      now: () => 0,
    });
    expect(done).toEqual({ result: "all 5", stopped: false });
    expect(said).toEqual([]);
    expect(listeners.size).toBe(0);
  });

  it("tells how far it is after a second and then every two", async () => {
    const said: string[] = [];
    let clock = -100;
    await longWork((shouldStop) => countTo(60, shouldStop), {
      terminal: { complain: (text) => said.push(text) },
      progressLine: (k) => `at ${k}`,
      signals: signalsByHand().signals,
      now: () => (clock += 50),
    });
    expect(said.length).toBeGreaterThan(1);
    expect(said.length).toBeLessThan(5);
  });

  it("stops at Ctrl-C with what it has, and lets a second one through", async () => {
    const said: string[] = [];
    const { signals, listeners, interrupt } = signalsByHand();
    const { result, stopped } = await longWork(
      (shouldStop) =>
        (function* () {
          const steps = countTo(50, shouldStop);
          for (let step = steps.next(); ; step = steps.next()) {
            if (step.done) return step.value;
            if (step.value === 7) interrupt();
            yield step.value;
          }
        })(),
      { terminal: { complain: (text) => said.push(text) }, progressLine: String, signals },
    );
    expect(stopped).toBe(true);
    expect(result).toBe("stopped at 7");
    expect(said).toEqual(["Stopping; what is done so far follows. Ctrl-C once more ends at once."]);
    expect(listeners.size).toBe(0);
  });

  it("takes its listener away when the work fails", async () => {
    const { signals, listeners } = signalsByHand();
    const fails = longWork(
      function* (): Generator<number, string, void> {
        yield 1;
        throw new Error("no");
      },
      { terminal: { complain: () => undefined }, progressLine: String, signals },
    );
    await expect(fails).rejects.toThrow("no");
    expect(listeners.size).toBe(0);
  });
});
