import { type BitLayout, engage, traceEdges } from "@bitwright/engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { holdSection, table } from "../support/checks-page.ts";
import { depthMapVolumes } from "../support/depth-map.ts";
import { mm } from "../support/field-units.ts";
import { laboratoryBit } from "../support/laboratory-bit.ts";
import { profiledBit } from "../support/profiled-bit.ts";
import { anyCutter, coveringCutters } from "../support/random-layout.ts";

// Source: none but the kinematics itself; the depth map is an independent numerical experiment on it.
const GATE = 0.01;
const radialBins = 600;
const run = { radialBins, azimuthBins: 1440, revolutions: 3 };
const total = (row: Iterable<number>) => [...row].reduce((sum, value) => sum + value, 0);

const granite = { cutters: 8, wings: 4, faceDiameterInch: 0.43, backRakeDegrees: 15 };
const crowded = { cutters: 13, wings: 5, faceDiameterInch: 0.51, backRakeDegrees: 25 };
const bits: readonly { readonly name: string; readonly layout: BitLayout; readonly advance: number }[] = [
  {
    name: "flat profile, 4.7 in, 9 cutters",
    layout: { holeDiameter: 0.12, cutters: coveringCutters(0.06) },
    advance: 1 * mm,
  },
  { name: "laboratory bit, 3.75 in, 8 cutters", layout: laboratoryBit(granite), advance: 1.5 * mm },
  { name: "laboratory bit, 3.75 in, 13 cutters", layout: laboratoryBit(crowded), advance: 0.5 * mm },
  {
    name: "cone, shoulder, gauge, some worn, 6 1/8 in, 15 cutters",
    layout: profiledBit(),
    advance: 1.2 * mm,
  },
];

/** How far the share of each cutter stands from the depth map's. */
function differences({ layout, advance }: { readonly layout: BitLayout; readonly advance: number }): number[] {
  const byMap = depthMapVolumes(layout, advance, run);
  const { volume } = engage(traceEdges(layout, { cells: radialBins }), advance);
  // A cutter that takes next to nothing is held to a ten-thousandth of the whole instead of to a hundredth of itself.
  const least = 0.01 * total(volume);
  return byMap.map((taken, i) => Math.abs(taken - volume[i]) / Math.max(volume[i], least));
}

describe("volumes by engagement against a marched depth map", () => {
  const found = bits.map((bit) => ({ ...bit, differences: differences(bit) }));

  it.each(found)("agrees within 1 % for every cutter: $name", ({ differences: all }) => {
    expect(Math.max(...all)).toBeLessThan(GATE);
  });

  const thrown = fc
    .sample(fc.array(anyCutter(0.06), { minLength: 4, maxLength: 10 }), { numRuns: 6, seed: 11 })
    .map((extra) => ({ holeDiameter: 0.12, cutters: [...coveringCutters(0.06), ...extra] }))
    .map((layout) => Math.max(...differences({ layout, advance: 1.7 * mm })));

  it("agrees within 1 % for cutters thrown in at random poses", () => {
    expect(Math.max(...thrown)).toBeLessThan(GATE);
  });

  it("stands in the guide as found", () => {
    holdSection(
      "depth map",
      table([
        ["bit", "advance, mm/rev", "largest difference of a cutter's share"],
        ...found.map(({ name, advance, differences: all }) => [
          name,
          (advance / mm).toFixed(1),
          `${(100 * Math.max(...all)).toFixed(2)} %`,
        ]),
        [
          "six bits of 4.7 in with cutters thrown in at random poses",
          "1.7",
          `${(100 * Math.max(...thrown)).toFixed(2)} %`,
        ],
      ]),
    );
  });
});

describe("shares of the cut as the radial grid is refined", () => {
  const grids = [200, 400, 800, 1600];
  const finestGrid = 12_800;
  const layouts = [1, 2, 3, 4, 5].map((step) => ({
    holeDiameter: 0.155575,
    cutters: coveringCutters(0.0777875).map((c, i) => ({ ...c, azimuth: (i * (step + 0.3)) % (2 * Math.PI) })),
  }));
  const shares = (layout: BitLayout, cells: number) => {
    const { volume } = engage(traceEdges(layout, { cells }), 1 * mm);
    return [...volume].map((taken) => taken / total(volume));
  };
  const finest = layouts.map((layout) => shares(layout, finestGrid));
  const farOff = grids.map((cells) => {
    const all = layouts.flatMap((layout, l) => shares(layout, cells).map((s, i) => Math.abs(s / finest[l][i] - 1)));
    return { cells, mean: total(all) / all.length, most: Math.max(...all) };
  });

  it("comes to rest", () => {
    for (let g = 1; g < grids.length; g++) expect(farOff[g].mean).toBeLessThan(0.75 * farOff[g - 1].mean);
    expect(farOff[3].mean).toBeLessThan(1e-4);
  });

  it("stands in the guide as found", () => {
    holdSection(
      "grid",
      table([
        ["radial cells", "cell, mm", "mean difference of a share", "largest"],
        ...farOff.map(({ cells, mean, most }) => [
          `${cells}`,
          (77.7875 / cells).toFixed(3),
          `${(100 * mean).toFixed(3)} %`,
          `${(100 * most).toFixed(3)} %`,
        ]),
      ]),
    );
  });
});
