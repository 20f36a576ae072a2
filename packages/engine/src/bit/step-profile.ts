import { commonPractice, type Finding, requirePositive } from "../quantity/index.ts";
import { type ProfilePiece, pieceEnd } from "./profile-piece.ts";
import { sayLength } from "./say-length.ts";

const DEGREE = Math.PI / 180;

/** Steepest riser between two steps [rad]: (c) common practice, no source. */
const RISER_ANGLE = 60 * DEGREE;
/** Usual number of steps of a small drag bit: (c) common practice, no source. */
const USUAL_STEPS = 2;
/** Usual height of one step as a share of the hole diameter: (c) common practice, no source. */
const USUAL_STEP_HEIGHT = 0.06;

/** What the stepped face needs to know. */
export interface StepSpec {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  /** The sharpest corner that can be cut: the radius of the face [m]. */
  readonly leastCorner: number;
  /** Radius of the curve from the face into the gauge [m]. */
  readonly shoulderCurve?: number;
  /** Steps between centre and gauge [-]. */
  readonly steps?: number;
  /** Height of one step [m]. */
  readonly stepHeight?: number;
  /** Height from the nose to the start of the gauge; sets the height of one step [m]. */
  readonly height?: number;
  /** Remarks are added here. */
  readonly findings: Finding[];
}

/**
 * The face of a step bit: level treads, the centre one deepest, joined by risers with rounded corners, and a shoulder.
 * Each riser takes the radius 2c sin ρ + l cos ρ for its two corners of radius c and its straight part l at angle ρ, and
 * climbs 2c (1 - cos ρ) + l sin ρ. Where the treads leave no room for all risers, steps are left out, with a finding.
 *
 * @source (d) geometry; usual measures are common practice
 */
export function stepPieces({ holeDiameter, leastCorner, findings, ...spec }: StepSpec): ProfilePiece[] {
  const shoulder = Math.max(spec.shoulderCurve ?? leastCorner, leastCorner);
  const faceRadius = holeDiameter / 2 - shoulder;
  const asked = spec.steps ?? USUAL_STEPS;
  requirePositive({ steps: asked });
  let steps = Math.round(asked);
  while (steps > 0 && riser(stepHeight(steps)).run >= faceRadius / (steps + 0.5)) steps--;
  if (steps < asked) {
    findings.push({
      code: "fewer-steps",
      severity: "note",
      where: "profile",
      message: `A hole of ${sayLength(holeDiameter)} leaves room for ${steps} steps with this cutter, not ${asked}.`,
      value: asked,
      limit: steps,
      unit: "-",
      source: commonPractice(),
    });
  }
  const { angle, corner, straight, run } = riser(stepHeight(Math.max(1, steps)));
  const pieces: ProfilePiece[] = [];
  let end = { radius: 0, height: 0, angle: 0 };
  const add = (to: number, length: number) => {
    if (!(length > 1e-12)) return;
    const piece = { radius: end.radius, height: end.height, startAngle: end.angle, endAngle: to, length };
    pieces.push(piece);
    end = pieceEnd(piece);
  };
  const pitch = faceRadius / (steps + 1);
  for (let step = 1; step <= steps; step++) {
    add(0, pitch * step - run / 2 - end.radius);
    add(angle, corner * angle);
    add(angle, straight);
    add(0, corner * angle);
  }
  add(0, faceRadius - end.radius);
  add(Math.PI / 2, (shoulder * Math.PI) / 2);
  return pieces;

  function stepHeight(count: number): number {
    const fromTotal = spec.height === undefined ? undefined : Math.max(0, spec.height - shoulder) / count;
    return spec.stepHeight ?? fromTotal ?? USUAL_STEP_HEIGHT * holeDiameter;
  }

  function riser(height: number) {
    requirePositive({ stepHeight: height });
    const curved = 2 * leastCorner;
    const steepest = Math.acos(Math.max(-1, 1 - height / curved));
    const riserAngle = Math.min(RISER_ANGLE, steepest);
    const flatPart = Math.max(0, (height - curved * (1 - Math.cos(riserAngle))) / Math.sin(riserAngle));
    return {
      angle: riserAngle,
      corner: leastCorner,
      straight: flatPart,
      run: curved * Math.sin(riserAngle) + flatPart * Math.cos(riserAngle),
    };
  }
}
