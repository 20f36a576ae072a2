import type { BitLayout } from "./placed-cutter.ts";
import { type ProfileZone, profileZone } from "./profile-zone.ts";
import { sweptInterval } from "./swept-interval.ts";

/** How near the hole radius an edge comes for its cutter to count as cutting the wall, as share of its face [-]. */
const AT_WALL = 0.02;

/**
 * The zone of each cutter of any layout, from its profile angle and how far out its edge reaches. Whether the profile is
 * straight there is not known, so a taper counts as shoulder.
 *
 * @source (c) IADC dull-grading practice for the names; the borders are common practice
 */
export function zonesOfLayout({ holeDiameter, cutters }: BitLayout): ProfileZone[] {
  return cutters.map((cutter) => {
    const reach = sweptInterval({ ...cutter, wornHeight: 0 }).to;
    const atWall = cutter.profileAngle > 0 && reach >= holeDiameter / 2 - AT_WALL * cutter.faceDiameter;
    return profileZone({ angle: cutter.profileAngle, straight: false, atWall });
  });
}
