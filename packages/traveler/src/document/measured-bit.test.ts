import { describe, expect, it } from "vitest";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "./parse-traveler.ts";

const degree = Math.PI / 180;

function bench(measured: object) {
  const inquiry = { ...soundTraveler().inquiry, bitHole: "open hole" };
  const read = parseTraveler({ ...soundTraveler(), inquiry, bit: { measured } });
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  const { bit } = read.resolved;
  if (bit.kind !== "measured") throw new Error("a measured bit was expected");
  return { bit, cutters: bit.cutters, assumed: read.assumed.map(({ field, text }) => [field, text]) };
}

const units = { length: "mm", angle: "deg" };

describe("an as-measured bit", () => {
  it("takes numbers in the unit of the table and quantities in their own", () => {
    const { cutters, assumed } = bench({
      units,
      rows: [
        {
          radius: 20,
          azimuth: 30,
          height: -1.5,
          backRake: 15,
          sideRake: 5,
          cutter: "1308",
          wing: 2,
          wornHeight: "1/32 in",
        },
        {
          radius: "1 1/2 in",
          azimuth: "2 rad",
          height: 0,
          backRake: "20 deg",
          sideRake: 0,
          faceDiameter: 13.3,
          length: 8,
        },
      ],
    });
    expect(cutters[0]).toEqual({
      radius: expect.closeTo(0.02, 12),
      azimuth: expect.closeTo(30 * degree, 12),
      height: expect.closeTo(-0.0015, 12),
      backRake: expect.closeTo(15 * degree, 12),
      sideRake: expect.closeTo(5 * degree, 12),
      faceDiameter: expect.closeTo(0.01344, 12),
      length: expect.closeTo(0.008, 12),
      wing: 2,
      wornHeight: expect.closeTo(0.0254 / 32, 12),
    });
    expect(cutters[1]).toMatchObject({ azimuth: 2, faceDiameter: expect.closeTo(0.0133, 12), wornHeight: 0 });
    expect(cutters[1]?.radius).toBeCloseTo(0.0381, 12);
    expect(assumed).toEqual([]);
  });

  it("reads the same from CSV, with units in the header, comments, and either decimal mark", () => {
    const rows = [
      { radius: 20.5, azimuth: 0, height: 0, backRake: 15, sideRake: 0, cutter: "1308" },
      { radius: 35.25, azimuth: 120, height: -2.125, backRake: 18, sideRake: 2, cutter: "1308" },
    ];
    const { cutters } = bench({ units, rows });
    const english =
      "# bench of Monday\nradius (mm),azimuth [deg],height (mm),Back Rake (deg),side_rake,cutter\n20.5,0,0,15,0,1308\n35.25,120,-2.125,18,2,1308\n";
    const other = "radius;azimuth;height;backRake;sideRake;cutter\n20,5;0;0;15;0;1308\n35,25;120;-2,125;18;2;1308";
    expect(bench({ csv: english }).cutters).toEqual(cutters);
    expect(bench({ units, csv: other }).cutters).toEqual(cutters);
  });

  it("names what it assumed of a table without units and without side rakes", () => {
    const { assumed } = bench({ rows: [{ radius: 20, azimuth: 0, height: 0, backRake: 15, cutter: "1308" }] });
    expect(assumed).toEqual([
      ["bit.measured.units.length", "mm"],
      ["bit.measured.units.angle", "deg"],
      ["bit.measured.rows.sideRake", "0 deg"],
    ]);
  });

  it("gives the cutters of the whole table what they have in common", () => {
    const row = { azimuth: 0, height: 0, backRake: 15, sideRake: 0 };
    const { bit, cutters } = bench({
      units,
      cutter: "1608",
      chamferWidth: "0.4 mm",
      chamferAngle: "45 deg",
      maker: "no marks",
      body: "steel",
      ports: { count: 3, diameter: "7/16 in" },
      rows: [
        { ...row, radius: 20 },
        { ...row, radius: 40, chamferWidth: 0.3 },
      ],
    });
    for (const { faceDiameter } of cutters) expect(faceDiameter).toBeCloseTo(0.01588, 12);
    expect(cutters[0]?.chamferWidth).toBeCloseTo(0.4e-3, 12);
    expect(cutters[1]?.chamferWidth).toBeCloseTo(0.3e-3, 12);
    expect(cutters[1]?.chamferAngle).toBeCloseTo(45 * degree, 12);
    expect(bit).toMatchObject({ maker: "no marks", body: "steel", ports: { count: 3 } });
    expect(bit.diameter).toBeCloseTo(6.125 * 0.0254, 12);
  });

  it("may be worn under the hole it drilled, but not by more than a quarter inch", () => {
    const rows = [{ radius: 20, azimuth: 0, height: 0, backRake: 15, cutter: "1308" }];
    expect(bench({ diameter: "6 in", rows }).bit.diameter).toBeCloseTo(6 * 0.0254, 12);
    const read = parseTraveler({ ...soundTraveler(), bit: { measured: { diameter: "5 3/4 in", rows } } });
    expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(["bit.measured.diameter"]);
  });

  it("says each wrong cell once, by its row", () => {
    const csv = "radius,azimuth,height,backRake,cutter\n20,0,0,15,1308\n-5,90,0,15,9999\n";
    const read = parseTraveler({ ...soundTraveler(), bit: { measured: { csv } } });
    expect(read.ok ? [] : read.problems.map(({ field, got }) => [field, got])).toEqual([
      ["bit.measured.csv row 2 cutter", '"9999"'],
      ["bit.measured.csv row 2 radius", '"-5 mm"'],
    ]);
  });
});
