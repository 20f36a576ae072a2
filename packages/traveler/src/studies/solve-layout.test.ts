import { describe, expect, it } from "vitest";
import { demoWorkup } from "../../../../tests/support/demo-workup.ts";
import type { Workup } from "../workup.ts";
import { layoutQuestion, layoutStudy } from "./solve-layout.ts";

const well = demoWorkup("house-well");
const loop = demoWorkup("loop-hole");

/** The same workup with more asked of its bit. */
function asking(workup: Workup, more: object): Workup {
  return { ...workup, inquiry: { ...workup.inquiry, bit: { ...workup.inquiry.bit, ...more } } };
}

describe("layoutQuestion", () => {
  it("asks for the traveler's own bit in the bed that keeps it longest, at its own advances and ports", () => {
    const question = layoutQuestion(well, {});
    expect(question?.spec.holeDiameter).toBeCloseTo(6.125 * 0.0254, 9);
    expect(question?.spec.cutter.code).toBe("1308");
    expect(question?.portDiameter).toBe(well.bit.ports.diameter);
    const hours = well.cut.beds.map(({ bed, drilling }) => (bed.bottom - bed.top) / drilling.rate);
    const longest = well.cut.beds[hours.indexOf(Math.max(...hours))];
    expect(question?.response).toEqual(longest?.ground.response.mid);
    const advances = well.cut.beds.map(({ drilling }) => drilling.advance);
    expect(question?.advances?.[1]).toBe(Math.max(...advances));
    expect(question?.advances?.[0]).toBeCloseTo(Math.min(...advances) / 3, 12);
  });

  it("is plain data, to be handed to another thread", () => {
    const question = layoutQuestion(loop, { seed: 3, candidates: 100, measure: "wear" });
    expect(structuredClone(question)).toEqual(question);
    expect(JSON.parse(JSON.stringify(question))).toEqual(question);
    expect(question).toMatchObject({ seed: 3, candidates: 100, measure: "wear" });
  });

  it("leaves alone what the traveler names, and says so", () => {
    expect(layoutQuestion(well)?.freedom).toEqual({});
    const named = asking(well, { sweep: 0.3, backRake: { centre: 0.15, gauge: 0.25 } });
    expect(layoutQuestion(named)?.freedom).toEqual({ sweep: 0, rake: 0 });
    expect(layoutStudy(named, { candidates: 60 })?.kept).toEqual(["sweep of the wings", "back rakes"]);
  });

  it("is none for a bit that stands as it was measured", () => {
    expect(layoutQuestion(demoWorkup("measured-bit"))).toBeUndefined();
    expect(layoutStudy(demoWorkup("measured-bit"))).toBeUndefined();
  });
});

describe("layoutStudy", () => {
  it("sets beside the choices the very layout that the workup has", () => {
    const study = layoutStudy(loop, { candidates: 300 });
    expect(study?.solved.steadied.bit.layout).toEqual(loop.bit.layout);
    expect(study?.bed).toBe("gray shale");
  });

  it("tells how far it is, and stops when asked", () => {
    const seen: number[] = [];
    const whole = layoutStudy(loop, { candidates: 400, progress: ({ tried, of }) => seen.push(tried / of) });
    expect(seen.at(-1)).toBe(1);
    expect(whole?.solved.tried).toBe(400);
    const stopped = layoutStudy(loop, { candidates: 400, shouldStop: () => true });
    expect(stopped?.solved.tried).toBe(0);
    expect(stopped?.solved.choices.length).toBeGreaterThan(0);
  });
});
