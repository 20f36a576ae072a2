import type { BitLayout } from "@bitwright/engine";
import { degree, inch, mm } from "./field-units.ts";

/**
 * A 6 1/8 in bit for tests, with cone, nose, shoulder and gauge, uneven rakes and some worn cutters: nothing about it is
 * even, so that nothing cancels by accident.
 */
export function profiledBit(): BitLayout {
  const holeDiameter = 6.125 * inch;
  const holeRadius = holeDiameter / 2;
  const count = 15;
  const cutters = Array.from({ length: count }, (_, i) => {
    const radius = i === 0 ? 0.07 * holeRadius : 0.95 * holeRadius * Math.sqrt((i + 0.4) / count);
    const pastNose = radius / holeRadius - 0.6;
    const inCone = pastNose < 0;
    return {
      radius,
      azimuth: (i * 72 + (i % 3) * 7) * degree,
      height: inCone ? 0.18 * pastNose * holeRadius : -1.1 * pastNose ** 2 * holeRadius,
      profileAngle: inCone ? -10 * degree : Math.atan(2.2 * pastNose),
      backRake: (12 + i) * degree,
      sideRake: (i - 3) * degree,
      faceDiameter: 13.44 * mm,
      wing: (i % 5) + 1,
      length: 8 * mm,
      chamferWidth: 0.4 * mm,
      chamferAngle: 45 * degree,
      wornHeight: i % 4 === 2 ? 0.8 * mm : 0,
    };
  });
  return { holeDiameter, cutters };
}
