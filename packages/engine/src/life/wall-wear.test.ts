import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { inch, mm } from "../../../../tests/support/field-units.ts";
import { usualBit } from "../../../../tests/support/usual-bit.ts";
import { bearingPads } from "./bearing-pads.ts";
import { PAD_FACES } from "./pad-protection.ts";
import { wallLandsOf } from "./wall-lands.ts";
import { padWear, sideLossAtWall } from "./wall-wear.ts";

const wall = {
  wearCoefficient: 3e-16,
  sideForce: 1500,
  advance: 2 * mm,
  holeRadius: 77.8 * mm,
  contactStress: 60e6,
  kappa: 5,
};
const pads = { area: 8e-4, wearMultiple: 20 };

describe("bearingPads", () => {
  it("bears on the inserts where there are such, on the whole face of a weld", () => {
    const of = (protection: "carbide" | "hardfacing") =>
      bearingPads({ count: 5, length: 0.75 * inch, width: 16 * mm, protection });
    expectClose(of("hardfacing").area, 5 * 19.05e-3 * 16e-3, 1e-12);
    expectClose(of("carbide").area / of("hardfacing").area, PAD_FACES.carbide.bearingShare, 1e-12);
    expect(() => bearingPads({ count: 5, length: 0, width: 16 * mm, protection: "carbide" })).toThrow("padLength");
  });

  it("ranks welds, carbide and diamond as the trade does, area counted", () => {
    const pace = (["hardfacing", "carbide", "diamond"] as const).map((protection) => {
      const { area, wearMultiple } = bearingPads({ count: 1, length: inch, width: inch, protection });
      return wearMultiple / area;
    });
    expect(pace[0]).toBeGreaterThan(pace[1]);
    expect(pace[1]).toBeGreaterThan(pace[2]);
  });
});

describe("padWear", () => {
  // By hand: 1,500 N dragged 2π 77.8/2 = 244.4 m for each metre of hole wears 20 x 3e-16 of that off 8 cm².
  it("takes off by Archard what the side force and its way make", () => {
    expectClose(padWear(wall, pads).bySideForce, (20 * 3e-16 * 1500 * 244.416) / 8e-4, 1e-4);
  });

  // Summed over the turns of a metre: each turn the pads cut a ring of g times d, and bear σ_c κ on that much of it.
  it("takes off by the ring what grinding it turn for turn takes", () => {
    const ring = 0.3 * mm;
    for (const advance of [0.5 * mm, 4 * mm]) {
      const turns = 1 / advance;
      const load = 60e6 * 5 * ring * advance;
      const volume = turns * 20 * 3e-16 * load * 2 * Math.PI * 77.8 * mm;
      expectClose(padWear({ ...wall, advance }, pads).byRing * ring, volume / 8e-4, 1e-12);
    }
  });
});

describe("sideLossAtWall", () => {
  const shared = { ...wall, ownLoss: 2e-7, landArea: 3e-5 };
  const way = (2 * Math.PI * 77.8) / 2;

  it("lets lands and pads bear the force between them and recede alike", () => {
    const loss = sideLossAtWall({ ...shared, pads });
    const pressure = loss / (3e-16 * way);
    const onPads = 1500 - pressure * 3e-5;
    expect(onPads).toBeGreaterThan(0);
    expectClose((20 * 3e-16 * way * onPads) / 8e-4, 2e-7 + loss, 1e-9);
  });

  it("leaves nothing to the cutters where pads outlast them, and all of it where there are none", () => {
    expect(sideLossAtWall({ ...shared, ownLoss: 5e-6, pads })).toBe(0);
    expectClose(sideLossAtWall(shared), (3e-16 * way * 1500) / 3e-5, 1e-9);
    expect(sideLossAtWall({ ...shared, sideForce: 0 })).toBe(0);
  });

  it("loads the lands no more than the rock bears, however small they are", () => {
    for (const landArea of [0, 1e-7]) {
      expectClose(sideLossAtWall({ ...shared, landArea }), 3e-16 * way * 60e6, 1e-9);
    }
  });

  it("is never more for larger or harder pads", () => {
    const some = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        some(1e-4, 1e-2),
        some(1, 300),
        some(0, 5000),
        some(0, 1e-5),
        (area, wearMultiple, sideForce, own) => {
          const at = (of: typeof pads) => sideLossAtWall({ ...shared, sideForce, ownLoss: own, pads: of });
          const loss = at({ area, wearMultiple });
          expect(at({ area: 1.3 * area, wearMultiple })).toBeLessThanOrEqual(loss);
          expect(at({ area, wearMultiple: wearMultiple / 1.3 })).toBeLessThanOrEqual(loss);
          expect(loss).toBeLessThanOrEqual(sideLossAtWall({ ...shared, sideForce, ownLoss: own }) * (1 + 1e-12));
        },
      ),
    );
  });
});

it("wallLandsOf: none on a bit that just reaches the wall, then the segment of each gauge face over the sine of its rake", () => {
  const lands = wallLandsOf(usualBit);
  expect(lands(0)).toBeLessThan(1e-9);
  const gauge = usualBit.cutters.filter(
    ({ radius, faceDiameter }) => radius + faceDiameter / 2 > usualBit.holeDiameter / 2,
  );
  const loss = 0.4 * mm;
  let sum = 0;
  for (const { faceDiameter, backRake } of gauge) {
    const radius = faceDiameter / 2;
    const strips = 20_000;
    for (let k = 0; k < strips; k++) {
      const height = ((k + 0.5) / strips) * loss;
      sum += (2 * Math.sqrt(2 * radius * height - height ** 2) * (loss / strips)) / Math.sin(backRake);
    }
  }
  expect(gauge.length).toBeGreaterThan(0);
  expectClose(lands(loss), sum, 1e-4);
});
