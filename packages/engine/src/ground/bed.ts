import type { Band, Source } from "../quantity/index.ts";
import type { Hazard } from "./hazard.ts";

/** One bed of the ground, from the top down. */
export interface Bed {
  /** Short name for tables, as the driller would say it. */
  readonly name: string;
  /** Depth of the top [m]. */
  readonly top: number;
  /** Depth of the bottom [m]. */
  readonly bottom: number;
  /** The driller's own words; they add hazards and a state, and name the rock where `rockId` does not. */
  readonly phrase?: string;
  /** Id of a rock of the table or of the shop's own. */
  readonly rockId?: string;
  /** Unconfined strength where it is known better than the rock's name tells [Pa]. */
  readonly ucs?: Band;
  /** Where `ucs` comes from: a test, a log, a neighbour's bit record. */
  readonly ucsSource?: Source;
  /** Hazards known from elsewhere, beside those of the rock and the phrase. */
  readonly hazards?: readonly Hazard[];
}
