import type { PlacedCutter } from "../bit/index.ts";
import type { RockResponse } from "../ground/index.ts";
import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import { cuttingRatio } from "./cutting-ratio.ts";

/** What a cutter's edge asks of this rock for each metre of depth and of width. */
export interface EdgeResponse {
  /** Force along travel of the sharp face [Pa]. */
  readonly faceDrag: number;
  /** Force normal to travel of the sharp face [Pa]. */
  readonly faceNormal: number;
  /** Force along travel of the chamfer [Pa]. */
  readonly chamferDrag: number;
  /** Force normal to travel of the chamfer [Pa]. */
  readonly chamferNormal: number;
  /** Length of the chamfer along travel for each metre of its depth [-]. */
  readonly chamferLength: number;
}

/**
 * The force law of one cutter in one rock, apart from its flat.
 *
 * Sharp face: drag ε, normal ζ ε with ζ = tan(β + ψ). Chamfer, whose own rake is β + χ: it cuts while
 * ε tan(β + χ + ψ) is the lesser normal load and rubs under the contact stress, σ_c tan(β + χ), once that is; its drag
 * follows at max(μ, cot(β + χ + ψ)).
 *
 * Two floors are set under the chamfer, because a bevel cannot make rock come off for less than the sharp face does.
 * Its normal load is at least ζ ε: the contact limit speaks of the stress on a bevel's projection along travel and falls
 * to nothing as the bevel does. Its drag is at least ε plus μ times the normal load beyond ζ ε: the rock under the
 * bevel leaves the hole too, and what presses beyond cutting rubs. So every state of a bevelled cutter lies on the
 * friction line E = E0 + μ S, right of the cutting point. For a 45° bevel the normal load is untouched by both.
 *
 * @throws RangeError when a constant of the rock is negative or the face leans so far that β + ψ reaches 90°
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled, for face and friction line;
 *   (d) the chamfer as a face of its own rake with the two floors
 */
export function edgeResponse(cutter: PlacedCutter, response: RockResponse): EdgeResponse {
  const { backRake, chamferAngle } = cutter;
  const { specificEnergy, contactStress, faceFriction, flatFriction, kappa } = response;
  requirePositive({ specificEnergy });
  requireNotNegative({ contactStress, faceFriction, flatFriction, kappa });
  const faceNormal = specificEnergy * cuttingRatio({ backRake, faceFriction });
  const ownRake = backRake + chamferAngle;
  if (!(chamferAngle > 0 && ownRake < Math.PI / 2)) {
    return {
      faceDrag: specificEnergy,
      faceNormal,
      chamferDrag: specificEnergy,
      chamferNormal: faceNormal,
      chamferLength: 0,
    };
  }
  const cuts = ownRake + faceFriction < Math.PI / 2;
  const cutting = cuts ? specificEnergy * Math.tan(ownRake + faceFriction) : Number.POSITIVE_INFINITY;
  const rubbing = contactStress * Math.tan(ownRake);
  const chamferNormal = Math.max(faceNormal, Math.min(cutting, rubbing));
  const onFrictionLine = specificEnergy + flatFriction * (chamferNormal - faceNormal);
  return {
    faceDrag: specificEnergy,
    faceNormal,
    chamferDrag: Math.max(flatFriction * chamferNormal, onFrictionLine),
    chamferNormal,
    chamferLength: Math.tan(ownRake),
  };
}
