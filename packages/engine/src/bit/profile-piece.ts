/** A straight line or an arc of the profile: the profile angle runs evenly from one end to the other. */
export interface ProfilePiece {
  /** Radius where it starts [m]. */
  readonly radius: number;
  /** Height where it starts, positive down-hole [m]. */
  readonly height: number;
  /** Profile angle where it starts [rad]. */
  readonly startAngle: number;
  /** Profile angle where it ends; the same on a straight line [rad]. */
  readonly endAngle: number;
  /** Length along the line [m]. */
  readonly length: number;
}

/** A place on the profile. */
export interface ProfilePlace {
  /** Distance from the bit axis [m]. */
  readonly radius: number;
  /** Height along the bit axis, 0 at the nose, positive down-hole [m]. */
  readonly height: number;
  /** Profile angle: negative in the cone, 0 at the nose, π/2 at gauge [rad]. */
  readonly angle: number;
}

/**
 * The place at a length along a piece: r = r₀ + ∫ cos α ds, z = z₀ - ∫ sin α ds.
 *
 * @source (d) geometry of a line of even curvature
 */
export function alongPiece(piece: ProfilePiece, run: number): ProfilePlace {
  const { radius, height, startAngle, endAngle, length } = piece;
  // The end is exactly as steep as named, so that a straight line after it stays straight.
  const angle = run < length ? startAngle + ((endAngle - startAngle) * run) / length : endAngle;
  if (startAngle === endAngle) {
    return { radius: radius + run * Math.cos(angle), height: height - run * Math.sin(angle), angle };
  }
  const curve = length / (endAngle - startAngle);
  return {
    radius: radius + curve * (Math.sin(angle) - Math.sin(startAngle)),
    height: height + curve * (Math.cos(angle) - Math.cos(startAngle)),
    angle,
  };
}

/**
 * Where a piece ends.
 *
 * @source (d) geometry of a line of even curvature
 */
export function pieceEnd(piece: ProfilePiece): ProfilePlace {
  return alongPiece(piece, piece.length);
}
