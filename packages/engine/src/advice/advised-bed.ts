import type { GroundBed, Hazard, RockFamily } from "../ground/index.ts";
import type { Band } from "../quantity/index.ts";

/** What the advice needs to know of one bed. */
export interface AdvisedBed {
  /** Short name for tables, as the driller would say it. */
  readonly name: string;
  /** Depth of the top [m]. */
  readonly top: number;
  /** Depth of the bottom [m]. */
  readonly bottom: number;
  readonly rock: AdvisedRock;
  /** Strength under the pressure at the bottom of the hole [Pa]. */
  readonly confinedStrength: Band;
  /** Rock abrasivity index; of the stones where the ground has stones [-]. */
  readonly abrasivityIndex: Band;
  /** CERCHAR abrasivity index, where one is known [-]. */
  readonly cerchar?: Band;
  readonly hazards: readonly Hazard[];
}

/** What the advice needs to know of a rock beside the figures of the bed. */
export interface AdvisedRock {
  /** Id in the rock table, or of the shop's own rock. */
  readonly id: string;
  readonly family: RockFamily;
}

/**
 * A bed of the ground column as the advice takes it.
 *
 * @source (d) arrangement of the bed, no figure of its own
 */
export function advisedBedOf({ bed, rock, confinedStrength, abrasivity, hazards }: GroundBed): AdvisedBed {
  return {
    name: bed.name,
    top: bed.top,
    bottom: bed.bottom,
    rock: { id: rock.id, family: rock.family },
    confinedStrength,
    abrasivityIndex: abrasivity.index,
    cerchar: abrasivity.cerchar,
    hazards,
  };
}
