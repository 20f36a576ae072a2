import { describe, expect, it } from "vitest";
import { type CutterPose, faceStock, generateLayout, planOfBit, sweptInterval, uncutRings } from "../../bit/index.ts";
import { catalogCutter } from "../../cutter/index.ts";
import { candidateOf, copied, facesOf } from "./candidate.ts";
import { coverShortfall, LEAST_FACE_OVERLAP, LEAST_SWEEP_OVERLAP } from "./candidate-cover.ts";
import { randomSource } from "./random-source.ts";

/** A disc square to its travel on a flat profile: it sweeps its own width but for what the circle about the axis adds. */
const disc = (radius: number) => {
  const pose: CutterPose = {
    radius,
    azimuth: 0,
    height: 0,
    profileAngle: 0,
    backRake: 0,
    sideRake: 0,
    faceDiameter: 0.01,
  };
  return { pose, arc: radius, swept: sweptInterval(pose) };
};
const limits = { faceDiameter: 0.01, mostApart: 1 - LEAST_FACE_OVERLAP };

describe("coverShortfall", () => {
  it("is nothing for faces that overlap enough", () => {
    const cover = coverShortfall([disc(0.005), disc(0.013), disc(0.0213)], limits);
    expect([cover.sweeps, cover.faces]).toEqual([0, 0]);
    expect(cover.widest).toBeCloseTo(0.83, 9);
    expect(cover.between).toEqual([1, 2]);
  });

  it("counts what neighbours lack of their overlaps, and the two that stand farthest apart", () => {
    const cover = coverShortfall([disc(0.025), disc(0.005), disc(0.013)], limits);
    // 12 mm apart on faces of 10 mm: 2 mm open and 0.8 mm of overlap of sweeps, 3.5 mm of overlap of faces.
    expect(cover.sweeps).toBeCloseTo(0.2 + LEAST_SWEEP_OVERLAP, 9);
    expect(cover.faces).toBeCloseTo(1.2 - 0.85, 9);
    expect(cover.between).toEqual([2, 0]);
  });

  it("counts a core that is left at the axis", () => {
    expect(coverShortfall([disc(0.008), disc(0.015)], limits).sweeps).toBeCloseTo(0.3, 9);
  });

  it("is something wherever a ring is left uncut, on random bits", () => {
    const spec = {
      holeDiameter: 6.125 * 0.0254,
      profile: { shape: "short parabolic" as const },
      wings: { wings: 5, cuttersPerWing: 3 },
      cutter: catalogCutter("1308"),
      rakes: {
        kind: "even",
        centre: { backRake: 0.17, sideRake: 0.1 },
        gauge: { backRake: 0.2, sideRake: 0.1 },
      } as const,
      material: "steel" as const,
    };
    const stock = faceStock(spec);
    const start = candidateOf(planOfBit(spec, generateLayout(spec), stock));
    const random = randomSource({ seed: 6, row: 0 });
    let holed = 0;
    for (let round = 0; round < 60; round++) {
      const candidate = copied(start);
      for (const [at, role] of candidate.role.entries()) {
        if (role === "face") candidate.arc[at] = Math.max(0.012, candidate.arc[at] + 0.006 * random.normal());
      }
      const faces = facesOf(candidate, stock);
      const cutters = faces.map(({ pose }) => ({
        ...pose,
        wing: 1,
        length: 0.008,
        chamferWidth: 0,
        chamferAngle: 0,
        wornHeight: 0,
      }));
      const rings = uncutRings({ holeDiameter: spec.holeDiameter, cutters });
      const { sweeps } = coverShortfall(faces, { ...limits, faceDiameter: spec.cutter.faceDiameter });
      if (rings.length > 0) {
        holed++;
        expect(sweeps).toBeGreaterThan(LEAST_SWEEP_OVERLAP);
      }
    }
    expect(holed).toBeGreaterThan(3);
  });
});
