import { type Band, exactBand } from "../quantity/index.ts";
import { bandProduct } from "./band-product.ts";
import type { Rock } from "./rock.ts";

/** How a rock answers a cutter: the five constants of the two-part cutting law. */
export interface RockResponse {
  /** Intrinsic specific energy: work per volume cut by a sharp cutter, friction of the flat left out [Pa]. */
  readonly specificEnergy: number;
  /** Contact strength: the highest mean stress between a wear flat and the rock [Pa]. */
  readonly contactStress: number;
  /** Friction angle between the flowing rock and the cutter face [rad]. */
  readonly faceFriction: number;
  /** Friction between a wear flat and the rock, in the drilling fluid [-]. */
  readonly flatFriction: number;
  /** Growth of the contact length with the depth of cut [-]. */
  readonly kappa: number;
}

/** The same five constants with what is known of each. */
export type RockResponseBands = Readonly<Record<keyof RockResponse, Band>>;

/** What a rock's answer is made from. */
export interface RockResponseInput {
  readonly rock: Rock;
  /** Strength under the pressure at the hole bottom [Pa]. */
  readonly confinedStrength: Band;
  /** Constants somebody has measured or set, taken in place of the table's [SI unit of each]. */
  readonly override?: Partial<RockResponse>;
}

/** A rock's answer to a cutter: best single values, and the bands they lie in. */
export interface RockResponseResult {
  readonly mid: RockResponse;
  readonly bands: RockResponseBands;
}

/**
 * The five constants of the cutting law for a rock at its confined strength.
 *
 * ε = k_ε CCS, σ = k_σ CCS; friction angle, friction and κ from the table. A constant that was set stands alone, with
 * no band.
 *
 * @throws RangeError when a strength is negative
 * @source (b) ε near the strength: Richard et al. 2012, recalled; (a) σ about the strength: Detournay, Richard & Shepherd 2008
 * @example
 * rockResponse({ rock: rockById("shale"), confinedStrength: { low: 3e7, mid: 3e7, high: 3e7 } }).mid.specificEnergy // → 3e7
 */
export function rockResponse({ rock, confinedStrength, override = {} }: RockResponseInput): RockResponseResult {
  const known = (value: number | undefined, otherwise: Band): Band =>
    value === undefined ? otherwise : exactBand(value);
  const bands: RockResponseBands = {
    specificEnergy: known(override.specificEnergy, bandProduct(confinedStrength, rock.specificEnergyRatio)),
    contactStress: known(override.contactStress, bandProduct(confinedStrength, rock.contactStressRatio)),
    faceFriction: known(override.faceFriction, rock.faceFriction),
    flatFriction: known(override.flatFriction, rock.flatFriction),
    kappa: known(override.kappa, rock.kappa),
  };
  return {
    mid: {
      specificEnergy: bands.specificEnergy.mid,
      contactStress: bands.contactStress.mid,
      faceFriction: bands.faceFriction.mid,
      flatFriction: bands.flatFriction.mid,
      kappa: bands.kappa.mid,
    },
    bands,
  };
}
