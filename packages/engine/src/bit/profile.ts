import {
  bracketedRoot,
  commonPractice,
  type Finding,
  requireBetween,
  requireNotNegative,
  requirePositive,
} from "../quantity/index.ts";
import { type ProfilePiece, pieceEnd } from "./profile-piece.ts";
import { sayLength } from "./say-length.ts";
import { stepPieces } from "./step-profile.ts";

const DEGREE = Math.PI / 180;
const MM = 1e-3;

/** Shapes of the line that the cutting tips lie on, from fishtail-like to long. */
export type ProfileShape = "flat" | "step" | "short parabolic" | "medium parabolic" | "long parabolic";

/** A profile by a few measures; what is left out takes the usual value of its shape. */
export interface ProfileSpec {
  readonly shape: ProfileShape;
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  /** The sharpest outer corner that can be cut: the radius of the face [m]. */
  readonly leastCorner: number;
  /** Angle of the cone from the level [rad]. */
  readonly coneAngle?: number;
  /** Radius of the nose from the bit axis as a share of the bit radius [-]. */
  readonly noseRadiusShare?: number;
  /** Radius of the curve over the nose [m]. */
  readonly noseCurve?: number;
  /** Radius of the curve from the face into the gauge [m]. */
  readonly shoulderCurve?: number;
  /** Height from the nose to the start of the gauge [m]. */
  readonly height?: number;
  /** Length of the gauge [m]. */
  readonly gaugeLength?: number;
  /** Steps between centre and gauge, for the step shape [-]. */
  readonly steps?: number;
  /** Height of one step [m]. */
  readonly stepHeight?: number;
}

/** The line that the cutting tips lie on, in the half-plane through the bit axis: nose at height 0, positive down-hole. */
export interface BitProfile {
  readonly shape: ProfileShape;
  /** Radius of the hole, where the gauge stands [m]. */
  readonly holeRadius: number;
  /** From the bit axis outward and up the gauge; each starts where and as steep as the one before it ends. */
  readonly pieces: readonly ProfilePiece[];
  /** Length along the line from the axis to the start of the gauge [m]. */
  readonly gaugeStart: number;
  /** Height from the nose to the start of the gauge [m]. */
  readonly height: number;
  readonly findings: readonly Finding[];
}

/** The usual measures of a rounded shape, lengths as shares of the hole diameter. */
interface UsualMeasures {
  readonly coneAngle: number;
  readonly noseRadiusShare: number;
  readonly noseCurve: number;
  readonly shoulderCurve: number;
  readonly flankAngle: number;
}

/** (c) common practice, no source: cone 10 to 25 degrees, nose at 0.30 to 0.40 D, shoulder curve 0.10 to 0.20 D. */
const USUAL: Readonly<Record<Exclude<ProfileShape, "step">, UsualMeasures>> = {
  flat: { coneAngle: 0, noseRadiusShare: 0.75, noseCurve: 0.1, shoulderCurve: 0.08, flankAngle: 0 },
  "short parabolic": {
    coneAngle: 12 * DEGREE,
    noseRadiusShare: 0.76,
    noseCurve: 0.12,
    shoulderCurve: 0.12,
    flankAngle: 45 * DEGREE,
  },
  "medium parabolic": {
    coneAngle: 15 * DEGREE,
    noseRadiusShare: 0.6,
    noseCurve: 0.12,
    shoulderCurve: 0.15,
    flankAngle: 55 * DEGREE,
  },
  "long parabolic": {
    coneAngle: 18 * DEGREE,
    noseRadiusShare: 0.55,
    noseCurve: 0.1,
    shoulderCurve: 0.12,
    flankAngle: 70 * DEGREE,
  },
};

/**
 * Usual length of the gauge on small bits [m].
 *
 * @source (c) common practice, no source: 1/2 to 1 in
 */
export const USUAL_GAUGE_LENGTH = 19.05 * MM;

const SHOULDER_STEEPEST = Math.PI / 2;
const FLANK_STEEPEST = 85 * DEGREE;

/**
 * The profile of a bit from a few measures: cone, nose, flank, shoulder and gauge as straight lines and arcs that join
 * without a corner. The profile angle is -γ in the cone, 0 at the nose, 90 degrees at gauge.
 *
 * The flank follows from the rest: with nose radius r, nose curve a, shoulder curve b, flank angle α and bit radius R,
 * its length is (R - r - a sin α - b (1 - sin α))/cos α. Where a height is asked for, α is found for it. A measure that
 * cannot be met is brought as near as it goes, with a finding.
 *
 * @throws RangeError when a size is not positive, or the corner is larger than half the bit radius
 * @source (d) geometry; usual measures are common practice
 */
export function bitProfile(spec: ProfileSpec): BitProfile {
  const { shape, holeDiameter, leastCorner } = spec;
  requirePositive({ holeDiameter, leastCorner });
  requireNotNegative({ gaugeLength: spec.gaugeLength ?? USUAL_GAUGE_LENGTH });
  const holeRadius = holeDiameter / 2;
  requireBetween("leastCorner", leastCorner, 0, holeRadius / 2);
  const findings: Finding[] = [];
  const face = shape === "step" ? stepPieces({ ...spec, findings }) : roundedPieces({ ...spec, shape, findings });
  const faceEnd = face.reduce<ReturnType<typeof pieceEnd>>((_, piece) => pieceEnd(piece), {
    radius: 0,
    height: 0,
    angle: 0,
  });
  const gauge: ProfilePiece = {
    radius: holeRadius,
    height: faceEnd.height,
    startAngle: SHOULDER_STEEPEST,
    endAngle: SHOULDER_STEEPEST,
    length: spec.gaugeLength ?? USUAL_GAUGE_LENGTH,
  };
  // The deepest point of smooth pieces is one of their joints or where an arc passes level.
  const deepest = Math.max(0, ...face.flatMap((piece) => [pieceEnd(piece).height, levelHeight(piece)]));
  const pieces = [...face, gauge].map((piece) => ({ ...piece, height: piece.height - deepest }));
  return {
    shape,
    holeRadius,
    pieces,
    gaugeStart: face.reduce((sum, piece) => sum + piece.length, 0),
    height: deepest - faceEnd.height,
    findings,
  };
}

/** Height at which an arc passes level, or its start where it does not. */
function levelHeight({ height, startAngle, endAngle, length }: ProfilePiece): number {
  if (startAngle * endAngle >= 0 || length === 0) return height;
  const curvature = (endAngle - startAngle) / length;
  return height + (1 - Math.cos(startAngle)) / curvature;
}

function roundedPieces(
  spec: ProfileSpec & { readonly shape: Exclude<ProfileShape, "step">; readonly findings: Finding[] },
): ProfilePiece[] {
  const { holeDiameter, leastCorner, findings } = spec;
  const usual = USUAL[spec.shape];
  const holeRadius = holeDiameter / 2;
  const askedCone = spec.coneAngle ?? usual.coneAngle;
  requireBetween("coneAngle", askedCone, 0, 60 * DEGREE);
  requireBetween("noseRadiusShare", spec.noseRadiusShare ?? usual.noseRadiusShare, 0, 1);
  const askedShoulder =
    spec.shoulderCurve ?? (spec.shape === "flat" ? spec.height : undefined) ?? usual.shoulderCurve * holeDiameter;
  const shoulderCurve = Math.max(askedShoulder, leastCorner);
  if (askedShoulder < leastCorner - 1e-9) {
    findings.push(
      note(
        "shoulder-sharper-than-cutter",
        `A shoulder curve of ${sayLength(askedShoulder)} is sharper than the face of the cutter: ${sayLength(leastCorner)} is taken.`,
        askedShoulder,
        leastCorner,
      ),
    );
  }
  const askedNose = (spec.noseRadiusShare ?? usual.noseRadiusShare) * holeRadius;
  const noseRadius = Math.min(askedNose, holeRadius - shoulderCurve);
  if (noseRadius < askedNose - 1e-9 && spec.noseRadiusShare !== undefined) {
    findings.push(
      note(
        "nose-drawn-in",
        `The nose is drawn in to ${sayLength(noseRadius)} from the axis to leave room for the shoulder curve.`,
        askedNose,
        noseRadius,
      ),
    );
  }
  const room = holeRadius - noseRadius;
  const noseCurve = Math.min(spec.noseCurve ?? usual.noseCurve * holeDiameter, room);
  // A nose so near the axis that its curve passes over it leaves room for a flatter cone only.
  const coneAngle = Math.min(askedCone, Math.asin(Math.min(1, noseRadius / noseCurve)));
  const flankLength = (angle: number) =>
    Math.max(
      0,
      (room - noseCurve * Math.sin(angle) - shoulderCurve * (1 - Math.sin(angle))) / Math.max(Math.cos(angle), 1e-9),
    );
  const height = (angle: number) =>
    noseCurve * (1 - Math.cos(angle)) + flankLength(angle) * Math.sin(angle) + shoulderCurve * Math.cos(angle);
  const flankAngle = spec.height === undefined || spec.shape === "flat" ? usual.flankAngle : flankFor(spec.height);
  return joined([
    { angle: -coneAngle, length: (noseRadius - noseCurve * Math.sin(coneAngle)) / Math.cos(coneAngle) },
    { angle: flankAngle, length: noseCurve * (coneAngle + flankAngle) },
    { angle: flankAngle, length: flankLength(flankAngle) },
    { angle: SHOULDER_STEEPEST, length: shoulderCurve * (SHOULDER_STEEPEST - flankAngle) },
  ]);

  function flankFor(asked: number): number {
    const [lowest, highest] = [height(0), height(FLANK_STEEPEST)];
    if (asked <= lowest || asked >= highest) {
      const got = asked <= lowest ? lowest : highest;
      if (Math.abs(got - asked) > 1e-6) {
        findings.push(
          note(
            "profile-height-out-of-reach",
            `A height of ${sayLength(asked)} cannot be had with this nose and shoulder: ${sayLength(got)} is taken.`,
            asked,
            got,
          ),
        );
      }
      return asked <= lowest ? 0 : FLANK_STEEPEST;
    }
    return bracketedRoot({ f: (angle) => height(angle) - asked, low: 0, high: FLANK_STEEPEST, residual: 1e-9 });
  }

  function note(code: string, message: string, value: number, limit: number): Finding {
    return { code, severity: "note", where: "profile", message, value, limit, unit: "m", source: commonPractice() };
  }
}

/** Pieces laid end to end from the bit axis; each turns evenly from the angle before it to its own. */
function joined(parts: readonly { readonly angle: number; readonly length: number }[]): ProfilePiece[] {
  const pieces: ProfilePiece[] = [];
  let end = { radius: 0, height: 0, angle: parts[0]?.angle ?? 0 };
  for (const { angle, length } of parts) {
    if (!(length > 1e-9)) continue;
    const piece = { radius: end.radius, height: end.height, startAngle: end.angle, endAngle: angle, length };
    pieces.push(piece);
    end = pieceEnd(piece);
  }
  return pieces;
}
