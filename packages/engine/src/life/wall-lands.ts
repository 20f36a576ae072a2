import type { BitLayout } from "../bit/index.ts";
import { wearFlat } from "../cutter/index.ts";
import { edgeReach } from "../cutting/index.ts";

/**
 * Area of the lands that gauge cutters turn to the wall, by what the gauge has lost of its reach.
 *
 * Each cutter that once reached past the wall is ground or worn off there; its land is taken as the level flat of that height,
 * `wearFlat`. Lands grow as the gauge wears; a bit that is not ground to gauge has none when new.
 *
 * @source (d) geometry of a cylinder cut by a plane; (c) that the land at the wall is such a flat: no source
 */
export function wallLandsOf({ cutters, holeDiameter }: BitLayout): (loss: number) => number {
  const reaches = cutters.map((cutter) => edgeReach(cutter));
  const whole = Math.min(holeDiameter / 2, Math.max(...reaches));
  return (loss) =>
    cutters.reduce((sum, { faceDiameter, length, backRake }, i) => {
      const wornHeight = Math.min(faceDiameter, Math.max(0, reaches[i] - (whole - loss)));
      return sum + wearFlat({ faceDiameter, length, backRake, wornHeight }).area;
    }, 0);
}
