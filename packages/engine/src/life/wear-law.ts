import { WEAR_QUICKENS_TEMPERATURE } from "../cutting/index.ts";
import { type Band, requireBetween, requireNotNegative, requirePositive } from "../quantity/index.ts";

/**
 * Diamond worn off for each newton of contact and each metre of sliding, in sandstone of the reference abrasivity and
 * below the temperature where wear quickens [m²/N]. No figure for diamond cutters in rock that can be cited was found: this
 * is the order of magnitude that lets a friendly sandstone be drilled for tens of thousands of feet and a granite for
 * hundreds at most, and that agrees with the few recalled ratios of rock to diamond volume in granite. The band is a
 * factor of ten either way. Returned bits are to correct it.
 *
 * @source (c) no source: order of magnitude from facts of the trade, see docs/decisions/2026-11-25-wear-and-life.md
 */
export const WEAR_COEFFICIENT: Band = { low: 3e-17, mid: 3e-16, high: 3e-15 };

/**
 * CERCHAR index of the sandstone that the wear coefficient belongs to [-].
 *
 * @source (b) weak memory: the middle of the values typical of sandstone
 */
export const REFERENCE_CERCHAR = 2.5;

/**
 * How many times faster than cold a cutter wears where its contact is as hot as its diamond table bears [-].
 *
 * @source (b) that wear quickens past 350 °C: Glowka & Stone 1986, recalled; (c) how much: no source, wide band
 */
export const WEAR_MULTIPLE_AT_TABLE_LIMIT: Band = { low: 5, mid: 20, high: 100 };

/**
 * Length along travel over which an edge without flat or bevel is already blunt [m].
 *
 * @source (c) no source: edges as ground and honed are round by 0.02 to 0.1 mm
 */
export const EDGE_ROUNDING = 50e-6;

/**
 * Share of the normal load of cutting that bears on the edge itself and the flat behind it [-].
 *
 * @source (c) no source: 0 to 0.2
 */
export const EDGE_SHARE_OF_CUTTING = 0.05;

/**
 * Abrasivity of a rock against that of the reference sandstone.
 *
 * A = CAI/2.5: the test drags a point under a given load over a given length, which is what the wear law asks after. The
 * strength of the rock is not in it; that comes in with the contact stress.
 *
 * @returns ratio [-]
 * @throws RangeError when the index is negative
 * @source (c) in step with the CERCHAR index: common practice, no source
 * @example
 * relativeAbrasivity(1.5) // → 0.6
 */
export function relativeAbrasivity(cerchar: number): number {
  requireNotNegative({ cerchar });
  return cerchar / REFERENCE_CERCHAR;
}

/**
 * How many times faster than cold a hot contact wears.
 *
 * f = M^x, x = (T - 350 °C)/(T_table - 350 °C) where that is above zero, else 1; M is the multiple at the table's limit.
 *
 * @returns factor [-]
 * @throws RangeError when a temperature is not positive, the limit is not over 350 °C or the multiple is under 1
 * @source (b) that it rises past 350 °C: Glowka & Stone 1986, recalled; SPE 14222, abstract; (c) its course: no source
 * @example
 * wearHeatFactor({ temperature: 823.15, tableLimit: 1023.15 }) // → 4.472136
 * wearHeatFactor({ temperature: 400, tableLimit: 1023.15 }) // → 1
 */
export function wearHeatFactor({
  temperature,
  tableLimit,
  multipleAtLimit = WEAR_MULTIPLE_AT_TABLE_LIMIT.mid,
}: {
  /** Mean temperature of the rubbing surface [K]. */
  readonly temperature: number;
  /** What the diamond table bears [K]. */
  readonly tableLimit: number;
  /** Factor at that limit [-]. */
  readonly multipleAtLimit?: number;
}): number {
  requirePositive({ temperature, "table limit over 350 °C": tableLimit - WEAR_QUICKENS_TEMPERATURE });
  requireBetween("multipleAtLimit", multipleAtLimit, 1, Number.MAX_VALUE);
  const past = (temperature - WEAR_QUICKENS_TEMPERATURE) / (tableLimit - WEAR_QUICKENS_TEMPERATURE);
  return past > 0 ? multipleAtLimit ** past : 1;
}

/** One place on a cutter's edge as wear meets it. */
export interface RubbedEdge {
  /** Depth of cut normal to the edge [m]. */
  readonly depth: number;
  /** Length of the flat along travel [m]. */
  readonly flatLength: number;
  /** Length along travel over which a rubbing bevel touches, 0 where it cuts with the face [m]. */
  readonly bevelLength: number;
  /** Normal load of that bevel for each metre of edge [N/m]. */
  readonly bevelLoad: number;
  /** Normal load of the sharp face for each metre of edge [N/m]. */
  readonly cuttingLoad: number;
  /** Stress under a rubbing face [Pa]. */
  readonly contactStress: number;
  /** κ, growth of contact length with depth of cut [-]. */
  readonly kappa: number;
}

/**
 * Mean pressure between the rock and the worn end of an edge: what wears it.
 *
 * p = (σ_c min(l + e, κ h) + N_bevel + s N_cut)/(l + l_bevel + e) over flat l, bevel and the rounding e of the edge. On an
 * edge without flat or bevel it is σ_c and the edge's share s of the cutting load: wear of a new bit starts at the pace of
 * a young flat, neither at nothing nor without bound. Where the flat outgrows κ h, the rock no longer bears on all of it
 * and p falls.
 *
 * @returns pressure [Pa]
 * @throws RangeError when a length, load or stress is negative
 * @source (d) contact load of Detournay, Richard & Shepherd 2008 spread over what rubs; (c) rounding and share: no source
 * @example
 * wearPressure({ depth: 1e-3, flatLength: 0, bevelLength: 0, bevelLoad: 0, cuttingLoad: 0, contactStress: 60e6, kappa: 5 }) // → 60e6
 * wearPressure({ depth: 1e-4, flatLength: 2e-3, bevelLength: 0, bevelLoad: 0, cuttingLoad: 0, contactStress: 60e6, kappa: 5 }) // → 14.634e6
 */
export function wearPressure(edge: RubbedEdge): number {
  const { depth, flatLength, bevelLength, bevelLoad, cuttingLoad, contactStress, kappa } = edge;
  requireNotNegative({ depth, flatLength, bevelLength, bevelLoad, cuttingLoad, contactStress, kappa });
  return pressureOn(edge);
}

/** `wearPressure` of a sound edge: it is asked for every place of every edge. */
export function pressureOn(edge: RubbedEdge): number {
  const { depth, flatLength, bevelLength, bevelLoad, cuttingLoad, contactStress, kappa } = edge;
  const blunt = flatLength + EDGE_ROUNDING;
  const onFlat = contactStress * Math.min(blunt, kappa * depth);
  return (onFlat + bevelLoad + EDGE_SHARE_OF_CUTTING * cuttingLoad) / (blunt + bevelLength);
}
