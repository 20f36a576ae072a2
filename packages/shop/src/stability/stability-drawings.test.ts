import { exposure, scaledBit, stabilityReview, steadySpeeds, stringMode, traceEdges } from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { mm, rpm } from "../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { sandstoneLike } from "../../../../tests/support/rock-responses.ts";
import { elementsWhere, type XmlElement, xmlTree } from "../../../../tests/support/xml-tree.ts";
import { rangeFromZero } from "../chart/index.ts";
import { crossingDrawing, sideForceDrawing, speedsDrawing, stickSlipDrawing } from "./index.ts";

const layout = profiledBit();
const soft = {
  name: "soft <shale> & clay",
  response: { ...sandstoneLike, specificEnergy: 15e6, contactStress: 15e6 },
};
const review = stabilityReview({
  trace: traceEdges(layout, { cells: 200 }),
  bed: soft,
  crossings: [{ from: soft, to: { name: "sandstone", response: sandstoneLike }, weight: 9000 }],
  weight: 9000,
  rotarySpeed: 60 * rpm,
  body: { exposure: exposure({ layout }).cutters.map(({ alongNormal }) => alongNormal), wingThickness: 16 * mm },
  string: {
    sections: [
      { outerDiameter: 0.15, bore: 0.06, length: 60, linearWeight: 1200 },
      { outerDiameter: 0.0889, bore: 0.07, length: 600, linearWeight: 194 },
    ],
  },
});
const string = review.string;
if (!string) throw new Error("the review has no string");
const speeds = steadySpeeds({
  bit: string.scaled,
  weight: 9000,
  slowestSpeed: 40 * rpm,
  fastestSpeed: 140 * rpm,
  twistDamping: string.twistDamping,
});
const title = { job: 'Well <1> & "2"', bit: "a bit", hole: "6 1/8 in", program: "Bitwright 0.0.0" };
const common = { title, units: "field" } as const;
const bed = "soft <shale> & clay";
const forces = { x: review.loads.lateralX, y: review.loads.lateralY };
const [crossed] = review.crossings;
const running = { rotarySpeed: 60 * rpm, weight: 9000, bed };
const sheets = {
  side: sideForceDrawing({ layout, imbalance: review.imbalance, cutterForces: forces, bed, ...common }),
  crossing: crossingDrawing({ crossed, ...common }),
  speeds: speedsDrawing({ string, speeds, ...running, ...common }),
  march: stickSlipDrawing({ march: string.march, scaled: string.scaled, ...running, ...common }),
  marchMetric: stickSlipDrawing({ march: string.march, scaled: string.scaled, ...running, title, units: "metric" }),
};

const byClass = (svg: string, name: string) =>
  elementsWhere(xmlTree(svg), ({ attributes }) => attributes.class === name);
const textsIn = (root: XmlElement) => elementsWhere(root, ({ name }) => name === "text");
function corners(d: string): [number, number][] {
  const numbers = [...d.matchAll(/-?\d+(\.\d+)?/g)].map(([number]) => Number(number));
  return Array.from({ length: numbers.length / 2 }, (_, k) => [numbers[2 * k], numbers[2 * k + 1]]);
}

describe("sheets of stability", () => {
  it.each(Object.entries(sheets))("%s: well formed, nothing off the sheet", (_, svg) => {
    const root = xmlTree(svg);
    expect(root.attributes).toMatchObject({ width: "210mm", height: "279mm" });
    for (const { attributes, text } of textsIn(root)) {
      expect(Number(attributes.x), text).toBeGreaterThan(8);
      expect(Number(attributes.x), text).toBeLessThan(202);
      expect(Number(attributes.y), text).toBeGreaterThan(8);
      expect(Number(attributes.y), text).toBeLessThan(271);
      expect(Number(attributes["font-size"]), text).toBeGreaterThan(1.5);
    }
    for (const { attributes } of elementsWhere(
      root,
      ({ name, attributes: { d } }) => name === "path" && !/[AC]/.test(d),
    )) {
      for (const [x, y] of corners(attributes.d))
        expect(x >= 8 && x <= 202 && y >= 8 && y <= 271, `${x}, ${y}`).toBe(true);
    }
  });

  it("points the arrow where the force points, azimuth counter-clockwise, made of its two parts", () => {
    const { whole, drag } = review.imbalance;
    const shaft = (name: string) => {
      const [arrow] = byClass(sheets.side, name);
      const [line, head] = arrow.children;
      return { from: corners(line.attributes.d)[0], to: corners(head.attributes.d)[0] };
    };
    const sum = shaft("side-force");
    const part = shaft("drag-part");
    const radial = shaft("radial-part");
    const azimuth = ({ from, to }: typeof sum) => Math.atan2(from[1] - to[1], to[0] - from[0]);
    const apart = (a: number, b: number) => Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)));
    expect(apart(azimuth(sum), whole.azimuth)).toBeLessThan(1e-3);
    expect(apart(azimuth(part), drag.azimuth)).toBeLessThan(1e-3);
    expect(part.from).toEqual(sum.from);
    expect(radial.from).toEqual(part.to);
    expect(radial.to).toEqual(sum.to);
    const size = ({ from, to }: typeof sum) => Math.hypot(to[0] - from[0], to[1] - from[1]);
    expect(Math.abs(size(sum) / size(part) / (whole.force / drag.force) - 1)).toBeLessThan(1e-3);
    expect(byClass(sheets.side, "cutter-number")).toHaveLength(15);
    expect(sheets.side).toContain(review.imbalance.direction?.words);
  });

  it("draws the crossing in proportion: the line of weight from the old bed's to the new bed's", () => {
    const [line] = byClass(sheets.crossing, "weight");
    const points = corners(line.attributes.d);
    const [frame] = elementsWhere(
      xmlTree(sheets.crossing),
      ({ name, attributes }) => name === "rect" && attributes.fill === "none" && Number(attributes.width) < 180,
    );
    const bottom = Number(frame.attributes.y) + Number(frame.attributes.height);
    const up = ([, y]: readonly [number, number]) => bottom - y;
    const { curve } = crossed.crossing;
    const drawn = up(points[points.length - 1]) / up(points[0]);
    const computed = curve[curve.length - 1].heldAdvance.weight / curve[0].heldAdvance.weight;
    expect(Math.abs(drawn / computed - 1)).toBeLessThan(0.01);
    expect(points[0][0]).toBeCloseTo(Number(frame.attributes.x), 2);
    expect(points[points.length - 1][0]).toBeCloseTo(Number(frame.attributes.x) + Number(frame.attributes.width), 2);
  });

  it("has a column for each speed tried, with what became of the bit", () => {
    const columns = byClass(sheets.speeds, "speed-tried");
    const { tried } = speeds;
    expect(columns).toHaveLength(tried.length);
    const letters = {
      steady: "S",
      "axial vibration": "A",
      "torsional vibration": "T",
      "bit bounce": "B",
      "stick-slip": "X",
    };
    expect(columns.map((column) => textsIn(column)[0].text)).toEqual(tried.map(({ regime }) => letters[regime]));
  });

  it("says what became of the bit in words, and keeps a negative torque on the sheet", () => {
    expect(sheets.march).toContain("march in time");
    const mode = stringMode([{ outerDiameter: 0.0889, bore: 0.07, length: 600, linearWeight: 194 }]);
    const scaled = scaledBit(mode, {
      wings: 5,
      weightSlope: 9e5,
      torqueSlope: 6e4,
      contactWeight: 0,
      contactTorque: 0,
    });
    const few = steadySpeeds({
      bit: scaled,
      weight: 9000,
      slowestSpeed: 4,
      fastestSpeed: 5,
      count: 2,
      scaledDuration: 20,
    });
    const drawn = speedsDrawing({ string, speeds: few, ...running, ...common });
    expect(byClass(drawn, "speed-tried")).toHaveLength(2);
    expect(rangeFromZero([-3, 8])).toEqual({ from: -5, to: 10 });
    expect(rangeFromZero([])).toEqual({ from: 0, to: 1 });
  });

  it("refuses speeds too few to draw", () => {
    const one = { ...speeds, tried: speeds.tried.slice(0, 1) };
    expect(() => speedsDrawing({ string, speeds: one, ...running, ...common })).toThrow(
      "speeds to draw must be two at least, got 1",
    );
  });
});
