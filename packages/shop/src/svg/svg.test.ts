import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { element, linePath, type PagePoint, softPath, svgNumber, thinned, xmlText } from "./index.ts";

describe("svgNumber", () => {
  it("rounds to three decimals without an exponent or a negative zero", () => {
    expect([1 / 3, 2, -0.0004, 1e-9, 155.575, 20.5].map(svgNumber)).toEqual([
      "0.333",
      "2",
      "0",
      "0",
      "155.575",
      "20.5",
    ]);
    expect(svgNumber(100)).toBe("100");
  });

  it("refuses what is not a number", () => {
    expect(() => svgNumber(Number.NaN)).toThrow(/must be finite, got NaN/);
    expect(() => svgNumber(Number.POSITIVE_INFINITY)).toThrow(/Infinity/);
  });
});

describe("xmlText", () => {
  it("leaves no mark that could open markup, and no character XML forbids", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const safe = xmlText(text);
        expect(safe.replace(/&(amp|lt|gt|quot);/g, "")).not.toMatch(/[<>"&]/);
        for (const mark of safe) expect(mark.codePointAt(0)).toBeGreaterThanOrEqual(0x20);
      }),
    );
  });

  it("keeps what people write", () => {
    expect(xmlText('6 1/8" <Ø> Müller & Söhne 😀')).toBe("6 1/8&quot; &lt;Ø&gt; Müller &amp; Söhne 😀");
    expect(xmlText("a\u0000b\uD800c")).toBe("a\uFFFDb\uFFFDc");
  });
});

describe("element", () => {
  it("escapes text and attributes, takes pieces as they are", () => {
    const inner = element("tspan", { x: 1.23456 }, "<b>");
    expect(element("g", { id: 'a"b', class: undefined }, inner).markup).toBe(
      '<g id="a&quot;b">\n<tspan x="1.235">&lt;b&gt;</tspan>\n</g>',
    );
  });
});

describe("paths", () => {
  it("closes a line only when asked", () => {
    expect(
      linePath([
        [0, 0],
        [1, 0],
        [1, 1],
      ]),
    ).toBe("M0 0L1 0L1 1");
    expect(
      linePath(
        [
          [0, 0],
          [1, 0],
        ],
        true,
      ),
    ).toBe("M0 0L1 0Z");
  });

  it("keeps a soft curve through points of a straight line on that line", () => {
    const numbers =
      softPath([
        [0, 5],
        [2, 5],
        [7, 5],
      ]).match(/-?[\d.]+/g) ?? [];
    expect(numbers.filter((_, k) => k % 2 === 1)).toEqual(Array(7).fill("5"));
  });

  it("leaves out only points within the slack", () => {
    const circle = Array.from({ length: 400 }, (_, k): PagePoint => [Math.cos(k / 64), Math.sin(k / 64)]);
    const fewer = thinned(circle, 0.01);
    expect(fewer.length).toBeLessThan(60);
    expect(fewer[0]).toBe(circle[0]);
    expect(fewer.at(-1)).toBe(circle.at(-1));
    // A chord with a sagitta of the slack spans an arc of 2 acos(1 - slack).
    for (let k = 1; k < fewer.length; k++) {
      const chord = Math.hypot(fewer[k][0] - fewer[k - 1][0], fewer[k][1] - fewer[k - 1][1]);
      expect(chord).toBeLessThan(2 * Math.sin(Math.acos(1 - 0.0102)));
    }
  });
});
