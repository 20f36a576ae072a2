import { describe, expect, it } from "vitest";
import { rockById } from "./rock-table.ts";
import { shopRock } from "./shop-rock.ts";
import { strengthCorrelationById, strengthFromLog } from "./strength-from-log.ts";

const microsecondsPerFoot = 1e-6 / 0.3048;

describe("strengthFromLog", () => {
  it("gives a band of a factor two either way, with the correlation named in the working", () => {
    const { ucs, findings, working, correlation } = strengthFromLog({
      correlation: "sonic-shale-world",
      value: 80 * microsecondsPerFoot,
      rockId: "shale",
    });
    const mid = ucs?.mid ?? Number.NaN;
    expect((ucs?.high ?? 0) / mid).toBeCloseTo(2, 12);
    expect(mid / (ucs?.low ?? 0)).toBeCloseTo(2, 12);
    expect(findings).toEqual([]);
    expect(working[0]?.relation).toContain("1.35 (304.8/Δt)^2.6");
    expect(working[0]?.source).toBe(correlation.source);
    expect(working[0]?.value).toBe(mid);
  });

  it("stops at a rock it was not made on", () => {
    const { findings, ucs } = strengthFromLog({
      correlation: "sonic-shale-world",
      value: 80 * microsecondsPerFoot,
      rockId: "granite",
      where: "bed 4",
    });
    expect(findings.map(({ code, severity, where }) => [code, severity, where])).toEqual([
      ["log-correlation-for-other-rock", "stop", "bed 4"],
      ["log-strength-outside-table", "note", "bed 4"],
    ]);
    expect(ucs).toBeDefined();
  });

  it("takes a rock of the shop's own for the rock it was made from", () => {
    const own = shopRock({ like: rockById("shale"), id: "ridge-shale", properties: {}, from: "test" });
    const reading = { correlation: "sonic-shale-world", value: 80 * microsecondsPerFoot, rockId: "ridge-shale" };
    expect(strengthFromLog({ ...reading, shopRocks: [own] }).findings).toEqual([]);
    expect(() => strengthFromLog(reading)).toThrow('rockId "ridge-shale" is not in the rock table');
  });

  it("warns outside the range and names the limit passed", () => {
    const { findings } = strengthFromLog({ correlation: "porosity-shale-tight", value: 0.2 });
    expect(findings[0]).toMatchObject({ code: "log-reading-outside-range", value: 0.2, limit: 0.1, unit: "-" });
    const weakShale = strengthFromLog({ correlation: "modulus-shale-tertiary", value: 30e9 });
    expect(weakShale.findings[0]?.code).toBe("log-reading-outside-range");
  });

  it("gives no strength, and says stop, where the relation runs below zero", () => {
    const { ucs, working, findings } = strengthFromLog({
      correlation: "sonic-shale-tertiary",
      value: 400 * microsecondsPerFoot,
    });
    expect(ucs).toBeUndefined();
    expect(working).toEqual([]);
    expect(findings[0]).toMatchObject({ code: "log-gives-no-strength", severity: "stop" });
  });

  it("lowers shaly sandstone by its clay share, from the clean relation at no clay", () => {
    const clean = strengthFromLog({ correlation: "porosity-sandstone-clean", value: 0.1 }).ucs?.mid ?? 0;
    const at = (clayShare: number) =>
      strengthFromLog({ correlation: "porosity-sandstone-shaly", value: 0.1, clayShare }).ucs?.mid ?? 0;
    expect(at(0)).toBe(clean);
    // 254 - 204 × 0.5 = 152
    expect(at(0.5) / clean).toBeCloseTo(152 / 254, 12);
  });

  it("asks for the density where the relation needs it", () => {
    const reading = { correlation: "velocity-sandstone-strong", value: 5000 };
    expect(() => strengthFromLog(reading)).toThrow("density must be positive");
    // 42.1 exp(1.9e-11 × 2500 × 25e6) = 42.1 exp(1.1875) = 138.1 MPa
    expect((strengthFromLog({ ...reading, density: 2500 }).ucs?.mid ?? 0) / 1e6).toBeCloseTo(138.05, 1);
  });

  it("has no default correlation and refuses readings that are no such quantity", () => {
    expect(() => strengthFromLog({ correlation: "shale", value: 1e-4 })).toThrow(/near it: .*shale/);
    expect(() => strengthCorrelationById("")).toThrow(/is not known/);
    expect(() => strengthFromLog({ correlation: "porosity-chalk", value: 10 })).toThrow("porosity must lie in 0 to 1");
    expect(() => strengthFromLog({ correlation: "sonic-shale-world", value: 0 })).toThrow("slowness must be positive");
  });
});
