import {
  CUTTER_CATALOG,
  chamferHeight,
  chamferRake,
  faceHalfHeight,
  faceHalfWidth,
  grooveArea,
  wearFlat,
  wearGrade,
  wornHeightOfFlat,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { degree, mm } from "../support/field-units.ts";

describe("wear flat of a round cutter", () => {
  // wear.R8: exact geometry; the volume also by slicing. A cutter long enough that the flat stays on it.
  it("at 16 mm, 20 degrees, 1 mm worn", () => {
    const flat = wearFlat({ faceDiameter: 16 * mm, length: 8 * mm, wornHeight: 1 * mm, backRake: 20 * degree });
    expectClose(flat.faceAreaLost / mm ** 2, 5.232189, 2e-5);
    expectClose(flat.area / mm ** 2, 15.2979, 2e-5);
    expectClose(flat.volume / mm ** 3, 5.78209, 2e-5);
    expectClose(flat.width / mm, 7.745967, 2e-5);
    expectClose(flat.axialLength / mm, 2.747477, 2e-5);
  });

  // wear.R672: exact geometry.
  it("at 13.44 mm, 20 degrees, 1 mm worn", () => {
    const flat = wearFlat({ faceDiameter: 13.44 * mm, length: 8 * mm, wornHeight: 1 * mm, backRake: 20 * degree });
    expectClose(flat.area / mm ** 2, 13.96841, 2e-5);
    expectClose(flat.volume / mm ** 3, 5.2854, 2e-5);
  });

  // dull.scale: exact geometry of a round cutter, by grade of 0 to 8.
  it("by wear grade", () => {
    const widths = [0, 0.6614378, 0.8660254, 0.9682458, 1, 0.9682458, 0.8660254, 0.6614378, 0];
    const lost = [0, 7.214681, 19.55011, 34.25188, 50, 65.74812, 80.44989, 92.78532, 100];
    const faceDiameter = 13.44 * mm;
    for (let grade = 0; grade <= 8; grade++) {
      const wornHeight = (grade / 8) * faceDiameter;
      const flat = wearFlat({ faceDiameter, length: 60 * mm, wornHeight, backRake: 20 * degree });
      expectClose(flat.width / faceDiameter, widths[grade] ?? Number.NaN, 1e-5);
      expectClose((100 * flat.faceAreaLost) / (Math.PI * (faceDiameter / 2) ** 2), lost[grade] ?? Number.NaN, 1e-5);
      expectClose(wearGrade({ wornHeight, faceDiameter }), grade, 1e-12);
    }
  });

  // dull.from-flat: exact geometry, printed to three figures.
  it("from a caliper on the flat", () => {
    const cases = [
      { diameter: 13.44, width: 8, height: 1.32, grade: 0.79 },
      { diameter: 13.44, width: 10, height: 2.23, grade: 1.33 },
      { diameter: 19.05, width: 10, height: 1.42, grade: 0.6 },
    ];
    for (const { diameter, width, height, grade } of cases) {
      const wornHeight = wornHeightOfFlat({ flatWidth: width * mm, faceDiameter: diameter * mm });
      expectClose(wornHeight / mm, height, 0.01);
      expectClose(wearGrade({ wornHeight, faceDiameter: diameter * mm }), grade, 0.01);
    }
  });
});

// groove.area: exact geometry.
it("groove of one cutter alone", () => {
  for (const [depth, area] of [
    [1, 4.777478],
    [2, 13.19094],
  ] as const) {
    const found = grooveArea({ faceDiameter: 13.44 * mm, depth: depth * mm, backRake: 0 });
    expectClose(found / mm ** 2, area, 2e-5);
  }
});

// layout.face-ellipse: projection of a disc along its travel.
it("face seen along its travel", () => {
  expectClose(faceHalfWidth({ faceDiameter: 13.44 * mm, sideRake: 5 * degree }) / mm, 6.694428, 1e-5);
  expectClose(faceHalfHeight({ faceDiameter: 13.44 * mm, backRake: 20 * degree }) / mm, 6.314734, 1e-5);
});

describe("chamfer", () => {
  // chamfer.height: derived; 45 degree bevel with legs of 0.4 mm.
  it("height of a 45 degree bevel", () => {
    const bevel = { width: 0.4 * mm, angle: 45 * degree };
    expectClose(chamferHeight({ ...bevel, backRake: 15 * degree }) / mm, 0.2828427, 1e-5);
    expectClose(chamferHeight({ ...bevel, backRake: 20 * degree }) / mm, 0.239069, 1e-5);
  });

  // chamfer.zeta: derived; tan of the bevel's rake and the friction angle at the face, 15 and 18 degrees.
  it("ratio of normal to drag on the bevel", () => {
    const rake = chamferRake({ angle: 45 * degree, backRake: 15 * degree });
    expectClose(Math.tan(rake + 18 * degree), 4.7, 0.002);
  });
});

// cutter.size-code: trade custom; real millimetres, never sixteenths of an inch.
it("sizes behind the trade codes", () => {
  const sizes = {
    "1008": [10, 8],
    "1308": [13.44, 8],
    "1313": [13.44, 13.2],
    "1608": [15.88, 8],
    "1613": [15.88, 13.2],
    "1616": [15.88, 16.31],
    "1908": [19.05, 8],
    "1913": [19.05, 13.2],
    "1916": [19.05, 16.31],
    "0808": [8.2, 8],
  } as const;
  expect(CUTTER_CATALOG.map((each) => each.code).sort()).toEqual(Object.keys(sizes).sort());
  for (const each of CUTTER_CATALOG) {
    const [diameter, length] = sizes[each.code as keyof typeof sizes];
    expectClose(each.faceDiameter / mm, diameter, 0.004);
    expectClose(each.length / mm, length, 0.004);
  }
});
