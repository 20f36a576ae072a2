import type { EdgeLoads } from "./edge-loads.ts";

/** The forces of all cutters summed over the bit. */
export interface BitLoads {
  /** Weight on bit, cutting and contact together [N]. */
  readonly weight: number;
  /** Part of the weight that cuts [N]. */
  readonly cuttingWeight: number;
  /** Part of the weight carried by chamfers and flats [N]. */
  readonly contactWeight: number;
  /** Torque at the bit [N·m]. */
  readonly torque: number;
  /** Side force of the rock on the bit, vector sum in the plane of the hole [N]. */
  readonly lateralForce: number;
  /** Azimuth toward which the side force pushes the bit [rad]. */
  readonly lateralAzimuth: number;
  /** Side force as a share of the weight, 0 without weight [-]. */
  readonly lateralShare: number;
  /** Bending moment of the axial forces about the bit axis [N·m]. */
  readonly bendingMoment: number;
  /** Azimuth of the side that carries more than its share of the weight [rad]. */
  readonly bendingAzimuth: number;
}

const sum = (row: Float64Array): number => {
  let total = 0;
  for (const value of row) total += value;
  return total;
};

/**
 * Weight, torque, side force and bending of the bit from the forces on its cutters.
 *
 * W = Σ axial; T = Σ r × tangential; side force = vector sum of drag and radial parts; M = Σ r × axial.
 *
 * @source (d) statics of the summed cutter forces
 */
export function bitLoads(loads: EdgeLoads): BitLoads {
  const cuttingWeight = sum(loads.cuttingAxial);
  const contactWeight = sum(loads.contactAxial);
  const weight = cuttingWeight + contactWeight;
  const side = sideForce({ x: sum(loads.lateralX), y: sum(loads.lateralY), weight });
  const mx = sum(loads.momentX);
  const my = sum(loads.momentY);
  return {
    weight,
    cuttingWeight,
    contactWeight,
    torque: sum(loads.torque),
    lateralForce: side.force,
    lateralAzimuth: side.azimuth,
    lateralShare: side.share,
    bendingMoment: Math.hypot(mx, my),
    // A point at azimuth a that carries F gives the moment r F (-sin a, cos a).
    bendingAzimuth: mx === 0 && my === 0 ? 0 : Math.atan2(-mx, my),
  };
}

/** A side force with its direction and its share of the weight. */
export interface SideForce {
  /** Size [N]. */
  readonly force: number;
  /** Azimuth it points to, -π to π; 0 where there is no force [rad]. */
  readonly azimuth: number;
  /** Share of the weight, 0 without weight [-]. */
  readonly share: number;
}

/**
 * Size, direction and share of the weight of an in-plane force.
 *
 * |F| = √(Fx² + Fy²), share = |F| / W.
 *
 * @source (d) plane statics
 * @example
 * sideForce({ x: 60, y: -80, weight: 2000 }).share // → 0.05
 */
export function sideForce({
  x,
  y,
  weight,
}: {
  /** Sum along x [N]. */
  readonly x: number;
  /** Sum along y [N]. */
  readonly y: number;
  /** Weight on bit [N]. */
  readonly weight: number;
}): SideForce {
  const force = Math.hypot(x, y);
  return { force, azimuth: force > 0 ? Math.atan2(y, x) : 0, share: weight > 0 ? force / weight : 0 };
}
