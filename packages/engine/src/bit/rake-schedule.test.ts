import { describe, expect, it } from "vitest";
import { rakeFindings, rakesAt, usualRakes } from "./rake-schedule.ts";

const deg = Math.PI / 180;
const raked = (zone: "cone" | "nose" | "shoulder" | "gauge", back: number, side = 5, number = 1) => ({
  number,
  zone,
  backRake: back * deg,
  sideRake: side * deg,
});
const codes = (...args: Parameters<typeof rakeFindings>) => rakeFindings(...args).map(({ code }) => code);

describe("rakes", () => {
  it("start near ten degrees, five less in soft and five more in hard ground, more toward the gauge", () => {
    const usual = usualRakes();
    expect(usual.nose.backRake / deg).toBeCloseTo(10, 9);
    expect(usualRakes("soft").nose.backRake / deg).toBeCloseTo(5, 9);
    expect(usualRakes("hard").nose.backRake / deg).toBeCloseTo(15, 9);
    expect(usual.gauge.backRake).toBeGreaterThan(usual.nose.backRake);
  });

  it("raise no remark for what they propose themselves", () => {
    for (const ground of ["soft", "usual", "hard"] as const) {
      const { cone, nose, shoulder, gauge } = usualRakes(ground);
      const all = Object.entries({ cone, nose, shoulder, gauge }).map(([zone, of], at) => ({
        ...of,
        number: at + 1,
        zone: zone as "cone",
      }));
      expect(rakeFindings(all, ground)).toEqual([]);
    }
  });

  it("run evenly over the radius, or hold by zone with the taper as the shoulder", () => {
    const even = {
      kind: "even" as const,
      centre: { backRake: 0.1, sideRake: 0 },
      gauge: { backRake: 0.3, sideRake: 0.2 },
    };
    expect(rakesAt(even, { zone: "nose", radiusShare: 0.5 }).backRake).toBeCloseTo(0.2, 12);
    expect(rakesAt(even, { zone: "gauge", radiusShare: 1.2 })).toEqual({ backRake: 0.3, sideRake: 0.2 });
    expect(rakesAt(usualRakes(), { zone: "taper", radiusShare: 0.5 })).toEqual(usualRakes().shoulder);
  });

  it("are remarked on outside the bounds of their zone and ground", () => {
    expect(codes([raked("cone", 0)])).toEqual(["no-back-rake"]);
    expect(codes([raked("cone", 6)], "usual")).toEqual(["back-rake-small"]);
    expect(codes([raked("cone", 6)], "soft")).toEqual([]);
    expect(codes([raked("nose", 24)], "usual")).toEqual(["back-rake-large"]);
    expect(codes([raked("gauge", 24)], "usual")).toEqual([]);
    expect(codes([raked("nose", 12, 20)])).toEqual(["side-rake-large"]);
  });

  it("name every cutter and the worst of them", () => {
    const [finding] = rakeFindings([raked("nose", 26, 5, 3), raked("nose", 30, 5, 4)], "usual");
    expect(finding?.where).toBe("cutter 3, 4");
    expect((finding?.value ?? 0) / deg).toBeCloseTo(30, 9);
  });
});
