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
 * Sharp face: drag ε, normal ζ ε with ζ = tan(β + ψ). Chamfer, whose own rake is β + χ: its normal load is the lesser of
 * cutting, ε tan(β + χ + ψ), and rubbing under the contact stress, σ_c tan(β + χ); its drag is that load times
 * max(μ, cot(β + χ + ψ)). A bevel so slight that this is less than the sharp face's ζ ε cuts as a part of the face: the
 * contact limit speaks of the bevel's projection along travel and falls to nothing as the bevel does, and grinding an edge
 * off never made rock come away for less.
 *
 * @throws RangeError when a constant of the rock is negative or the face leans so far that β + ψ reaches 90°
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled, for the face; (d) the chamfer as
 *   a face of its own rake, held to the sharp face where it is slight (docs/decisions, slight bevels)
 */
export function edgeResponse(cutter: PlacedCutter, response: RockResponse): EdgeResponse {
  checkResponse(response);
  return lawOf(cutter, response);
}

/**
 * The force laws of many cutters in one rock, in their order.
 *
 * @throws RangeError when a constant of the rock is negative or a face leans so far that β + ψ reaches 90°
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled; see `edgeResponse`
 */
export function edgeResponses(cutters: readonly PlacedCutter[], response: RockResponse): EdgeResponse[] {
  checkResponse(response);
  return cutters.map((cutter) => lawOf(cutter, response));
}

function checkResponse({ specificEnergy, contactStress, faceFriction, flatFriction, kappa }: RockResponse): void {
  requirePositive({ specificEnergy });
  requireNotNegative({ contactStress, faceFriction, flatFriction, kappa });
}

function lawOf({ backRake, chamferAngle }: PlacedCutter, response: RockResponse): EdgeResponse {
  const { specificEnergy, contactStress, faceFriction, flatFriction } = response;
  const faceDrag = specificEnergy;
  const faceNormal = specificEnergy * cuttingRatio({ backRake, faceFriction });
  const ownRake = backRake + chamferAngle;
  const lean = ownRake + faceFriction;
  const cuts = lean < Math.PI / 2;
  const cutting = cuts ? specificEnergy * Math.tan(lean) : Number.POSITIVE_INFINITY;
  const chamferLength = Math.tan(ownRake);
  const chamferNormal = Math.min(cutting, contactStress * chamferLength);
  const bevelled = chamferAngle > 0 && ownRake < Math.PI / 2;
  if (!bevelled || chamferNormal < faceNormal) {
    return { faceDrag, faceNormal, chamferDrag: faceDrag, chamferNormal: faceNormal, chamferLength: 0 };
  }
  const chamferDrag = chamferNormal * Math.max(flatFriction, cuts ? 1 / Math.tan(lean) : 0);
  return { faceDrag, faceNormal, chamferDrag, chamferNormal, chamferLength };
}
