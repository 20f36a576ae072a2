import type { BitLayout, RockResponse } from "@bitwright/engine";
import { degree, MPa, mm } from "../tests/support/field-units.ts";

/** Hole of which the usual grid has 763 cells [m]. */
const HOLE_DIAMETER = 152.6 * mm;

/** A bit with cone, nose, shoulder and gauge, five wings, bevels and some worn cutters: the same one every time. */
export function benchBit(count = 20): BitLayout {
  const holeRadius = HOLE_DIAMETER / 2;
  const cutters = Array.from({ length: count }, (_, i) => {
    const radius = i === 0 ? 0.05 * holeRadius : Math.min(0.93, 0.95 * Math.sqrt((i + 0.4) / count)) * holeRadius;
    const pastNose = radius / holeRadius - 0.6;
    const inCone = pastNose < 0;
    return {
      radius,
      azimuth: (i * 72 + (i % 3) * 7) * degree,
      height: inCone ? 0.18 * pastNose * holeRadius : -1.1 * pastNose ** 2 * holeRadius,
      profileAngle: inCone ? -10 * degree : Math.atan(2.2 * pastNose),
      backRake: (12 + (13 * i) / count) * degree,
      sideRake: ((i % 5) - 1) * degree,
      faceDiameter: 13.44 * mm,
      wing: (i % 5) + 1,
      length: 8 * mm,
      chamferWidth: 0.4 * mm,
      chamferAngle: 45 * degree,
      wornHeight: i % 4 === 2 ? 0.8 * mm : 0,
    };
  });
  return { holeDiameter: HOLE_DIAMETER, cutters };
}

/** A middling sandstone. */
export const benchRock: RockResponse = {
  specificEnergy: 60 * MPa,
  contactStress: 60 * MPa,
  faceFriction: 18 * degree,
  flatFriction: 0.3,
  kappa: 5,
};

/** Advance per revolution of ordinary drilling [m]. */
export const BENCH_ADVANCE = 1 * mm;
