import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { returnAtDepth } from "./return-at-depth.ts";
import { type ReturnInBed, returnFindings } from "./return-findings.ts";
import { connectionCirculation, riseTime } from "./rise-time.ts";

// The demo well by hand: 150 gpm around 3 1/2 in pipe in 6 1/8 in hole under 60 ft of 6.28 in casing, 360 ft deep.
const gpm = (231 * 0.0254 ** 3) / 60;
const inch = 0.0254;
const foot = 0.3048;
const well = (depth: number) => ({
  string: [{ name: "pipe", outerDiameter: 3.5 * inch, bore: 2.764 * inch, length: depth }],
  hole: [
    { name: "casing", diameter: 6.28 * inch, bottom: 60 * foot },
    { name: "open hole", diameter: 6.125 * inch, bottom: 360 * foot },
  ],
  fluid: { model: "bingham", density: 1054, plasticViscosity: 0.008, yieldPoint: 3.83 } as const,
  flow: 150 * gpm,
  chip: { size: 0.003, density: 2600 },
  holeDiameter: 6.125 * inch,
  connectionTime: 180,
});

describe("the return with the bit at a depth", () => {
  it("has bottoms up when the pump has filled the annulus once", () => {
    // (d) gallons of annulus: (D² - d²)/24.51 a foot, inches in, a figure of every mud book; over 150 gal/min.
    const gallons = ((6.28 ** 2 - 3.5 ** 2) * 60 + (6.125 ** 2 - 3.5 ** 2) * 300) / 24.51;
    expectClose(returnAtDepth(well(360 * foot)).bottomsUpTime, (60 * gallons) / 150, 2e-4);
  });

  it("cleans as its slowest annulus does, by the load of chips worked by hand", () => {
    const found = returnAtDepth(well(360 * foot));
    expect(found.slowestAnnulus.name).toBe("pipe in casing");
    // (d) 24.51 Q/(D² - d²) ft/min of annulus; a share of 5 % of the flow that rises, over the area of the hole.
    const upholeSpeed = ((24.51 * 150) / (6.28 ** 2 - 3.5 ** 2)) * (foot / 60);
    const rise = 1 - found.slip.speed.mid / upholeSpeed;
    expectClose(found.rateCeiling.mid, (0.05 * rise * 150 * gpm) / ((Math.PI / 4) * (6.125 * inch) ** 2), 1e-3);
  });

  it("takes chips longer than the fluid, and longer from deeper", () => {
    fc.assert(
      fc.property(fc.double({ min: 30, max: 200, noNaN: true }), (depth) => {
        const { bottomsUpTime, chipsUpTime = 0 } = returnAtDepth(well(depth));
        expect(chipsUpTime).toBeGreaterThan(bottomsUpTime);
        expect(returnAtDepth(well(1.2 * depth)).chipsUpTime ?? 0).toBeGreaterThan(chipsUpTime);
      }),
    );
  });

  it("gives no time where chips do not come up, and nothing to clean", () => {
    const { fluid } = well(100);
    const thin = { ...fluid, density: 1000, plasticViscosity: 0.001, yieldPoint: 0 };
    const found = returnAtDepth({ ...well(100), fluid: thin, chip: { size: 0.02, density: 2600 }, flow: 30 * gpm });
    expect(found).not.toHaveProperty("chipsUpTime");
    expect(found).not.toHaveProperty("circulationTime");
    expect(found.rateCeiling.low).toBe(0);
  });
});

describe("circulating before a connection", () => {
  const stretch = { length: 100, upholeSpeed: 0.7, slipSpeed: 0.2 };

  it("lifts chips as high as they fall while the pump is off", () => {
    // (d) three minutes of 0.2 m/s are 36 m; at 0.5 m/s they take 72 s.
    expectClose(connectionCirculation({ stretches: [stretch], connectionTime: 180 }), 72, 1e-12);
  });

  it("goes on into the next stretch, and no further than out of the hole", () => {
    const two = [
      { ...stretch, length: 20 },
      { ...stretch, upholeSpeed: 0.4 },
    ];
    expectClose(connectionCirculation({ stretches: two, connectionTime: 180 }), 20 / 0.5 + 16 / 0.2, 1e-12);
    expectClose(connectionCirculation({ stretches: two, connectionTime: 1e5 }), riseTime(two), 1e-12);
  });

  it("has no end where chips hang still", () => {
    expect(riseTime([{ ...stretch, slipSpeed: 0.7 }])).toBe(Number.POSITIVE_INFINITY);
    expect(() => riseTime([{ ...stretch, upholeSpeed: 0 }])).toThrow(RangeError);
  });
});

describe("remarks on the return", () => {
  const found = returnAtDepth(well(360 * foot));
  const bed: ReturnInBed = { ...found, name: "shale", rate: 0.5 * found.rateCeiling.mid, sandy: false };
  const codes = (beds: readonly ReturnInBed[], lump?: number) =>
    returnFindings({ beds, smallestPort: 0.0127, ...(lump === undefined ? {} : { largestLump: lump }) }).map(
      ({ code }) => code,
    );

  it("holds the rate to the ceiling only where the bit outruns it", () => {
    expect(codes([bed], 0.005)).toEqual(["flow.circulate-before-trip", "flow.circulate-before-connection"]);
    expect(codes([{ ...bed, rate: 1.01 * found.rateCeiling.mid }], 0.005)).toContain("flow.bed-rate-ceiling");
  });

  it("asks for a float in sand and for a screen where nobody knows the lumps", () => {
    expect(codes([bed, { ...bed, sandy: true }], 0.005)).toContain("flow.float");
    const screen = returnFindings({ beds: [bed], smallestPort: 0.0127 }).find(({ code }) => code === "flow.screen");
    // (c) common practice: openings at most half the smallest port.
    expectClose(screen?.limit ?? 0, 0.00635, 1e-9);
    expect(codes([bed], 0.005)).not.toContain("flow.screen");
  });
});
