/** Parts of the face, from the centre outward. */
export type ProfileZone = "cone" | "nose" | "taper" | "shoulder" | "gauge";

/**
 * Half the span of profile angle around level that counts as nose [rad].
 *
 * @source (c) common practice, no source: borders of the zones are debated; 10 degrees is our choice
 */
export const NOSE_HALF_SPAN = (10 * Math.PI) / 180;

/**
 * The zone of a place on the face by its profile angle: cone where it falls away toward the centre, nose about level,
 * shoulder where it curves into the gauge, gauge where it stands at the hole wall. A straight flank is a taper, a
 * straight slope toward the centre is cone however slight.
 *
 * @source (c) IADC dull-grading practice for the names; the borders are common practice
 */
export function profileZone({
  angle,
  straight,
  atWall,
}: {
  /** Profile angle [rad]. */
  readonly angle: number;
  /** Whether the line is straight there; false where that is not known. */
  readonly straight: boolean;
  /** Whether the place stands at the hole wall. */
  readonly atWall: boolean;
}): ProfileZone {
  if (atWall) return "gauge";
  if (straight && angle < 0) return "cone";
  if (angle < -NOSE_HALF_SPAN) return "cone";
  if (angle <= NOSE_HALF_SPAN) return "nose";
  return straight ? "taper" : "shoulder";
}
