import type { RockResponse } from "../ground/index.ts";
import { edgeResponses } from "./edge-response.ts";
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
  const { contactStress, flatFriction, kappa } = response;
  const laws = lawTable(trace, response);
  // All sums of one cutter stand side by side, and all of its law: a pass then reaches into few arrays, and the loop below
  // runs for every pass at every step of every solution.
  const sums = new Float64Array(trace.layout.cutters.length * SUMS);
  const { firstPass, cellRadius, cellWidth, cutter, slope, cosSlope, cosAzimuth, sinAzimuth } = trace;
  const { flatLength, chamferHeight } = trace;
  const { depth: takenDepth } = engagement;
  for (let cell = 0; cell < cellRadius.length; cell++) {
    const radius = cellRadius[cell];
    const to = firstPass[cell + 1];
    for (let k = firstPass[cell]; k < to; k++) {
      const taken = takenDepth[k];
      if (!(taken > 0)) continue;
      const law = cutter[k] * LAW;
      const sum = cutter[k] * SUMS;
      const cosine = cosSlope[k];
      const width = cellWidth / cosine;
      const depth = taken * cosine;
      const chamferLength = laws[law + CHAMFER_LENGTH];
      // A bevel that cuts as a part of the face has no length along travel and counts with the face.
      const bevel = chamferLength > 0 ? Math.min(depth, chamferHeight[k]) : 0;
      const flat = Math.min(flatLength[k], kappa * depth);
      const cutting = laws[law + FACE_NORMAL] * (depth - bevel) * width;
      const onFlat = contactStress * flat * width;
      const contact = laws[law + CHAMFER_NORMAL] * bevel * width + onFlat;
      const faceAndBevelDrag = laws[law + FACE_DRAG] * (depth - bevel) + laws[law + CHAMFER_DRAG] * bevel;
      const drag = faceAndBevelDrag * width + flatFriction * onFlat;
      const axial = (cutting + contact) * cosine;
      const outward = axial * slope[k];
      const cosAngle = cosAzimuth[k];
      const sinAngle = sinAzimuth[k];
      sums[sum + CUTTING_NORMAL] += cutting;
      sums[sum + CONTACT_NORMAL] += contact;
      sums[sum + CUTTING_AXIAL] += cutting * cosine;
      sums[sum + CONTACT_AXIAL] += contact * cosine;
      sums[sum + TANGENTIAL] += drag;
      sums[sum + RADIAL] += outward;
      sums[sum + TORQUE] += radius * drag;
      sums[sum + LATERAL_X] += outward * cosAngle + drag * sinAngle;
      sums[sum + LATERAL_Y] += outward * sinAngle - drag * cosAngle;
      sums[sum + MOMENT_X] -= radius * sinAngle * axial;
      sums[sum + MOMENT_Y] += radius * cosAngle * axial;
      sums[sum + ENGAGED_WIDTH] += width;
      if (contact > 0) {
        sums[sum + CONTACT_WIDTH] += width;
        sums[sum + CONTACT_AREA] += (flat + chamferLength * bevel) * width;
      }
      if (depth > sums[sum + DEEPEST]) sums[sum + DEEPEST] = depth;
    }
  }
  return takeSums(sums, into);
}

/**
 * Constants of one law in the table of `lawTable` [-].
 *
 * @source (d) bookkeeping, no relation
 */
export const LAW = 5;
// Places of the constants in the row of a law.
const FACE_DRAG = 0;
const FACE_NORMAL = 1;
const CHAMFER_DRAG = 2;
const CHAMFER_NORMAL = 3;
const CHAMFER_LENGTH = 4;

/**
 * The force laws of all cutters in one rock, five numbers for each: drag and normal of the face, drag, normal and length
 * of the chamfer.
 *
 * @throws RangeError when a constant of the rock is negative or a face leans too far
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled; see `edgeResponse`
 */
export function lawTable({ layout }: EdgeTrace, response: RockResponse): Float64Array {
  const table = new Float64Array(layout.cutters.length * LAW);
  edgeResponses(layout.cutters, response).forEach((law, cutter) => {
    const row = cutter * LAW;
    table[row + FACE_DRAG] = law.faceDrag;
    table[row + FACE_NORMAL] = law.faceNormal;
    table[row + CHAMFER_DRAG] = law.chamferDrag;
    table[row + CHAMFER_NORMAL] = law.chamferNormal;
    table[row + CHAMFER_LENGTH] = law.chamferLength;
  });
  return table;
}

/**
 * Sums of one cutter, as `takeSums` hands them out [-].
 *
 * @source (d) bookkeeping, no relation
 */
export const SUMS = 15;
// Places of the sums in the row of a cutter.
const CUTTING_NORMAL = 0;
const CONTACT_NORMAL = 1;
const CUTTING_AXIAL = 2;
const CONTACT_AXIAL = 3;
const TANGENTIAL = 4;
const RADIAL = 5;
const TORQUE = 6;
const LATERAL_X = 7;
const LATERAL_Y = 8;
const MOMENT_X = 9;
const MOMENT_Y = 10;
const ENGAGED_WIDTH = 11;
const CONTACT_WIDTH = 12;
const CONTACT_AREA = 13;
const DEEPEST = 14;

/**
 * Hands out sums that stand cutter by cutter, fifteen for each in the order of their places above.
 *
 * @source (d) bookkeeping, no relation
 */
export function takeSums(sums: Float64Array, into: EdgeLoads): EdgeLoads {
  for (let cutter = 0, sum = 0; sum < sums.length; cutter++, sum += SUMS) {
    into.cuttingNormal[cutter] = sums[sum + CUTTING_NORMAL];
    into.contactNormal[cutter] = sums[sum + CONTACT_NORMAL];
    into.cuttingAxial[cutter] = sums[sum + CUTTING_AXIAL];
    into.contactAxial[cutter] = sums[sum + CONTACT_AXIAL];
    into.tangential[cutter] = sums[sum + TANGENTIAL];
    into.radial[cutter] = sums[sum + RADIAL];
    into.torque[cutter] = sums[sum + TORQUE];
    into.lateralX[cutter] = sums[sum + LATERAL_X];
    into.lateralY[cutter] = sums[sum + LATERAL_Y];
    into.momentX[cutter] = sums[sum + MOMENT_X];
    into.momentY[cutter] = sums[sum + MOMENT_Y];
    into.contactArea[cutter] = sums[sum + CONTACT_AREA];
    into.contactWidth[cutter] = sums[sum + CONTACT_WIDTH];
    into.engagedWidth[cutter] = sums[sum + ENGAGED_WIDTH];
    into.deepest[cutter] = sums[sum + DEEPEST];
  }
  return into;
}
