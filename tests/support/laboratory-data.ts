import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { footPerHour, inch, MPa, poundForce, psi, rpm } from "./field-units.ts";
import type { LaboratoryBit } from "./laboratory-bit.ts";

/**
 * Group fits of an open laboratory set: 3.75 in PDC bits in Sierra White granite and Berea sandstone.
 * Source: Akhtarmanesh, Atashnezhad, Hareland & Al Dushaishi 2021, data in the second author's public repository (MIT
 * licence); fits of weight per radius against advance derived from it. Its rows are not kept here.
 */
export interface LaboratoryGroup {
  readonly name: string;
  readonly rock: "granite" | "sandstone";
  readonly bit: LaboratoryBit;
  /** Fit over the last four rows for granite, over all rows for sandstone [Pa], [N/m]. */
  readonly slope: number;
  readonly offset: number;
  /** Range of advance of that fit, rounded [m]. */
  readonly from: number;
  readonly to: number;
}

const newtonPerMm = 1e3;
const mmPerTurn = 1e-3;

const group = (
  name: string,
  bit: LaboratoryBit,
  [slope, offset]: readonly [number, number],
  [from, to]: readonly [number, number],
): LaboratoryGroup => ({
  name,
  rock: name.startsWith("Berea") ? "sandstone" : "granite",
  bit,
  slope: slope * MPa,
  offset: offset * newtonPerMm,
  from: from * mmPerTurn,
  to: to * mmPerTurn,
});

const bitOf = (cutters: number, wings: number, faceDiameterInch: number, backRakeDegrees: number): LaboratoryBit => ({
  cutters,
  wings,
  faceDiameterInch,
  backRakeDegrees,
});

export const laboratoryGroups: readonly LaboratoryGroup[] = [
  group("A", bitOf(8, 4, 0.43, 15), [111.18, 164.97], [1.4, 2]),
  group("B", bitOf(8, 4, 0.43, 15), [111.51, 188.69], [1.1, 1.7]),
  group("D", bitOf(8, 5, 0.43, 15), [106.32, 141.21], [1.6, 2.3]),
  group("F", bitOf(9, 4, 0.51, 25), [101.39, 239.43], [0.9, 2.2]),
  group("G", bitOf(9, 4, 0.51, 25), [104.03, 256.66], [0.7, 2]),
  group("I", bitOf(13, 5, 0.51, 25), [185.48, 226.72], [0.5, 1.1]),
  group("J", bitOf(13, 5, 0.51, 25), [161.79, 254.92], [0.5, 1.3]),
  group("Berea-100", bitOf(12, 4, 0.5, 20), [28.691, 45.075], [1.3, 4.3]),
  group("Berea-150", bitOf(12, 4, 0.5, 20), [34.802, 35.162], [1.4, 4.3]),
];

/** Published unconfined strengths [Pa]. */
export const publishedStrengths = {
  /** Ye & Ghassemi 2018. */
  granite: 150 * MPa,
  /** The bit tests' own figure for the granite, 28,000 psi. */
  graniteOfBitTests: 28_000 * psi,
  /** 7,100 psi, given with the rows. */
  sandstone: 7_100 * psi,
};

export const laboratoryHoleRadius = 1.875 * inch;

/** One drilled interval. */
export interface LaboratoryRow {
  readonly group: string;
  readonly weight: number;
  readonly rate: number;
  readonly rotarySpeed: number;
  /** Advance per revolution [m]. */
  readonly advance: number;
}

const file = fileURLToPath(new URL("../../../shared/handbook/data/pdc-3p75in.csv", import.meta.url));

/** The rows where the open file lies beside the project, else none. */
export function laboratoryRows(): readonly LaboratoryRow[] {
  if (!existsSync(file)) return [];
  const [, ...lines] = readFileSync(file, "utf8").trim().split("\n");
  return lines.map((line) => {
    const [name, , pounds, feetPerHour, turns] = line.split(",");
    const rate = Number(feetPerHour) * footPerHour;
    const rotarySpeed = Number(turns) * rpm;
    return {
      group: name,
      weight: Number(pounds) * poundForce,
      rate,
      rotarySpeed,
      advance: (rate * 2 * Math.PI) / rotarySpeed,
    };
  });
}

/** Straight line of least squares. */
export function lineFit(points: readonly (readonly [x: number, y: number])[]): { slope: number; offset: number } {
  const mean = (of: (point: readonly [number, number]) => number) =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  const [mx, my] = [mean(([x]) => x), mean(([, y]) => y)];
  const slope = mean(([x, y]) => (x - mx) * (y - my)) / mean(([x]) => (x - mx) ** 2);
  return { slope, offset: my - slope * mx };
}
