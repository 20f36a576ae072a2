import { type EdgeLoads, emptyEdgeLoads } from "../edge-loads.ts";
import type { EdgeTrace } from "../edge-trace.ts";
import type { Engagement } from "../engage.ts";
import type { BitInBeds } from "./bit-in-beds.ts";

/** The forces of `edgeLoads` with the parts that balance and self-excitation ask for. */
export interface BedLoads extends EdgeLoads {
  /** The part of the in-plane force along x that acts away from the axis [N]. */
  readonly radialX: Float64Array;
  /** The part of the in-plane force along y that acts away from the axis [N]. */
  readonly radialY: Float64Array;
  /** Torque of flats and chamfers that only rub [N·m]. */
  readonly contactTorque: Float64Array;
}

/** Where the bit stands in the ground. */
export interface BitPlace {
  /** Depth of the origin of the bit frame [m]. */
  readonly depth: number;
  /** How far the bit's x axis has turned from the direction in which the beds dip [rad]. */
  readonly azimuth: number;
}

/**
 * Room for the result of `bedLoads`, to be used again on one trace.
 *
 * @source (d) bookkeeping, no relation
 */
export function emptyBedLoads(trace: EdgeTrace): BedLoads {
  const row = () => new Float64Array(trace.layout.cutters.length);
  return { ...emptyEdgeLoads(trace), radialX: row(), radialY: row(), contactTorque: row() };
}

/**
 * Sums the force law over every bit of edge in the rock, each in the bed it stands in.
 *
 * At one moment the edge at height ζ cuts the layer from Z + ζ - h up to Z + ζ, Z the depth of the bit and h what it
 * takes. A layer within one bed answers with that bed's law; one that a boundary divides answers with each law in
 * proportion to the share of the layer that lies in it, so that the forces change without a jump as the bit goes down.
 * Beds that dip by δ lie deeper by r tan δ cos a at angle a from the direction of dip. In one bed alone the sums are those
 * of `edgeLoads`. The engagement is that of steady advance: the hole keeps the shape it would have at this advance.
 *
 * Nothing is allocated when `into` is given.
 *
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled, summed over the traced edges;
 *   (d) the share of a layer in each bed
 */
export function bedLoads(
  { trace, laws, dipAngle }: BitInBeds,
  engagement: Engagement,
  place: BitPlace,
  into: BedLoads = emptyBedLoads(trace),
): BedLoads {
  const { cuttingNormal, contactNormal, cuttingAxial, contactAxial, tangential, radial, torque } = into;
  const { lateralX, lateralY, momentX, momentY, contactArea, contactWidth, engagedWidth, deepest } = into;
  const { radialX, radialY, contactTorque } = into;
  cuttingNormal.fill(0);
  contactNormal.fill(0);
  cuttingAxial.fill(0);
  contactAxial.fill(0);
  tangential.fill(0);
  radial.fill(0);
  torque.fill(0);
  lateralX.fill(0);
  lateralY.fill(0);
  momentX.fill(0);
  momentY.fill(0);
  contactArea.fill(0);
  contactWidth.fill(0);
  engagedWidth.fill(0);
  deepest.fill(0);
  radialX.fill(0);
  radialY.fill(0);
  contactTorque.fill(0);
  // Taken out of their objects once: the loop below runs for every pass at every step of every solution.
  const { firstPass, cellRadius, cellWidth, cutter, height, slope, cosSlope, cosAzimuth, sinAzimuth } = trace;
  const { flatLength, chamferHeight } = trace;
  const { depth: takenDepth } = engagement;
  const { faceDrag, faceNormal, chamferDrag, chamferNormal, chamferLength } = laws;
  const { contactStress, flatFriction, kappa, top } = laws;
  const cutters = trace.layout.cutters.length;
  const lastBed = top.length - 1;
  const origin = place.depth;
  const alongDip = Math.tan(dipAngle) * Math.cos(place.azimuth);
  const acrossDip = Math.tan(dipAngle) * Math.sin(place.azimuth);
  let bed = 0;
  for (let cell = 0; cell < cellRadius.length; cell++) {
    const radius = cellRadius[cell];
    const to = firstPass[cell + 1];
    for (let k = firstPass[cell]; k < to; k++) {
      const taken = takenDepth[k];
      if (!(taken > 0)) continue;
      const by = cutter[k];
      const cosine = cosSlope[k];
      const width = cellWidth / cosine;
      const depth = taken * cosine;
      const chamfered = Math.min(depth, chamferHeight[k]);
      const low = origin + height[k] - radius * (alongDip * cosAzimuth[k] - acrossDip * sinAzimuth[k]);
      const high = low - taken;
      while (bed < lastBed && top[bed + 1] < low) bed++;
      while (top[bed] >= low) bed--;
      let cutting = 0;
      let contact = 0;
      let contactDrag = 0;
      let drag = 0;
      let area = 0;
      let floor = low;
      for (let at = bed; ; at--) {
        const above = top[at];
        const ends = above <= high;
        const share = ends ? (at === bed ? 1 : (floor - high) / taken) : (floor - above) / taken;
        const law = at * cutters + by;
        const flat = Math.min(flatLength[k], kappa[at] * depth);
        // A bevel that cuts as a part of the face has no length along travel and counts with the face.
        const bevel = chamferLength[law] > 0 ? chamfered : 0;
        const onFlat = contactStress[at] * flat * width;
        const bevelDrag = chamferDrag[law] * bevel * width;
        const rubs = bevelDrag + flatFriction[at] * onFlat;
        cutting += share * (faceNormal[law] * (depth - bevel) * width);
        contact += share * (chamferNormal[law] * bevel * width + onFlat);
        contactDrag += share * rubs;
        drag += share * (faceDrag[law] * (depth - bevel) * width + rubs);
        area += share * ((flat + chamferLength[law] * bevel) * width);
        if (ends) break;
        floor = above;
      }
      const axial = (cutting + contact) * cosine;
      const outward = axial * slope[k];
      const outwardX = outward * cosAzimuth[k];
      const outwardY = outward * sinAzimuth[k];
      cuttingNormal[by] += cutting;
      contactNormal[by] += contact;
      cuttingAxial[by] += cutting * cosine;
      contactAxial[by] += contact * cosine;
      tangential[by] += drag;
      radial[by] += outward;
      torque[by] += radius * drag;
      contactTorque[by] += radius * contactDrag;
      radialX[by] += outwardX;
      radialY[by] += outwardY;
      lateralX[by] += outwardX + drag * sinAzimuth[k];
      lateralY[by] += outwardY - drag * cosAzimuth[k];
      momentX[by] -= radius * sinAzimuth[k] * axial;
      momentY[by] += radius * cosAzimuth[k] * axial;
      engagedWidth[by] += width;
      if (contact > 0) {
        contactWidth[by] += width;
        contactArea[by] += area;
      }
      if (depth > deepest[by]) deepest[by] = depth;
    }
  }
  return into;
}
