import { describe, expect, it } from "vitest";
import { groundColumn } from "../ground/index.ts";
import { advisedBedOf } from "./advised-bed.ts";
import { practiceRate } from "./practice-rate.ts";
import { practiceWeight } from "./practice-weight-and-speed.ts";
import { type ComputedRun, runningPoint } from "./running-point.ts";

const inch = 0.0254;
const rpm = (2 * Math.PI) / 60;
const footPerHour = 0.3048 / 3600;
const holeDiameter = 6.125 * inch;
const usual = practiceWeight(holeDiameter);

function bedOf(rockId: string) {
  const [bed] = groundColumn({ beds: [{ name: rockId, rockId, top: 10, bottom: 40 }], fluidDensity: 1000 }).beds.map(
    advisedBedOf,
  );
  if (!bed) throw new Error("no bed");
  return bed;
}
const run = (more: Partial<ComputedRun> = {}): ComputedRun => ({
  weight: usual,
  rotarySpeed: 95 * rpm,
  rate: 100 * footPerHour,
  binds: "weight",
  ...more,
});
const at = (...candidates: ComputedRun[]) => runningPoint({ holeDiameter, bed: bedOf("shale"), candidates });

describe("runningPoint", () => {
  it("agrees with the rule of thumb within a quarter, and says so", () => {
    const point = at(run({ weight: usual * 1.2 }));
    expect(point.reasons).toHaveLength(1);
    expect(point.reasons[0]?.sentence).toContain("agree");
    expect(point.findings).toEqual([]);
    expect(point.weightRatio).toBeCloseTo(1.2, 12);
  });

  it("names the limit that keeps the computed weight under the rule of thumb", () => {
    const point = at(run({ weight: usual / 2, binds: "rate" }));
    expect(point.findings).toContainEqual(
      expect.objectContaining({ code: "practice-weight-over-limit", severity: "caution", limit: usual }),
    );
    expect(point.reasons[0]?.sentence).toContain("flow cleans no more");
    expect(point.startWeight).toBe(usual / 2);
    expect(point.weightCeiling).toBe(usual / 2);
  });

  it("begins at the rule of thumb where the computed weight is over it", () => {
    const point = at(run({ weight: usual * 2, binds: "torque" }));
    expect(point.startWeight).toBe(usual);
    expect(point.weightCeiling).toBe(usual * 2);
    expect(point.findings.map(({ code }) => code)).toEqual(["computed-weight-over-practice"]);
    expect(point.reasons[0]?.sentence).toContain("torque");
  });

  it("takes the fastest of the candidates, of equal ones the slowest turning", () => {
    const fast = run({ rate: 120 * footPerHour, rotarySpeed: 110 * rpm });
    const calm = run({ rate: 120 * footPerHour, rotarySpeed: 80 * rpm });
    expect(at(run(), fast, calm).computed).toBe(calm);
    expect(at(calm, fast, run()).computed).toBe(calm);
  });

  it("says why the speeds part", () => {
    expect(at(run({ rotarySpeed: 180 * rpm })).reasons.map(({ rule }) => rule)).toContain(
      "computed speed beside practice",
    );
    expect(at(run({ rotarySpeed: 50 * rpm })).reasons.map(({ rule }) => rule)).toContain(
      "computed speed beside practice",
    );
  });

  it("holds the rate against what the trade sees", () => {
    const rates = (rate: number) =>
      at(run({ rate: rate * footPerHour })).reasons.filter(({ rule }) => rule.includes("rate"));
    expect(rates(100)).toEqual([]);
    expect(rates(400)[0]?.limit).toBeCloseTo(200 * footPerHour, 12);
    expect(rates(20)[0]?.limit).toBeCloseTo(60 * footPerHour, 12);
    expect(at(run({ rate: 3 * footPerHour })).findings.map(({ code }) => code)).toContain("rate-hardly-pays");
  });

  it("refuses to compare nothing", () => {
    expect(() => at()).toThrow("number of candidates must be positive, got 0");
    expect(() => at(run({ rate: 0 }))).toThrow("rate must be positive, got 0");
  });
});

describe("practiceRate", () => {
  it("has no figure for ground the trade gives none for", () => {
    expect(practiceRate(bedOf("granite"))).toBeUndefined();
    expect(practiceRate(bedOf("coal"))).toBeUndefined();
  });
  it("parts soft from hard limestone and sandstone", () => {
    const high = (id: string) => Math.round((practiceRate(bedOf(id))?.high ?? 0) / footPerHour);
    expect(["soft-limestone", "limestone", "friable-sandstone", "sandstone", "hard-sandstone"].map(high)).toEqual([
      120, 50, 150, 60, 25,
    ]);
  });
});
