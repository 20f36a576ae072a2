import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import type { BearingPads } from "./bearing-pads.ts";

/** What the wall of the hole does to the gauge in one bed. */
export interface OnWall {
  /** Wear coefficient of cold diamond in the rock, abrasivity counted in [m²/N]. */
  readonly wearCoefficient: number;
  /** Side force of the cutters [N]. */
  readonly sideForce: number;
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Radius of the wall [m]. */
  readonly holeRadius: number;
  /** Stress under a rubbing face [Pa]. */
  readonly contactStress: number;
  /** κ, growth of contact length with depth of cut [-]. */
  readonly kappa: number;
  /** Gauge pads; absent where none are known. */
  readonly pads?: BearingPads;
}

/** How fast gauge pads lose height for each metre of hole. */
export interface PadWear {
  /** By the side force [-]. */
  readonly bySideForce: number;
  /** By the ring of rock that worn gauge cutters leave, for each metre of its thickness [1/m]. */
  readonly byRing: number;
}

/**
 * How fast gauge pads wear on the wall while they bear all the side force.
 *
 * Archard over all pads, for each metre of hole: h' = M k N s/A with s = 2π R/d the way at the wall. The pads bear the side
 * force of the cutters, N = F, spread over all of them. Where the gauge cutters are worn short by a ring of thickness g, the
 * pads grind it: a blunt face loaded to σ_c over κ times its depth of cut bears κ σ_c g d in all, whatever the pads' number
 * and taper, as long as κ g is less than their width. The wear of that is M k κ σ_c g 2π R/A, free of d.
 *
 * @throws RangeError when a radius, an advance or the area is not positive, or a force or coefficient is negative
 * @source (b) Archard 1953, recalled; contact load of Detournay, Richard & Shepherd 2008; (c) that it holds for pads: no source
 * @example
 * padWear({ wearCoefficient: 2e-16, sideForce: 1000, advance: 4e-3, holeRadius: 0.08, contactStress: 60e6, kappa: 5 }, { area: 1e-3, wearMultiple: 30 }).bySideForce // → 7.5398e-7
 * padWear({ wearCoefficient: 2e-16, sideForce: 1000, advance: 4e-3, holeRadius: 0.08, contactStress: 60e6, kappa: 5 }, { area: 1e-3, wearMultiple: 30 }).byRing // → 9.0478e-4
 */
export function padWear(
  { wearCoefficient, sideForce, advance, holeRadius, contactStress, kappa }: OnWall,
  { area, wearMultiple }: BearingPads,
): PadWear {
  requirePositive({ padArea: area, advance, holeRadius });
  requireNotNegative({ wearMultiple, wearCoefficient, sideForce, contactStress, kappa });
  const forEachNewton = (wearMultiple * wearCoefficient * 2 * Math.PI * holeRadius) / area;
  return { bySideForce: (forEachNewton * sideForce) / advance, byRing: forEachNewton * kappa * contactStress };
}

/**
 * Height that the gauge cutters lose at the wall by the side force, for each metre of hole, beside what their own cut takes.
 *
 * Pads that wear no faster than the cutters bear it all and leave nothing. Pads that would wear faster stand level with the
 * cutters, and both bear as much as makes them recede alike: a + k s p = M k s (F - p A_c)/A, so
 * p = (M k F/A - a/s)/(k + M k A_c/A) on the lands of the cutters; F/A_c without pads. The rock gives no more than σ_c.
 * The loss is k s p.
 *
 * @returns loss [-]
 * @throws RangeError when a radius or an advance is not positive, or a force, loss, area or coefficient is negative
 * @source (b) Archard 1953, recalled; (c) that lands and pads share the side force so: no source
 * @example
 * sideLossAtWall({ wearCoefficient: 2e-16, sideForce: 1000, advance: 4e-3, holeRadius: 0.08, contactStress: 60e6, kappa: 5, ownLoss: 1e-7, landArea: 4e-5 }) // → 6.2832e-7
 * sideLossAtWall({ wearCoefficient: 2e-16, sideForce: 1000, advance: 4e-3, holeRadius: 0.08, contactStress: 60e6, kappa: 5, ownLoss: 1e-7, landArea: 4e-5, pads: { area: 1e-3, wearMultiple: 30 } }) // → 2.97264e-7
 */
export function sideLossAtWall({
  wearCoefficient,
  sideForce,
  advance,
  holeRadius,
  contactStress,
  ownLoss,
  landArea,
  pads,
}: OnWall & {
  /** Loss of reach by the cutters' own cut, for each metre of hole [-]. */
  readonly ownLoss: number;
  /** Area of the cutters' lands against the wall [m²]. */
  readonly landArea: number;
}): number {
  requirePositive({ advance, holeRadius });
  requireNotNegative({ wearCoefficient, sideForce, contactStress, ownLoss, landArea });
  if (wearCoefficient === 0 || sideForce === 0) return 0;
  const way = (2 * Math.PI * holeRadius) / advance;
  const padded = pads ? (pads.wearMultiple * wearCoefficient) / pads.area : undefined;
  const pressure =
    padded === undefined
      ? sideForce / landArea
      : (padded * sideForce - ownLoss / way) / (wearCoefficient + padded * landArea);
  return wearCoefficient * way * Math.min(contactStress, Math.max(0, pressure));
}
