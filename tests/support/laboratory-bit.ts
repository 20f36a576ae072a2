import type { BitLayout } from "@bitwright/engine";
import { degree, inch, mm } from "./field-units.ts";

/** What is known of a 3.75 in laboratory bit. */
export interface LaboratoryBit {
  readonly cutters: number;
  readonly wings: number;
  readonly faceDiameterInch: number;
  readonly backRakeDegrees: number;
}

/**
 * A 3.75 in bit drawn from the little that is known of it: stations of equal area on a flat profile, neighbours on
 * different wings, side rake 1°, the usual 0.4 mm x 45° bevel. The innermost cutter is drawn in until it covers the
 * axis, which its own station would leave standing.
 */
export function laboratoryBit(bit: LaboratoryBit, wornHeight = 0, chamferWidth = 0.4 * mm): BitLayout {
  const holeDiameter = 3.75 * inch;
  const faceDiameter = bit.faceDiameterInch * inch;
  const cutters = Array.from({ length: bit.cutters }, (_, i) => {
    const station = (holeDiameter / 2) * Math.sqrt((i + 0.5) / bit.cutters);
    return {
      radius: i === 0 ? Math.min(station, 0.45 * faceDiameter) : station,
      azimuth: ((i % bit.wings) * 2 * Math.PI) / bit.wings,
      height: 0,
      profileAngle: 0,
      backRake: bit.backRakeDegrees * degree,
      sideRake: 1 * degree,
      faceDiameter,
      wing: (i % bit.wings) + 1,
      length: 8 * mm,
      chamferWidth,
      chamferAngle: 45 * degree,
      wornHeight,
    };
  });
  return { holeDiameter, cutters };
}
