import type { Hazard, RockFamily } from "../ground/index.ts";
import type { Band } from "../quantity/index.ts";

/** What the advice needs to know of one bed. */
export interface AdvisedBed {
  /** Short name for tables, as the driller would say it. */
  readonly name: string;
  /** Depth of the top [m]. */
  readonly top: number;
  /** Depth of the bottom [m]. */
  readonly bottom: number;
  /** The rock of the rock table; absent where the log does not say what the ground is. */
  readonly rock?: AdvisedRock;
  /** Strength under the pressure at the bottom of the hole [Pa]. */
  readonly confinedStrength: Band;
  /** Rock abrasivity index: unconfined strength in MPa times the equivalent quartz share [-]. */
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
