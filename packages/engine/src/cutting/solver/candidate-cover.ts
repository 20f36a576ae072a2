import { NARROWEST_RING, type StationedFace } from "../../bit/index.ts";

/** Overlap of the swept radii of neighbours under which a shop's errors could open a ring, as share of a face [-]. */
export const LEAST_SWEEP_OVERLAP = 0.08;

/**
 * Overlap of neighbours along the profile that every layout keeps, as share of a face [-]. Faces that overlap by it leave
 * a ridge of a quarter of the face between their tracks, well under the usual exposure.
 *
 * @source (c) no source: 0.15, our choice; ridge D/2 (1 - √(1 - 0.85²))
 */
export const LEAST_FACE_OVERLAP = 0.15;

/** A face as far as covering asks after it. */
export type CoveringFace = Pick<StationedFace, "arc" | "pose" | "swept">;

/** What the tracks of a candidate lack of covering the hole, as shares of a face. */
export interface CoverShortfall {
  /** What the swept radii of neighbours lack of their overlap, over all neighbours [-]. */
  readonly sweeps: number;
  /** What neighbours along the profile lack of theirs, over all neighbours [-]. */
  readonly faces: number;
  /** The widest distance between the centres of neighbours along the profile [-]. */
  readonly widest: number;
  /** The two cutters that stand so far apart, by their place, the inner first. */
  readonly between: readonly [number, number];
}

/**
 * What is lacking of tracks that cover the hole: swept radii that overlap from the axis to the wall, and neighbours along
 * the profile whose faces overlap.
 *
 * @source (d) geometry of the faces turned into one plane
 */
export function coverShortfall(
  faces: readonly CoveringFace[],
  {
    faceDiameter,
    mostApart,
  }: {
    /** Diameter of a face [m]. */
    readonly faceDiameter: number;
    /** How far the centres of neighbours along the profile may stand apart, as share of a face [-]. */
    readonly mostApart: number;
  },
): CoverShortfall {
  const places = faces.map((_, at) => at);
  let sweeps = 0;
  let reach = 0;
  for (const at of places.sort((a, b) => faces[a].swept.from - faces[b].swept.from)) {
    const { from, to } = faces[at].swept;
    // The first starts at the axis or leaves a core; each later one has to reach back over what is covered.
    const lacks = from - (reach === 0 ? 0 : reach - LEAST_SWEEP_OVERLAP * faceDiameter);
    if (lacks > NARROWEST_RING) sweeps += lacks;
    reach = Math.max(reach, to);
  }
  let lacking = 0;
  let widest = 0;
  let between: readonly [number, number] = [0, 0];
  places.sort((a, b) => faces[a].arc - faces[b].arc);
  for (let k = 1; k < places.length; k++) {
    const [inner, outer] = [faces[places[k - 1]].pose, faces[places[k]].pose];
    const apart = Math.hypot(outer.radius - inner.radius, outer.height - inner.height) / faceDiameter;
    lacking += Math.max(0, apart - mostApart);
    if (apart > widest) {
      widest = apart;
      between = [places[k - 1], places[k]];
    }
  }
  return { sweeps: sweeps / faceDiameter, faces: lacking, widest, between };
}
