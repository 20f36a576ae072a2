import type { BitLayout, PlacedCutter } from "@bitwright/engine";
import fc from "fast-check";
import { degree, mm } from "./field-units.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any cutter in a hole of this radius: cone, nose, shoulder or gauge, raked and worn as it may be. */
export function anyCutter(holeRadius: number): fc.Arbitrary<PlacedCutter> {
  return fc.record({
    radius: between(0.02 * holeRadius, 0.99 * holeRadius),
    azimuth: between(0, 2 * Math.PI),
    height: between(-3 * mm, 3 * mm),
    profileAngle: between(-25 * degree, 85 * degree),
    backRake: between(5 * degree, 30 * degree),
    sideRake: between(-5 * degree, 12 * degree),
    faceDiameter: fc.constantFrom(8.2 * mm, 13.44 * mm, 15.88 * mm, 19.05 * mm),
    wing: fc.constant(0),
    length: fc.constant(8 * mm),
    chamferWidth: fc.constantFrom(0, 0.4 * mm),
    chamferAngle: fc.constantFrom(16 * degree, 45 * degree),
    wornHeight: fc.constantFrom(0, 0, 0.5 * mm, 1.5 * mm),
  });
}

/**
 * Cutters on a flat profile, close enough that no radius is left uncut. The inmost stands upright: a face that leans
 * back trails behind its own centre and would leave a thin core around the axis.
 */
export function coveringCutters(holeRadius: number, faceDiameter = 13.44 * mm): PlacedCutter[] {
  const count = Math.ceil(holeRadius / (0.55 * faceDiameter));
  return Array.from({ length: count }, (_, i) => ({
    radius: ((i + 0.5) / count) * holeRadius,
    azimuth: (i * 137.5 * degree) % (2 * Math.PI),
    height: 0,
    profileAngle: 0,
    backRake: i === 0 ? 0 : 15 * degree,
    sideRake: i === 0 ? 0 : 3 * degree,
    faceDiameter,
    wing: 0,
    length: 8 * mm,
    chamferWidth: 0.4 * mm,
    chamferAngle: 45 * degree,
    wornHeight: 0,
  }));
}

/** Any layout that covers its hole, with cutters of any pose among the covering ones. */
export const anyCoveredLayout: fc.Arbitrary<BitLayout> = between(30 * mm, 110 * mm).chain((holeRadius) =>
  fc.array(anyCutter(holeRadius), { minLength: 0, maxLength: 14 }).map((others) => ({
    holeDiameter: 2 * holeRadius,
    cutters: [...coveringCutters(holeRadius), ...others],
  })),
);

/** Any advance of a bit that drills [m]. */
export const anyAdvance = between(0.05 * mm, 4 * mm);

/** The same layout turned about the bit axis. */
export function turned(layout: BitLayout, by: number): BitLayout {
  return { ...layout, cutters: layout.cutters.map((cutter) => ({ ...cutter, azimuth: cutter.azimuth + by })) };
}
