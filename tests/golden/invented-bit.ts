import type { BitLayout, PlacedCutter } from "@bitwright/engine";
import type { SheetTitle } from "@bitwright/shop";
import { degree, mm } from "../support/field-units.ts";

/**
 * A bit made up for these tests: four wings in a 4 3/4 in hole, placed by hand with no regard to how well it drills.
 * Wing, radius, azimuth, height, profile angle, back rake, side rake; mm and degrees.
 */
const ROWS: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [1, 8, -5, -17.5, -15, 12, 3],
  [2, 17, 76, -15, -15, 12, 3],
  [3, 25.5, 167, -12.5, -15, 13, 3],
  [4, 32.5, 252, -11.5, -8, 14, 2],
  [1, 38.5, -22, -11.5, 5, 15, 2],
  [2, 43, 62, -12.5, 20, 16, 2],
  [3, 47, 150, -14.5, 35, 17, 1],
  [4, 50, 236, -17.5, 50, 18, 0],
  [1, 52, -36, -21.5, 65, 20, 0],
  [2, 53.5, 45, -26.5, 80, 20, 0],
  [3, 54.2, 134, -32, 90, 20, 0],
  [4, 54.2, 219, -32.5, 90, 20, 0],
];

export const inventedBit: BitLayout = {
  holeDiameter: 120.65 * mm,
  cutters: ROWS.map(
    ([wing, radius, azimuth, height, profileAngle, backRake, sideRake]): PlacedCutter => ({
      wing,
      radius: radius * mm,
      azimuth: azimuth * degree,
      height: height * mm,
      profileAngle: profileAngle * degree,
      backRake: backRake * degree,
      sideRake: sideRake * degree,
      faceDiameter: 13.44 * mm,
      length: 8 * mm,
      chamferWidth: 0.4 * mm,
      chamferAngle: 45 * degree,
      wornHeight: 0,
    }),
  ),
};

export const inventedTitle: SheetTitle = {
  job: 'Loop field <north> & "yard"',
  bit: "FB-0475 trial",
  hole: "4 3/4 in",
  shop: "Fernhollow Bit Works",
  customer: "Quillback Drilling",
  date: "2026-01-15",
  sheet: "1 of 2",
  program: "Bitwright 0.0.0",
};
