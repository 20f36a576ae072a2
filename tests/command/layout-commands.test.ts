import { afterAll, describe, expect, it } from "vitest";
import { bitwright, temporaryFolder } from "../support/command.ts";

const folder = temporaryFolder();
afterAll(folder.remove);

const deg = Math.PI / 180;
const cutterAt = (radius: number, azimuth: number, more: object = {}) => ({
  radius,
  azimuth,
  height: 0,
  profileAngle: 0,
  backRake: 15 * deg,
  sideRake: 0,
  faceDiameter: 0.01344,
  ...more,
});
/** A flat bit of 60 mm: one cutter over the axis and five outward, covering every radius. */
const flatBit = {
  holeDiameter: 0.06,
  // Without back rake the edge of the inmost cutter passes the axis itself and leaves no core.
  cutters: [0.002, 0.009, 0.014, 0.019, 0.0233, 0.0233].map((radius, k) =>
    cutterAt(radius, (k * 2 * Math.PI) / 6, k === 0 ? { backRake: 0 } : {}),
  ),
};
const rock = { specificEnergy: 60e6, contactStress: 60e6, faceFriction: 18 * deg, flatFriction: 0.3, kappa: 4 };

describe("bitwright engage", () => {
  const layout = folder.file("flat.json", flatBit);

  it("prints volumes in SI that add up to the hole, cutters in input order", () => {
    const { status, out } = bitwright("engage", layout, "--advance", "2mm", "--json");
    expect(status).toBe(0);
    const result = JSON.parse(out);
    expect(result.advance).toBeCloseTo(0.002, 12);
    expect(result.holeArea).toBeCloseTo(Math.PI * 0.03 ** 2, 12);
    expect(result.cutters.map((cutter: { index: number }) => cutter.index)).toEqual([0, 1, 2, 3, 4, 5]);
    const sum = result.cutters.reduce(
      (total: number, one: { volumePerRevolution: number }) => total + one.volumePerRevolution,
      0,
    );
    expect(sum).toBeCloseTo(result.totalVolumePerRevolution, 15);
    expect(result.uncutRings).toEqual([]);
    // 0.02 mm of the outermost cell lies past the reach of the outer cutters.
    expect(result.totalVolumePerRevolution / (result.holeArea * 0.002)).toBeCloseTo(1, 2);
  });

  it("names an uncut ring", () => {
    const holed = folder.file("holed.json", { ...flatBit, cutters: flatBit.cutters.filter((_, k) => k !== 2) });
    const gapped = { holeDiameter: 0.06, cutters: [cutterAt(0.002, 0, { backRake: 0 }), cutterAt(0.0233, 1)] };
    const { out } = bitwright("engage", folder.file("gapped.json", gapped), "--advance", "1 mm", "--json");
    const [ring] = JSON.parse(out).uncutRings;
    expect(ring[0]).toBeGreaterThan(0.008);
    expect(ring[1]).toBeLessThan(0.017);
    expect(bitwright("engage", holed, "--advance", "1 mm").out).toMatch(/Together/);
  });

  it("takes advances in field units", () => {
    const { out } = bitwright("engage", layout, "--advance", "0.08in", "--json");
    expect(JSON.parse(out).advance).toBeCloseTo(0.08 * 0.0254, 12);
  });
});

describe("bitwright drill", () => {
  const layout = folder.file("drill.json", flatBit);
  const rockFile = folder.file("rock.json", rock);

  it("meets the weight and keeps to E = 2T/(a²d) and S = W/(ad)", () => {
    const { status, out } = bitwright("drill", layout, "--rock", rockFile, "--weight", "10kN", "--rpm", "90", "--json");
    expect(status).toBe(0);
    const result = JSON.parse(out);
    const a = 0.03;
    expect(result.weight / 10_000).toBeCloseTo(1, 8);
    expect(result.weightCutting + result.weightContact).toBeCloseTo(result.weight, 6);
    expect(result.rate).toBeCloseTo((result.advance * 90) / 60, 12);
    expect(result.E).toBeCloseTo((2 * result.torque) / (a * a * result.advance), 0);
    expect(result.S).toBeCloseTo(result.weight / (a * result.advance), 0);
    // A sharp bit spends the rock's own specific energy and nothing more (Detournay & Defourny 1992).
    expect(result.E / rock.specificEnergy).toBeCloseTo(1, 2);
    expect(result.cutters).toHaveLength(6);
  });

  it("reads rpm with or without its unit", () => {
    const plain = bitwright("drill", layout, "--rock", rockFile, "--weight", "5kN", "--rpm", "90", "--json").out;
    expect(bitwright("drill", layout, "--rock", rockFile, "--weight", "5kN", "--rpm", "90 rpm", "--json").out).toBe(
      plain,
    );
  });

  it("prints a table a person can read", () => {
    const { out } = bitwright("drill", layout, "--rock", rockFile, "--weight", "2000 lbf", "--rpm", "90");
    expect(out).toMatch(/Weight 2,000 lbf/);
    expect(out).toMatch(/ft\/h/);
    expect(
      bitwright("drill", layout, "--rock", rockFile, "--weight", "9kN", "--rpm", "90", "--units", "metric").out,
    ).toMatch(/9 kN/);
  });
});

describe("bad input on the command line ends in one clear line and status 2", () => {
  const good = folder.file("good.json", flatBit);
  const goodRock = folder.file("good-rock.json", rock);
  const cases: readonly [string, readonly string[], RegExp][] = [
    ["no such file", ["engage", "nowhere.json", "--advance", "2mm"], /nowhere\.json: there is no such file/],
    ["a folder", ["engage", folder.path, "--advance", "2mm"], /this is a folder/],
    ["no JSON", ["engage", folder.file("words.json", "radius 3"), "--advance", "2mm"], /this is not JSON/],
    [
      "no cutters",
      ["engage", folder.file("empty.json", { holeDiameter: 0.1, cutters: [] }), "--advance", "2mm"],
      /cutters: got \[\]/,
    ],
    ["bare advance", ["engage", good, "--advance", "2"], /--advance: got "2" without a unit/],
    [
      "advance of the wrong kind",
      ["engage", good, "--advance", "2 rpm"],
      /--advance: got "2 rpm", which is a rotary speed/,
    ],
    ["negative advance", ["engage", good, "--advance=-2mm"], /--advance.*below zero/],
    ["weight of the wrong kind", ["drill", good, "--rock", goodRock, "--weight", "20 mm", "--rpm", "90"], /--weight/],
    ["no weight", ["drill", good, "--rock", goodRock, "--rpm", "90"], /--weight/],
    ["zero rpm", ["drill", good, "--rock", goodRock, "--weight", "20kN", "--rpm", "0"], /--rpm/],
    [
      "rock without kappa",
      [
        "drill",
        good,
        "--rock",
        folder.file("r.json", { ...rock, kappa: undefined }),
        "--weight",
        "20kN",
        "--rpm",
        "90",
      ],
      /kappa: nothing is given/,
    ],
    [
      "radius as text",
      ["engage", folder.file("t.json", { ...flatBit, cutters: [cutterAt(0, 0, { radius: "3" })] }), "--advance", "2mm"],
      /cutters\[0\]\.radius: got "3"/,
    ],
    ["unknown command", ["steer"], /unknown command/],
    ["unknown units", ["engage", good, "--advance", "2mm", "--units", "imperial"], /--units: got "imperial"/],
  ];
  it.each(cases)("%s", (_, words, line) => {
    const { status, out, err } = bitwright(...words);
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(line);
    expect(err).not.toMatch(/\n\s+at /);
    expect(err.trim().split("\n")).toHaveLength(1);
  });
});
