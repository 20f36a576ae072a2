import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  CUT_RAMP,
  type Label,
  linesWithin,
  placeLabels,
  rampStep,
  STEEL,
  scaleThatFits,
  spread,
  textWidth,
} from "./index.ts";

/** Relative luminance of a colour (WCAG 2: linear light, weights of red, green and blue). */
function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

describe("palette", () => {
  it("darkens at every step, far enough to tell apart in grey", () => {
    for (const ramp of [CUT_RAMP, [STEEL.tint, STEEL.carbide, STEEL.line, STEEL.face]]) {
      for (let k = 1; k < ramp.length; k++) {
        expect((luminance(ramp[k - 1]) + 0.05) / (luminance(ramp[k]) + 0.05)).toBeGreaterThan(1.2);
      }
    }
  });

  it("keeps every share on the ramp, the upper end of a step in it", () => {
    expect([0, 0.2, 0.2001, 0.5, 1, 1.2].map(rampStep)).toEqual([0, 0, 1, 2, 4, 4]);
  });
});

describe("spread", () => {
  const wanted = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 40 });

  it("keeps the order and the gap", () => {
    fc.assert(
      fc.property(wanted, fc.double({ min: 0.1, max: 10, noNaN: true }), (places, gap) => {
        const rising = [...places].sort((a, b) => a - b);
        const got = spread(rising, gap);
        expect(got).toHaveLength(rising.length);
        for (let k = 1; k < got.length; k++) expect(got[k] - got[k - 1]).toBeGreaterThanOrEqual(gap - 1e-9);
      }),
    );
  });

  it("moves nothing that has room, and shares the push where there is none", () => {
    expect(spread([0, 5, 20], 5)).toEqual([0, 5, 20]);
    expect(spread([10, 10, 10], 4)).toEqual([6, 10, 14]);
    expect(spread([10, 11, 30], 3)).toEqual([9, 12, 30]);
  });
});

describe("linesWithin", () => {
  it("breaks at blanks, never over the width, and marks what it cuts", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 120 }), fc.double({ min: 8, max: 60, noNaN: true }), (text, width) => {
        const lines = linesWithin(text, 3, width, 2);
        expect(lines.length).toBeLessThanOrEqual(2);
        for (const line of lines) expect(textWidth(line, 3)).toBeLessThanOrEqual(width + 1e-9);
        const whole = text.trim().replace(/\s+/g, " ");
        if (!lines.at(-1)?.endsWith("…")) expect(lines.join("").replace(/ /g, "")).toBe(whole.replace(/ /g, ""));
      }),
    );
    expect(linesWithin("one two three", 3, textWidth("one two ", 3), 2)).toEqual(["one two", "three"]);
  });
});

describe("scaleThatFits", () => {
  it("takes the largest scale that leaves the thing inside its room", () => {
    const room = { width: 156, height: 170 };
    expect(scaleThatFits({ width: 155.6, height: 155.6, room }).text).toBe("1 : 1");
    expect(scaleThatFits({ width: 76.2, height: 76.2, room }).text).toBe("2 : 1");
    expect(scaleThatFits({ width: 304.8, height: 304.8, room }).text).toBe("1 : 2");
    expect(scaleThatFits({ width: 1e5, height: 1, room }).text).toBe("1 : 10");
  });
});

describe("placeLabels", () => {
  const label = (x: number, y: number): Label => ({
    text: "12",
    anchor: [x, y],
    toward: 0,
    reach: 1,
    width: 4.3,
    height: 2.6,
  });

  it("sets a label where it would best stand when nothing is in the way", () => {
    const [placed] = placeLabels([label(10, 20)], { points: [], boxes: [] });
    expect(placed.leader).toBe(false);
    expect(placed.at[0]).toBeGreaterThan(11);
    expect(placed.at[1]).toBeCloseTo(20, 9);
  });

  it("keeps a crowd of labels off each other and off standing text", () => {
    const crowd = Array.from({ length: 12 }, (_, k) => label(50 + (k % 4), 50 + Math.floor(k / 4)));
    const standing = { at: [56, 50] as const, width: 10, height: 3 };
    const placed = placeLabels(crowd, { points: [], boxes: [standing] });
    const boxes = [...placed.map(({ at }) => ({ at, width: 4.3, height: 2.6 })), standing];
    boxes.forEach((one, k) => {
      for (const other of boxes.slice(k + 1)) {
        const apart =
          Math.abs(one.at[0] - other.at[0]) >= (one.width + other.width) / 2 ||
          Math.abs(one.at[1] - other.at[1]) >= (one.height + other.height) / 2;
        expect(apart).toBe(true);
      }
    });
  });
});
