import {
  type BitLayout,
  catalogCutter,
  coverage,
  cutterFrame,
  dot,
  equalAreaRadii,
  generateLayout,
  pocketWalls,
  uncutRings,
  usualRakes,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { degree, inch, mm } from "../support/field-units.ts";
import { turned } from "../support/random-layout.ts";

// layout.equal-area: derived, equal rings of a disc.
it("radii of equal area on a flat face of 47.6 mm", () => {
  const expected = [11.9, 20.6114, 26.6092, 31.4844, 35.7, 39.4678, 42.9061, 46.0885];
  const radii = equalAreaRadii({ radius: 47.6 * mm, cutters: 8 });
  for (const [at, radius] of radii.entries()) expectClose(radius / mm, expected[at] ?? Number.NaN, 1e-5);
});

// layout.face-ellipse: projection of a disc along its travel. The axis across the face stands R cos(side rake) along the
// profile, the deepest point R cos(back rake) below the centre.
it("a tilted face as its pose has it", () => {
  const pose = { radius: 0.05, azimuth: 0.4, height: 0, profileAngle: 0.3, faceDiameter: 13.44 * mm };
  const frame = cutterFrame({ ...pose, backRake: 20 * degree, sideRake: 5 * degree });
  expectClose(6.72 * Math.abs(dot(frame.faceAcross, frame.alongProfile)), 6.694428, 1e-5);
  expectClose(6.72 * dot(frame.faceDown, frame.profileNormal), 6.314734, 1e-5);
});

/** Which of many rings some edge point passes through as the bit turns: a count that knows nothing of intervals. */
function ringsPassed({ holeDiameter, cutters }: BitLayout, rings: number): boolean[] {
  const passed = Array<boolean>(rings).fill(false);
  const width = holeDiameter / 2 / rings;
  for (const cutter of cutters) {
    const { centre, faceAcross: u, faceDown: v } = cutterFrame(cutter);
    const reach = cutter.faceDiameter / 2;
    let last: number | undefined;
    for (let at = 0; at <= 20_000; at++) {
      const phi = (2 * Math.PI * at) / 20_000;
      const [x, y] = [0, 1].map(
        (i) => (centre[i] ?? 0) + reach * (Math.cos(phi) * (u[i] ?? 0) + Math.sin(phi) * (v[i] ?? 0)),
      );
      const ring = Math.floor(Math.hypot(x ?? 0, y ?? 0) / width);
      // An edge passes every ring between two of its points.
      const from = Math.max(0, Math.min(ring, last ?? ring));
      const to = Math.min(rings - 1, Math.max(ring, last ?? ring));
      for (let each = from; each <= to; each++) passed[each] = true;
      last = ring;
    }
  }
  return passed;
}

const usualBit = (holeDiameter: number, wings: number, code: string) =>
  generateLayout({
    holeDiameter,
    profile: { shape: "short parabolic" },
    wings: { wings, cuttersPerWing: 3 },
    cutter: catalogCutter(code),
    rakes: usualRakes(),
    material: "steel",
  });

// Derived: sweeps of tilted circles against plain counting of edge points.
describe("rings that no cutter sweeps", () => {
  it("are none on the usual bits, by counting edge points over 800 rings", () => {
    for (const { layout } of [usualBit(6.125 * inch, 5, "1308"), usualBit(4.75 * inch, 4, "1308")]) {
      expect(ringsPassed(layout, 800).every(Boolean)).toBe(true);
      expect(uncutRings(layout)).toEqual([]);
    }
  });

  it("are where plain counting finds them once cutters are taken out", () => {
    const { layout } = usualBit(6.125 * inch, 5, "1308");
    const gapped = { ...layout, cutters: layout.cutters.filter((_, at) => at !== 0 && at !== 4 && at !== 5) };
    const passed = ringsPassed(gapped, 800);
    const width = layout.holeDiameter / 2 / 800;
    const rings = uncutRings(gapped);
    expect(rings.length).toBe(2);
    for (const [at, ring] of passed.entries()) {
      const middle = (at + 0.5) * width;
      const inside = rings.some(([from, to]) => middle > from && middle < to);
      const atBorder = rings.some((borders) => borders.some((border) => Math.abs(border - middle) <= width));
      if (!atBorder) expect(ring).toBe(!inside);
    }
  });
});

// Common practice of the trade: five wings of three, offset from wing to wing.
describe("five wings of three in a 6 1/8 in hole", () => {
  const { layout, places } = usualBit(6.125 * inch, 5, "1308");

  it("drills to gauge, each radius past the centre under at least one cutter and most under two", () => {
    const { outerRadius, redundancy } = coverage(layout);
    expect(Math.abs(2 * outerRadius - 6.125 * inch)).toBeLessThan(1e-6);
    const twice = redundancy.filter(({ count }) => count >= 2).reduce((sum, { from, to }) => sum + to - from, 0);
    expect(twice / outerRadius).toBeGreaterThan(0.7);
  });

  it("carries no two face cutters at one radius", () => {
    const tips = places.filter(({ role }) => role !== "gauge").map(({ tipRadius }) => tipRadius);
    for (const [at, tip] of tips.entries()) if (at > 0) expect(tip - (tips[at - 1] ?? 0)).toBeGreaterThan(1 * mm);
  });

  it("keeps a millimetre of steel between pockets", () => {
    expect(pocketWalls({ layout, material: "steel" }).findings).toEqual([]);
  });
});

// Derived: nothing that is read off a layout depends on where the bit is turned to.
it("turning the whole bit changes neither coverage nor walls", () => {
  const { layout } = usualBit(6.125 * inch, 5, "1308");
  const [before, after] = [layout, turned(layout, 1.234)].map((of) => ({
    swept: coverage(of).swept,
    walls: pocketWalls({ layout: of, material: "steel" }).walls,
  }));
  for (const [at, { from, to }] of (before?.swept ?? []).entries()) {
    expect(after?.swept[at]?.from).toBeCloseTo(from, 9);
    expect(after?.swept[at]?.to).toBeCloseTo(to, 12);
  }
  expect(after?.walls.length).toBe(before?.walls.length);
  for (const [at, { wall }] of (before?.walls ?? []).entries()) expect(after?.walls[at]?.wall).toBeCloseTo(wall, 8);
});
