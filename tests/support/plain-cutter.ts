import type { PlacedCutter } from "@bitwright/engine";

/** A 10 mm cutter of a bit: level, at azimuth 0, sharp and new, unless said otherwise. */
export function plainCutter(more: Partial<PlacedCutter> = {}): PlacedCutter {
  return {
    radius: 0,
    azimuth: 0,
    height: 0,
    profileAngle: 0,
    backRake: 0,
    sideRake: 0,
    faceDiameter: 0.01,
    wing: 1,
    length: 0.008,
    chamferWidth: 0,
    chamferAngle: 0,
    wornHeight: 0,
    ...more,
  };
}
