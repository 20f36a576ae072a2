import { requireBetween, requirePositive } from "../quantity/index.ts";
import type { BitLayout, PlacedCutter } from "./placed-cutter.ts";
import { halfStrip } from "./slot-area.ts";
import { gapsBetweenWings } from "./wings-around.ts";

/** One slot between two neighbouring wings. */
export interface WingSlot {
  /** Turn from the wing behind to the wing ahead [rad]. */
  readonly gap: number;
  /** Open area across the hole [m²]. */
  readonly area: number;
  /** Width between the wings where they leave the core; 0 where they touch there [m]. */
  readonly footWidth: number;
}

/**
 * The slots of a bit one by one, in the order of `gapsBetweenWings`: uneven wings give uneven slots.
 *
 * A = φ (R² - f²)/2 - (S(R) - S(f)) with S as in `slotArea` and the foot f at the core or where the two wings part,
 * t/(2 sin(φ/2)); the width at the core is 2 r_c sin(φ/2) - t. Exact for straight wings; for even ones the areas add up to
 * `slotArea`. A gap over half a turn is as wide at the core as one of half a turn.
 *
 * @throws RangeError when a size is not positive, the core is larger than the hole, or there is no wing
 * @source (d) geometry of strips across a sector
 */
export function wingSlots({
  holeDiameter,
  wingAngles,
  wingThickness,
  coreRadius,
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  /** Azimuth of each wing [rad]. */
  readonly wingAngles: readonly number[];
  /** Thickness of a wing along travel [m]. */
  readonly wingThickness: number;
  /** Radius of the solid middle [m]. */
  readonly coreRadius: number;
}): WingSlot[] {
  requirePositive({ holeDiameter, "number of wings": wingAngles.length, wingThickness, coreRadius });
  const holeRadius = holeDiameter / 2;
  requireBetween("coreRadius", coreRadius, 0, holeRadius);
  return gapsBetweenWings(wingAngles).map((gap) => {
    const half = Math.sin(Math.min(gap, Math.PI) / 2);
    const parting = half > 0 ? wingThickness / (2 * half) : holeRadius;
    const foot = Math.min(holeRadius, Math.max(coreRadius, parting));
    const wing = halfStrip(wingThickness, holeRadius) - halfStrip(wingThickness, foot);
    return {
      gap,
      area: Math.max(0, (gap / 2) * (holeRadius ** 2 - foot ** 2) - wing),
      footWidth: Math.max(0, 2 * coreRadius * half - wingThickness),
    };
  });
}

/**
 * Azimuth of each wing where it crosses a radius: that of its cutter nearest to it; empty where no wing is known [rad].
 *
 * @source (d) a wing follows its cutters
 */
export function wingAzimuths({ cutters }: BitLayout, radius: number): number[] {
  const nearest = new Map<number, PlacedCutter>();
  for (const cutter of cutters) {
    const held = nearest.get(cutter.wing);
    if (cutter.wing > 0 && (!held || Math.abs(cutter.radius - radius) < Math.abs(held.radius - radius))) {
      nearest.set(cutter.wing, cutter);
    }
  }
  return [...nearest.values()].map(({ azimuth }) => azimuth);
}
