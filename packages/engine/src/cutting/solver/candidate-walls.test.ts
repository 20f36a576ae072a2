import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plannedBit, pocketWalls, sweptAzimuth } from "../../bit/index.ts";
import { catalogCutter } from "../../cutter/index.ts";
import { cylinderDistance } from "../../geometry/index.ts";
import { axisDistance } from "./axis-distance.ts";
import { type Candidate, copied, facesOf, planOf } from "./candidate.ts";
import { wallShortfalls } from "./candidate-walls.ts";
import { drawnMove } from "./moves.ts";
import { randomSource } from "./random-source.ts";
import { type SolverSetting, solverSetting } from "./solver-setting.ts";

const setting = solverSetting({
  spec: {
    holeDiameter: 4.75 * 0.0254,
    profile: { shape: "short parabolic" },
    wings: { wings: 4, cuttersPerWing: 3 },
    cutter: catalogCutter("1308"),
    rakes: { kind: "even", centre: { backRake: 0.17, sideRake: 0.1 }, gauge: { backRake: 0.25, sideRake: 0.15 } },
    material: "matrix",
  },
});

function standing({ stock, holeRadius }: SolverSetting, candidate: Candidate) {
  const faces = facesOf(candidate, stock);
  const azimuths = Float64Array.from(faces, ({ pose }, at) =>
    sweptAzimuth({
      wingAngle: candidate.wingAngles[candidate.wing[at]],
      sweep: candidate.sweep,
      radiusShare: pose.radius / holeRadius,
    }),
  );
  return { faces, azimuths };
}

describe("wallShortfalls", () => {
  it("finds what pocketWalls finds on the placed bit, pair after pair of a random walk, moved cutters only", () => {
    const random = randomSource({ seed: 2, row: 0 });
    let candidate = setting.start;
    let walls = wallShortfalls(setting, standing(setting, candidate));
    let thin = 0;
    for (let step = 0; step < 120; step++) {
      const next = copied(candidate);
      const moved = drawnMove(random)(next, setting, random);
      if (!moved) continue;
      candidate = next;
      walls = wallShortfalls(setting, { ...standing(setting, candidate), from: { walls, moved } });
      const { layout } = plannedBit(setting.spec, planOf(candidate), setting.stock);
      const whole = pocketWalls({ layout, material: "matrix", leastWall: setting.stock.wall }).walls;
      const lacking = whole.reduce((sum, { wall }) => sum + Math.max(0, setting.stock.wall - wall), 0);
      expect(walls.reduce((sum, wall) => sum + wall, 0) / 2).toBeCloseTo(lacking, 9);
      if (lacking > 0) thin++;
    }
    expect(thin).toBeGreaterThan(10);
  });
});

describe("axisDistance", () => {
  /** Axes all but parallel are taken as parallel: a millionth of the longest here, 10. */
  const PARALLEL = 1e-5;
  const coordinate = fc.double({ min: -3, max: 3, noNaN: true });
  const point = fc.tuple(coordinate, coordinate, coordinate);

  it("is the least over points of both axes", () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        fc.pre(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) > 0.1);
        fc.pre(Math.hypot(c[0] - d[0], c[1] - d[1], c[2] - d[2]) > 0.1);
        const found = axisDistance(Float64Array.from([...a, ...b, ...c, ...d]), 0, 1);
        const along = (p: readonly number[], q: readonly number[], share: number) =>
          p.map((value, k) => value + share * (q[k] - value));
        let least = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= 60; i++) {
          for (let j = 0; j <= 60; j++) {
            const [p, q] = [along(a, b, i / 60), along(c, d, j / 60)];
            least = Math.min(least, Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]));
          }
        }
        expect(found).toBeLessThanOrEqual(least + PARALLEL);
        expect(found).toBeGreaterThan(least - 0.2);
      }),
      { numRuns: 60 },
    );
  });

  it("less both radii does not exceed the distance of the cylinders, and is it for cylinders side by side", () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        fc.pre(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) > 0.1);
        fc.pre(Math.hypot(c[0] - d[0], c[1] - d[1], c[2] - d[2]) > 0.1);
        const bound = axisDistance(Float64Array.from([...a, ...b, ...c, ...d]), 0, 1) - 0.7;
        const exact = cylinderDistance({ from: a, to: b, radius: 0.3 }, { from: c, to: d, radius: 0.4 });
        expect(bound).toBeLessThanOrEqual(exact + PARALLEL);
      }),
      { numRuns: 100 },
    );
    const beside = Float64Array.from([0, 0, 0, 0, 0, 8, 15, 0, 2, 15, 0, 10]);
    expect(axisDistance(beside, 0, 1)).toBeCloseTo(15, 12);
  });
});
