import type { RockResponse } from "../ground/index.ts";
import { edgeResponse } from "./edge-response.ts";
import type { EdgeTrace } from "./edge-trace.ts";
import type { Engagement } from "./engage.ts";

/** Forces of the rock on each cutter, one entry per cutter of the layout. */
export interface EdgeLoads {
  /** Normal load of the face that cuts, summed along the edge [N]. */
  readonly cuttingNormal: Float64Array;
  /** Normal load of flat and rubbing chamfer [N]. */
  readonly contactNormal: Float64Array;
  /** Part of the weight that cuts [N]. */
  readonly cuttingAxial: Float64Array;
  /** Part of the weight carried by contact [N]. */
  readonly contactAxial: Float64Array;
  /** Drag against travel [N]. */
  readonly tangential: Float64Array;
  /** Force away from the bit axis; inward is negative [N]. */
  readonly radial: Float64Array;
  /** Torque about the bit axis [N·m]. */
  readonly torque: Float64Array;
  /** In-plane force along x [N]. */
  readonly lateralX: Float64Array;
  /** In-plane force along y [N]. */
  readonly lateralY: Float64Array;
  /** Bending moment of the axial forces about x [N·m]. */
  readonly momentX: Float64Array;
  /** Bending moment of the axial forces about y [N·m]. */
  readonly momentY: Float64Array;
  /** Area that rubs: active flat and rubbing chamfer, along travel [m²]. */
  readonly contactArea: Float64Array;
  /** Width of edge that rubs, in the plane of the axis [m]. */
  readonly contactWidth: Float64Array;
  /** Width of edge in the rock, in the plane of the axis [m]. */
  readonly engagedWidth: Float64Array;
  /** Greatest depth, normal to the edge [m]. */
  readonly deepest: Float64Array;
}

/**
 * Room for the result of `edgeLoads`, to be used again on one trace.
 *
 * @source (d) bookkeeping, no relation
 */
export function emptyEdgeLoads(trace: EdgeTrace): EdgeLoads {
  const row = () => new Float64Array(trace.layout.cutters.length);
  return {
    cuttingNormal: row(),
    contactNormal: row(),
    cuttingAxial: row(),
    contactAxial: row(),
    tangential: row(),
    radial: row(),
    torque: row(),
    lateralX: row(),
    lateralY: row(),
    momentX: row(),
    momentY: row(),
    contactArea: row(),
    contactWidth: row(),
    engagedWidth: row(),
    deepest: row(),
  };
}

/**
 * Sums the force law over every bit of edge in the rock.
 *
 * A bit of edge under slope angle τ is db = dr / cos τ wide and h = h_z cos τ deep. The chamfer takes the lowest
 * h_c = min(h, chamfer height), the sharp face the rest, and a flat of length l adds σ_c min(l, κ h) db with its
 * friction μ. Normal loads act along the edge's own normal in the plane of the axis, so that cone and gauge cutters push
 * sideways the way they do; drag acts against the travel of that point, at its own azimuth.
 *
 * @throws RangeError when a constant of the rock is negative or a face leans too far
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled; growth of contact with depth
 *   after (a) Detournay, Richard & Shepherd 2008, Int. J. Rock Mech. Min. Sci. 45:1347-1360
 */
export function edgeLoads(
  trace: EdgeTrace,
  engagement: Engagement,
  response: RockResponse,
  into: EdgeLoads = emptyEdgeLoads(trace),
): EdgeLoads {
  for (const row of Object.values(into)) row.fill(0);
  const { contactStress, flatFriction, kappa } = response;
  const laws = trace.layout.cutters.map((cutter) => edgeResponse(cutter, response));
  // Taken out of their objects once: the loop below runs for every pass at every step of every solution.
  const { firstPass, cellRadius, cellWidth, cutter, slope, cosSlope, cosAzimuth, sinAzimuth } = trace;
  const { flatLength, chamferHeight } = trace;
  const { depth: takenDepth } = engagement;
  const { cuttingNormal, contactNormal, cuttingAxial, contactAxial, tangential, radial, torque } = into;
  const { lateralX, lateralY, momentX, momentY, contactArea, contactWidth, engagedWidth, deepest } = into;
  for (let cell = 0; cell < cellRadius.length; cell++) {
    const radius = cellRadius[cell];
    const to = firstPass[cell + 1];
    for (let k = firstPass[cell]; k < to; k++) {
      const taken = takenDepth[k];
      if (!(taken > 0)) continue;
      const by = cutter[k];
      const law = laws[by];
      const cosine = cosSlope[k];
      const width = cellWidth / cosine;
      const depth = taken * cosine;
      const chamfered = Math.min(depth, chamferHeight[k]);
      const flat = Math.min(flatLength[k], kappa * depth);
      // A bevel that cuts as a part of the face has no length along travel and counts with the face.
      const bevel = law.chamferLength > 0 ? chamfered : 0;
      const cutting = law.faceNormal * (depth - bevel) * width;
      const onChamfer = law.chamferNormal * bevel * width;
      const onFlat = contactStress * flat * width;
      const contact = onChamfer + onFlat;
      const drag = (law.faceDrag * (depth - bevel) + law.chamferDrag * bevel) * width + flatFriction * onFlat;
      const axial = (cutting + contact) * cosine;
      const outward = axial * slope[k];
      cuttingNormal[by] += cutting;
      contactNormal[by] += contact;
      cuttingAxial[by] += cutting * cosine;
      contactAxial[by] += contact * cosine;
      tangential[by] += drag;
      radial[by] += outward;
      torque[by] += radius * drag;
      lateralX[by] += outward * cosAzimuth[k] + drag * sinAzimuth[k];
      lateralY[by] += outward * sinAzimuth[k] - drag * cosAzimuth[k];
      momentX[by] -= radius * sinAzimuth[k] * axial;
      momentY[by] += radius * cosAzimuth[k] * axial;
      engagedWidth[by] += width;
      if (contact > 0) {
        contactWidth[by] += width;
        contactArea[by] += (flat + law.chamferLength * bevel) * width;
      }
      if (depth > deepest[by]) deepest[by] = depth;
    }
  }
  return into;
}
