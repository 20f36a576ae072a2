import { laboratoryRegression } from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { degree, footPerHour, inch, poundForce, psi, rpm } from "../support/field-units.ts";
import { laboratoryGroups, laboratoryRows } from "../support/laboratory-data.ts";

// Akhtarmanesh, Atashnezhad, Hareland & Al Dushaishi 2021: published regression of rate, numbers derived from it.
const regression = (given: {
  weightLbf: number;
  rpm: number;
  faceCutters: number;
  backRake: number;
  faceInch: number;
  blades: number;
}) =>
  laboratoryRegression({
    weight: given.weightLbf * poundForce,
    rotarySpeed: given.rpm * rpm,
    ucs: 28_000 * psi,
    faceCutters: given.faceCutters,
    backRake: given.backRake * degree,
    sideRake: 1 * degree,
    faceDiameter: given.faceInch * inch,
    blades: given.blades,
    bitDiameter: 3.75 * inch,
  });

describe("published regression", () => {
  it("gives the worked point of 8 cutters at 3,940 lbf and 100 rpm", () => {
    const got = regression({ weightLbf: 3940, rpm: 100, faceCutters: 8, backRake: 15, faceInch: 0.43, blades: 4 });
    expectClose(got.thresholdWeight / poundForce, 2292.037, 1e-5);
    expectClose(got.thresholdRate / footPerHour, 9.758217, 1e-5);
    expectClose(got.rate / footPerHour, 25.741, 1e-5);
  });

  it("gives the worked point of 9 cutters at 5,023 lbf and 80 rpm", () => {
    const got = regression({ weightLbf: 5023, rpm: 80, faceCutters: 9, backRake: 25, faceInch: 0.51, blades: 4 });
    expectClose(got.thresholdWeight / poundForce, 2970, 1e-5);
    expectClose(got.rate / footPerHour, 28.35335, 1e-5);
  });
});

const rows = laboratoryRows();

describe.skipIf(rows.length === 0)("against the open rows (skipped where they do not lie beside the project)", () => {
  it("misses the 58 granite rows by 4.3 ft/h on the mean, 4.0 ft/h low, R² 0.79", () => {
    const granite = rows.flatMap((row) => {
      const group = laboratoryGroups.find(({ name, rock }) => name === row.group && rock === "granite");
      if (!group) return [];
      const { cutters, wings, faceDiameterInch, backRakeDegrees } = group.bit;
      const bit = { faceCutters: cutters, backRake: backRakeDegrees, faceInch: faceDiameterInch, blades: wings };
      const got = regression({ weightLbf: row.weight / poundForce, rpm: row.rotarySpeed / rpm, ...bit });
      return [{ measured: row.rate / footPerHour, computed: got.rate / footPerHour }];
    });
    const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / of.length;
    const misses = granite.map(({ measured, computed }) => computed - measured);
    const middle = mean(granite.map(({ measured }) => measured));
    const spread = mean(granite.map(({ measured }) => (measured - middle) ** 2));
    expect(granite).toHaveLength(58);
    expectClose(mean(misses.map(Math.abs)), 4.336, 2e-3);
    expectClose(Math.sqrt(mean(misses.map((miss) => miss ** 2))), 6.3, 2e-3);
    expectClose(mean(misses), -4.047, 2e-3);
    expectClose(1 - mean(misses.map((miss) => miss ** 2)) / spread, 0.7914, 2e-3);
  });

  const nearest = (name: string, weightLbf: number) =>
    rows
      .filter(({ group }) => group === name)
      .reduce((best, row) =>
        Math.abs(row.weight / poundForce - weightLbf) < Math.abs(best.weight / poundForce - weightLbf) ? row : best,
      );

  it("the 9-cutter bit outruns the 13-cutter bit near 4,520 lbf and 80 rpm", () => {
    expectClose(nearest("F", 4521).rate / footPerHour, 29.09, 1e-9);
    expectClose(nearest("I", 4530).rate / footPerHour, 17.1, 1e-9);
  });

  it("near 4,100 lbf the advance falls from 2.00 to 1.72 mm as the speed goes from 100 to 150 rpm", () => {
    expectClose(nearest("A", 4170).advance * 1e3, 2, 5e-3);
    expectClose(nearest("B", 4070).advance * 1e3, 1.72, 5e-3);
  });
});
