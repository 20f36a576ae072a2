import {
  type BitLayout,
  catalogCutter,
  engage,
  generateLayout,
  type PlacedCutter,
  type ProfileShape,
  traceEdges,
  usualRakes,
} from "@bitwright/engine";
import { cutterTableCsv, faceDrawing, profileDrawing } from "@bitwright/shop";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { degree, inch, mm } from "../support/field-units.ts";
import { elementsWhere, type XmlElement, xmlTree } from "../support/xml-tree.ts";
import { expectGolden } from "./golden-file.ts";
import { inventedBit, inventedTitle } from "./invented-bit.ts";

const ADVANCE = 1.5 * mm;
const trace = traceEdges(inventedBit, { cells: 240 });
const engagement = engage(trace, ADVANCE);
const common = { title: inventedTitle, units: "field" } as const;
const face = faceDrawing({ layout: inventedBit, ports: { count: 4, diameter: 11 * mm }, ...common });
const profile = profileDrawing({ trace, engagement, ...common });
const drawings = { face, profile };

type Point = readonly [number, number];

const byClass = (svg: string | XmlElement, name: string) =>
  elementsWhere(typeof svg === "string" ? xmlTree(svg) : svg, ({ attributes }) => attributes.class === name);
const textsIn = (root: XmlElement) => elementsWhere(root, ({ name }) => name === "text");
const numbersIn = (text: string) => [...text.matchAll(/-?\d+(\.\d+)?/g)].map(([number]) => Number(number));

/** Corners of a path of straight lines. */
function corners(d: string): Point[] {
  const numbers = numbersIn(d);
  return Array.from({ length: numbers.length / 2 }, (_, k): Point => [numbers[2 * k], numbers[2 * k + 1]]);
}

function enclosedArea(points: readonly Point[]): number {
  let twice = 0;
  points.forEach(([x, y], k) => {
    const [nextX, nextY] = points[(k + 1) % points.length];
    twice += x * nextY - nextX * y;
  });
  return Math.abs(twice) / 2;
}

/** Scale as the title block says it: `2 : 1`. */
function scaleOf(svg: string): number {
  const [scale] = textsIn(byClass(svg, "title-block")[0]).flatMap(({ text }) => /^(\d+) : (\d+)$/.exec(text) ?? []);
  const [paper, thing] = numbersIn(scale);
  return paper / thing;
}

/** Lower and upper end of each upright cut through a closed path. */
function stretchAt(points: readonly Point[], x: number): Point | undefined {
  const ys: number[] = [];
  points.forEach(([x0, y0], k) => {
    const [x1, y1] = points[(k + 1) % points.length];
    if (x0 < x !== x1 < x) ys.push(y0 + ((x - x0) / (x1 - x0)) * (y1 - y0));
  });
  return ys.length === 2 ? [Math.min(...ys), Math.max(...ys)] : undefined;
}

/** Holds centred labels to not touching, their widths reckoned at six tenths of the size for each figure. */
function expectApart(labels: readonly XmlElement[]): void {
  const boxes = labels.map(({ text, attributes }) => {
    const size = Number(attributes["font-size"]);
    return { x: Number(attributes.x), y: Number(attributes.y), width: 0.6 * size * text.length, height: 0.75 * size };
  });
  boxes.forEach((one, k) => {
    for (const other of boxes.slice(k + 1)) {
      const apart =
        Math.abs(one.x - other.x) >= (one.width + other.width) / 2 ||
        Math.abs(one.y - other.y) >= Math.max(one.height, other.height);
      expect(apart, `numbers at ${one.x}, ${one.y} and ${other.x}, ${other.y}`).toBe(true);
    }
  });
}

function cutter(pose: Partial<PlacedCutter>): PlacedCutter {
  return { ...inventedBit.cutters[0], azimuth: 0, height: 0, profileAngle: 0, backRake: 0, sideRake: 0, ...pose };
}

const oneCutter = (pose: Partial<PlacedCutter>): BitLayout => ({ holeDiameter: 0.12, cutters: [cutter(pose)] });

describe("the drawings of the invented bit", () => {
  it("are the pictures last looked at", () => {
    expectGolden("invented-bit.face.svg", face);
    expectGolden("invented-bit.profile.svg", profile);
    const perCutter = { areaOfCut: engagement.area, volumePerRevolution: engagement.volume };
    expectGolden("invented-bit.cutters.csv", cutterTableCsv({ layout: inventedBit, units: "metric", perCutter }));
  });

  it("come out the same every time", () => {
    expect(faceDrawing({ layout: inventedBit, ports: { count: 4, diameter: 11 * mm }, ...common })).toBe(face);
    expect(profileDrawing({ trace, engagement, ...common })).toBe(profile);
  });
});

describe.each(Object.entries(drawings))("the %s drawing", (_, svg) => {
  const root = xmlTree(svg);

  it("is well formed, has no doubled id, and every reference finds its id", () => {
    const ids = elementsWhere(root, ({ attributes }) => "id" in attributes).map(({ attributes }) => attributes.id);
    expect(new Set(ids).size).toBe(ids.length);
    const references = [...svg.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id);
    const named = root.attributes["aria-labelledby"].split(" ");
    for (const id of [...references, ...named]) expect(ids).toContain(id);
    expect(root.attributes.role).toBe("img");
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it("keeps what a person typed as text", () => {
    expect(elementsWhere(root, ({ name }) => name === "north")).toEqual([]);
    expect(textsIn(root).map(({ text }) => text)).toContain(inventedTitle.job);
  });

  it("names every cutter once", () => {
    const labels = byClass(root, "cutter-number").flatMap(textsIn);
    expect(labels.map(({ text }) => Number(text)).sort((a, b) => a - b)).toEqual(
      inventedBit.cutters.map((_, k) => k + 1),
    );
  });

  it("sets no number over another", () => {
    expectApart(byClass(root, "cutter-number").flatMap(textsIn));
  });

  it("sets nothing smaller than 2.5 mm", () => {
    for (const { attributes } of textsIn(root)) expect(Number(attributes["font-size"])).toBeGreaterThanOrEqual(2.5);
  });

  it("uses no colour but blue, orange and near-greys", () => {
    for (const [, red, green, blue] of svg.matchAll(/#(\w\w)(\w\w)(\w\w)\b/g)) {
      const [r, g, b] = [red, green, blue].map((part) => Number.parseInt(part, 16));
      const spread = Math.max(r, g, b) - Math.min(r, g, b);
      const isBlue = b >= g && g >= r;
      const isOrange = r >= g && g >= b;
      expect(spread <= 20 || isBlue || isOrange, `#${red}${green}${blue}`).toBe(true);
    }
  });

  it("carries job, bit, hole in both units, view, scale, program, sheet and a place to sign", () => {
    const texts = textsIn(byClass(root, "title-block")[0]).map(({ text }) => text);
    for (const text of [inventedTitle.bit, "4 3/4 in (120.65 mm)", "Bitwright 0.0.0", "1 of 2", "checked by, date"]) {
      expect(texts).toContain(text);
    }
  });

  it("has a check bar of 100 mm on paper and bars in mm and inches", () => {
    expect(root.attributes).toMatchObject({ width: "210mm", height: "279mm", viewBox: "0 0 210 279" });
    const [bar] = elementsWhere(byClass(root, "check-bar")[0], ({ name }) => name === "path");
    const ys = corners(bar.attributes.d).map(([, y]) => y);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(100, 3);
    const bars = byClass(root, "scale-bars")[0].children;
    for (const [k, unit] of [mm, 25.4 * mm].entries()) {
      const boxes = elementsWhere(bars[k], ({ name }) => name === "rect");
      const length = boxes.reduce((sum, { attributes }) => sum + Number(attributes.width), 0);
      const [, marked] = textsIn(bars[k]);
      expectClose(length / 1000 / scaleOf(svg), numbersIn(marked.text)[0] * unit, 1e-3);
    }
  });
});

describe("drawings of generated bits", () => {
  const bits: [string, number, number, string, ProfileShape][] = [
    ["3 in, three wings, steps", 3, 3, "1008", "step"],
    ["6 1/8 in, five wings", 6.125, 5, "1308", "short parabolic"],
    ["8 1/2 in, six wings", 8.5, 6, "1308", "medium parabolic"],
    ["12 in, six wings, flat", 12, 6, "1608", "flat"],
  ];

  it.each(bits)("%s: every number once, none over another, nothing off the sheet", (_, inches, wings, code, shape) => {
    const { layout, profile: line } = generateLayout({
      holeDiameter: inches * inch,
      profile: { shape },
      wings: { wings },
      cutter: catalogCutter(code),
      rakes: usualRakes(),
      material: "matrix",
    });
    const laid = traceEdges(layout, { cells: 200 });
    const svgs = [
      faceDrawing({ layout, ports: { count: wings, diameter: 0.5 * inch }, ...common }),
      profileDrawing({ trace: laid, engagement: engage(laid, 0.8 * mm), profile: line, ...common }),
    ];
    for (const svg of svgs) {
      const tree = xmlTree(svg);
      const labels = byClass(tree, "cutter-number").flatMap(textsIn);
      expect(labels.map(({ text }) => Number(text)).sort((a, b) => a - b)).toEqual(
        layout.cutters.map((__, k) => k + 1),
      );
      expectApart(labels);
      for (const { attributes, text } of textsIn(tree)) {
        expect(Number(attributes.x), text).toBeGreaterThan(8);
        expect(Number(attributes.x), text).toBeLessThan(202);
        expect(Number(attributes.y), text).toBeGreaterThan(8);
        expect(Number(attributes.y), text).toBeLessThan(271);
      }
      for (const { attributes } of elementsWhere(
        tree,
        ({ name, attributes: { d } }) => name === "path" && !/[AC]/.test(d),
      )) {
        for (const [x, y] of corners(attributes.d)) {
          expect(x >= 8 && x <= 202 && y >= 8 && y <= 271, `${x}, ${y}`).toBe(true);
        }
      }
    }
    const zones = byClass(svgs[1], "zone")
      .flatMap(textsIn)
      .map(({ text }) => text);
    expect(zones).toContain("nose");
  });
});

describe("the face drawing", () => {
  const root = xmlTree(face);
  const hole = byClass(root, "hole")[0].children.find(({ name }) => name === "circle")?.attributes ?? {};
  const [cx, cy] = [Number(hole.cx), Number(hole.cy)];
  const scale = scaleOf(face);
  const faceOf = (k: number) => {
    const marks = elementsWhere(root, ({ attributes }) => attributes["data-cutter"] === String(k + 1));
    expect(marks).toHaveLength(1);
    return byClass(marks[0], "face")[0].attributes.d;
  };

  it("draws the hole at the scale it names", () => {
    expectClose(Number(hole.r), (scale * inventedBit.holeDiameter) / 2 / mm, 1e-4);
  });

  it("shows each face as the ellipse of a tilted disc: half axes R and R |n_z|, at its place, azimuth counter-clockwise", () => {
    inventedBit.cutters.forEach((placed, k) => {
      const [x0, y0, rx, ry, , , , x1, y1] = numbersIn(faceOf(k));
      const { backRake, sideRake, profileAngle, faceDiameter, radius, azimuth } = placed;
      // The part of the face normal along the bit axis, from the pose in docs/nomenclature.md.
      const along =
        Math.sin(backRake) * Math.cos(profileAngle) - Math.cos(backRake) * Math.sin(sideRake) * Math.sin(profileAngle);
      const faceRadius = (scale * faceDiameter) / 2 / mm;
      expect(rx).toBeCloseTo(faceRadius, 2);
      expect(ry).toBeCloseTo(faceRadius * Math.abs(along), 2);
      expect((x0 + x1) / 2).toBeCloseTo(cx + (scale * radius * Math.cos(azimuth)) / mm, 2);
      expect((y0 + y1) / 2).toBeCloseTo(cy - (scale * radius * Math.sin(azimuth)) / mm, 2);
    });
  });

  it("puts the cylinder behind its face, against the sense of rotation", () => {
    const marks = elementsWhere(root, ({ attributes }) => attributes["data-cutter"] !== undefined);
    for (const mark of marks) {
      const placed = inventedBit.cutters[Number(mark.attributes["data-cutter"]) - 1];
      const middle = (name: string) => {
        const [x0, y0, , , , , , x1, y1] = numbersIn(byClass(mark, name)[0].attributes.d);
        return [(x0 + x1) / 2, (y0 + y1) / 2];
      };
      const [bx, by] = middle("back");
      const [fx, fy] = middle("face");
      const travel = [-Math.sin(placed.azimuth), -Math.cos(placed.azimuth)];
      expect((fx - bx) * travel[0] + (fy - by) * travel[1]).toBeGreaterThan(0.5 * scale * (placed.length / mm));
    }
  });

  it("shows the wings it knows and none it does not", () => {
    const wings = (svg: string) => elementsWhere(xmlTree(svg), ({ attributes }) => "data-wing" in attributes).length;
    expect(wings(face)).toBe(4);
    const unknown = { ...inventedBit, cutters: inventedBit.cutters.map((placed) => ({ ...placed, wing: 0 })) };
    const svg = faceDrawing({ layout: unknown, ports: { count: 3, diameter: 10 * mm }, ...common });
    expect(wings(svg)).toBe(0);
    expect(svg).toMatch(/wings not known; 3 ports of .*place not known/);
  });

  it("draws every port at its size, clear of cutters and of each other", () => {
    const ports = byClass(root, "port").map(({ children }) => children[0].attributes);
    expect(ports).toHaveLength(4);
    const places = ports.map(({ cx: x, cy: y }): Point => [Number(x), Number(y)]);
    places.forEach(([x, y], k) => {
      expect(Number(ports[k].r)).toBeCloseTo((scale * 11) / 2, 3);
      for (const [ox, oy] of places.slice(k + 1)) expect(Math.hypot(x - ox, y - oy)).toBeGreaterThan(11 * scale);
      for (const { radius, azimuth } of inventedBit.cutters) {
        const away = Math.hypot(
          x - cx - (scale * radius * Math.cos(azimuth)) / mm,
          y - cy + (scale * radius * Math.sin(azimuth)) / mm,
        );
        expect(away).toBeGreaterThan((11 / 2 + 13.44 / 2) * scale);
      }
    });
  });

  it("cuts the worn part off a face along a chord", () => {
    const worn = faceDrawing({
      layout: oneCutter({ radius: 0.03, backRake: 20 * degree, wornHeight: 2 * mm }),
      ...common,
    });
    const [x0, y0, , , , , , x1, y1] = numbersIn(byClass(worn, "face")[0].attributes.d);
    // Chord at R - h from the centre: half-length sqrt(R² - (R - h)²), level and at right angles to travel.
    const chord = 2 * Math.sqrt(6.72 ** 2 - 4.72 ** 2) * scaleOf(worn);
    expect(Math.hypot(x1 - x0, y1 - y0)).toBeCloseTo(chord, 2);
  });

  it("draws a bit without cutters as an empty hole", () => {
    expect(byClass(faceDrawing({ layout: { ...inventedBit, cutters: [] }, ...common }), "cutter-number")).toEqual([]);
  });
});

describe("the profile drawing", () => {
  const root = xmlTree(profile);
  const scale = scaleOf(profile);
  const crescents = byClass(root, "crescent");
  const areaByCutter = (paths: readonly XmlElement[]) =>
    inventedBit.cutters.map((_, k) =>
      paths
        .filter(({ attributes }) => attributes["data-cutter"] === String(k + 1))
        .reduce((sum, { attributes }) => sum + enclosedArea(corners(attributes.d)), 0),
    );
  const total = engagement.area.reduce((sum, area) => sum + area, 0);

  it("fills crescents of the area that the engagement gives each cutter, within 1 %", () => {
    areaByCutter(crescents).forEach((drawn, k) => {
      const wanted = engagement.area[k] / mm ** 2;
      expect(Math.abs(drawn / scale ** 2 - wanted)).toBeLessThan(Math.max(0.01 * wanted, (1e-4 * total) / mm ** 2));
    });
  });

  it("lays the same areas flat, stretched as it says", () => {
    const [, stretch] = /depth × (\d+)/.exec(profile) ?? [];
    expect(Number(stretch)).toBeGreaterThan(1);
    areaByCutter(byClass(root, "layer")).forEach((drawn, k) => {
      const wanted = engagement.area[k] / mm ** 2;
      const got = drawn / (scale ** 2 * Number(stretch));
      expect(Math.abs(got - wanted)).toBeLessThan(Math.max(0.01 * wanted, (1e-4 * total) / mm ** 2));
    });
  });

  it("nests the crescents: at every radius they lie end to end and together take one advance", () => {
    const shapes = crescents.map(({ attributes }) => corners(attributes.d));
    const left = Math.min(
      ...byClass(root, "rock")
        .flatMap(({ attributes }) => corners(attributes.d))
        .map(([x]) => x),
    );
    // Looked at in the middles of cells: between them a crescent may end half a cell early or late.
    const radii = [...trace.cellRadius].map((radius) => radius / mm).filter((radius) => radius > 4 && radius < 58);
    for (const radius of radii) {
      const stretches = shapes
        .flatMap((points) => [stretchAt(points, left + radius * scale)].filter((stretch) => stretch !== undefined))
        .sort((a, b) => a[0] - b[0]);
      const taken = stretches.reduce((sum, [from, to]) => sum + to - from, 0) / scale;
      expect(Math.abs(taken - ADVANCE / mm)).toBeLessThan(0.02);
      for (let k = 1; k < stretches.length; k++) {
        expect(Math.abs(stretches[k][0] - stretches[k - 1][1]) / scale).toBeLessThan(0.02);
      }
    }
  });

  it("turns a tilted face into an ellipse R cos(back rake) high and R cos(side rake) wide at the middle", () => {
    // Case layout.face-ellipse: R 6.72 mm, back rake 20°, side rake 5° give 6.694428 and 6.314734 mm (derived).
    const layout = oneCutter({ radius: 0.05, backRake: 20 * degree, sideRake: 5 * degree });
    const svg = profileDrawing({ trace: traceEdges(layout, { cells: 60 }), ...common });
    const points = corners(byClass(svg, "face")[0].attributes.d);
    const ys = points.map(([, y]) => y);
    const drawnScale = scaleOf(svg);
    const halfHeight = (Math.max(...ys) - Math.min(...ys)) / 2 / drawnScale;
    expectClose(halfHeight, 6.314734, 5e-4);
    const middle = (Math.max(...ys) + Math.min(...ys)) / 2;
    const turned = points.map(([x, y]): Point => [y, x]);
    const [from, to] = stretchAt(turned, middle) ?? [0, 0];
    // Turning the face about the axis pulls its two ends in by far less than the paper shows.
    expectClose((to - from) / 2 / drawnScale, 6.694428, 1e-3);
  });

  it("grinds the outlines to the gauge", () => {
    const left = Math.min(
      ...byClass(root, "rock")
        .flatMap(({ attributes }) => corners(attributes.d))
        .map(([x]) => x),
    );
    const farthest = Math.max(
      ...byClass(root, "face")
        .flatMap(({ attributes }) => corners(attributes.d))
        .map(([x]) => x),
    );
    expectClose((farthest - left) / scale, inventedBit.holeDiameter / 2 / mm, 1e-4);
  });

  it("hatches and names every ring that no cutter sweeps", () => {
    const gap = { ...inventedBit, cutters: inventedBit.cutters.filter((_, k) => k !== 1 && k !== 2) };
    const gapTrace = traceEdges(gap, { cells: 240 });
    const svg = profileDrawing({
      trace: gapTrace,
      engagement: engage(gapTrace, ADVANCE),
      title: inventedTitle,
      units: "metric",
    });
    const rings = byClass(svg, "uncut").map(({ attributes }) => Number(attributes.width) / scaleOf(svg));
    // Cutter 1 reaches out to about 8 + 6.72 mm, cutter 4 in to about 32.5 - 6.72 mm.
    expect(rings.some((width) => Math.abs(width - 11) < 0.6)).toBe(true);
    expect(svg).toMatch(/Hatched, no cutter sweeps it: core to 1\.\d+ mm radius; 14\.\d mm to 25\.\d mm radius/);
  });

  it("tells shares that add up, for whatever is shared out", () => {
    const shares = (svg: string) => byClass(svg, "share").map((bar) => Number(textsIn(bar)[1].text));
    expect(Math.abs(shares(profile).reduce((sum, share) => sum + share, 0) - 100)).toBeLessThan(1.5);
    const perCutter = inventedBit.cutters.map((_, k) => (k === 3 ? 30 : k === 4 ? 10 : 0));
    const work = profileDrawing({ trace, engagement, share: { of: "work", perCutter }, ...common });
    expect(shares(work).filter((share) => share > 0)).toEqual([75, 25]);
    expect(work).toContain("Share by cutter, in %: work");
    expect(() => profileDrawing({ trace, engagement, share: { of: "work", perCutter: [1] }, ...common })).toThrow(
      /12 cutters/,
    );
  });

  it("draws the cutters alone where nothing is cut", () => {
    const alone = profileDrawing({ trace, ...common });
    expect(byClass(alone, "crescent")).toEqual([]);
    expect(byClass(alone, "face")).toHaveLength(12);
  });
});
