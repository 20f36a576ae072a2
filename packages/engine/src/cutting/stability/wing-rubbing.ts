import type { RockResponse } from "../../ground/index.ts";
import { requireNotNegative } from "../../quantity/index.ts";
import type { WingLands } from "./wing-lands.ts";

/** Where and when the first land of a wing rubs. */
export interface FirstRub {
  /** Number of the wing [-]. */
  readonly wing: number;
  /** Advance per revolution at which it meets the rock [m]. */
  readonly advance: number;
  /** Distance from the bit axis at which it does [m]. */
  readonly radius: number;
}

/**
 * The advance per revolution at which each wing begins to rub, the earliest first. A wing that never meets the rock is
 * left out.
 *
 * @source (d) least over the bits of land of `wingLands`
 */
export function firstRubs({ wings, wing, cell, rubbingAdvance, trace }: WingLands): FirstRub[] {
  const rubs = wings.map((number): FirstRub => ({ wing: number, advance: Number.POSITIVE_INFINITY, radius: 0 }));
  for (let k = 0; k < wing.length; k++) {
    const at = wing[k];
    if (rubbingAdvance[k] < rubs[at].advance) {
      rubs[at] = { wing: wings[at], advance: rubbingAdvance[k], radius: trace.cellRadius[cell[k]] };
    }
  }
  return rubs.filter(({ advance }) => advance < Number.POSITIVE_INFINITY).sort((a, b) => a.advance - b.advance);
}

/** What the rubbing wings carry, all together. */
export interface WingLoads {
  /** Weight on the wings [N]. */
  readonly weight: number;
  /** Torque of their friction [N·m]. */
  readonly torque: number;
  /** In-plane force along x [N]. */
  readonly lateralX: number;
  /** In-plane force along y [N]. */
  readonly lateralY: number;
  /** Area of land that rubs [m²]. */
  readonly contactArea: number;
  /** Weight on each wing, in the order of `WingLands.wings` [N]. */
  readonly wingWeight: readonly number[];
}

const TURN = 2 * Math.PI;

/**
 * Load on the wings at an advance: each bit of land works like a wear flat of the length of the land.
 *
 * A land pressed in by δ = min over j of (c_j d - (z_j - z)) bears along min(l, κ δ cos τ) with the contact stress:
 * dF_n = σ_c min(l, κ δ cos τ) db, drag μ dF_n. It does not cut: the wing is a brake, not a cutter.
 *
 * @throws RangeError when the advance is negative
 * @source (a) growth of contact with depth and its stress: Detournay, Richard & Shepherd 2008, Int. J. Rock Mech. Min. Sci.
 *   45:1347-1360, there for wear flats; (c) that the land of a wing bears likewise is our choice, no source
 */
export function wingLoads(
  lands: WingLands,
  { contactStress, flatFriction, kappa }: Pick<RockResponse, "contactStress" | "flatFriction" | "kappa">,
  /** Advance per revolution [m]. */
  advance: number,
): WingLoads {
  requireNotNegative({ advance, contactStress, flatFriction, kappa });
  const { trace, cell, wing, height, azimuth, slope, length, rubbingAdvance } = lands;
  const { firstPass, cellRadius, cellWidth } = trace;
  const wingWeight = lands.wings.map(() => 0);
  let [weight, torque, lateralX, lateralY, contactArea] = [0, 0, 0, 0, 0];
  for (let k = 0; k < cell.length; k++) {
    if (!(advance > rubbingAdvance[k])) continue;
    let pressed = Number.POSITIVE_INFINITY;
    for (let pass = firstPass[cell[k]]; pass < firstPass[cell[k] + 1]; pass++) {
      const ahead = trace.azimuth[pass] - azimuth[k];
      const sinceTurns = (ahead > 0 ? ahead : ahead + TURN) / TURN;
      pressed = Math.min(pressed, advance * sinceTurns - (trace.height[pass] - height[k]));
    }
    const radius = cellRadius[cell[k]];
    const cosine = 1 / Math.sqrt(1 + slope[k] ** 2);
    const width = cellWidth / cosine;
    const bearing = Math.min(length[k], kappa * Math.max(0, pressed) * cosine);
    const normal = contactStress * bearing * width;
    const drag = flatFriction * normal;
    const axial = normal * cosine;
    const outward = axial * slope[k];
    weight += axial;
    torque += radius * drag;
    lateralX += outward * Math.cos(azimuth[k]) + drag * Math.sin(azimuth[k]);
    lateralY += outward * Math.sin(azimuth[k]) - drag * Math.cos(azimuth[k]);
    contactArea += bearing * width;
    wingWeight[wing[k]] += axial;
  }
  return { weight, torque, lateralX, lateralY, contactArea, wingWeight };
}
