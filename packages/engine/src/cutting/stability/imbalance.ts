import { bitLoads, type SideForce, sideForce } from "../bit-loads.ts";
import type { EdgeTrace } from "../edge-trace.ts";
import type { BedLoads } from "./bed-loads.ts";
import { type CutterGroup, cutterGroups } from "./cutter-groups.ts";
import { type WingDirection, wingDirection } from "./side-force-direction.ts";

/** How far a bit's side forces are from cancelling out, and which way they push. */
export interface Imbalance {
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Sum of all cutters. */
  readonly whole: SideForce;
  /** The part of it that drag makes. */
  readonly drag: SideForce;
  /** The part of it that the forces away from the axis make. */
  readonly radial: SideForce;
  /** Angle between those two parts, 0 to π: near 0 they add up, near π they take from each other [rad]. */
  readonly betweenAngle: number;
  /** Which wing it points to; absent where the wings are not known or nothing pushes. */
  readonly direction?: WingDirection;
  /** Every two neighbours on the profile. */
  readonly pairs: readonly CutterGroup[];
  /** Every three neighbours on the profile. */
  readonly triples: readonly CutterGroup[];
}

/** Share of the weight under which a side force is rounding and points nowhere [-]. */
const NO_SHARE = 1e-9;

const total = (row: Float64Array): number => row.reduce((sum, value) => sum + value, 0);

/**
 * The side force of the rock on the bit, its two parts and the angle between them, the wing it points to, and the
 * balance of neighbouring cutters.
 *
 * F = F_drag + F_radial; |F|² = |F_drag|² + |F_radial|² + 2 |F_drag| |F_radial| cos β.
 *
 * @source (d) vector sums of the cutter forces; the split into drag and radial part is common practice
 */
export function imbalance({ layout }: Pick<EdgeTrace, "layout">, loads: BedLoads): Imbalance {
  const { weight } = bitLoads(loads);
  const [x, y] = [total(loads.lateralX), total(loads.lateralY)];
  const [radialX, radialY] = [total(loads.radialX), total(loads.radialY)];
  const whole = sideForce({ x, y, weight });
  const drag = sideForce({ x: x - radialX, y: y - radialY, weight });
  const radial = sideForce({ x: radialX, y: radialY, weight });
  const apart = drag.azimuth - radial.azimuth;
  const direction = whole.share > NO_SHARE ? wingDirection({ layout, azimuth: whole.azimuth }) : undefined;
  const { cutters } = layout;
  return {
    weight,
    whole,
    drag,
    radial,
    betweenAngle:
      Math.min(drag.share, radial.share) > NO_SHARE ? Math.abs(Math.atan2(Math.sin(apart), Math.cos(apart))) : 0,
    ...(direction ? { direction } : {}),
    pairs: cutterGroups({ cutters, loads, weight, size: 2 }),
    triples: cutterGroups({ cutters, loads, weight, size: 3 }),
  };
}

/**
 * The group whose side forces cancel least, as a share of the weight; undefined where there is no group.
 *
 * @source (d) the largest of the groups
 */
export function worstGroup(groups: readonly CutterGroup[]): CutterGroup | undefined {
  return groups.reduce<CutterGroup | undefined>(
    (worst, group) => (worst && worst.lateralShare >= group.lateralShare ? worst : group),
    undefined,
  );
}
