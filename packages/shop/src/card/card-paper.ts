import type { UnitSystem } from "@bitwright/traveler";

/** What the card says of itself besides its content. */
export interface CardPaper {
  readonly units: UnitSystem;
  readonly shop?: string;
  readonly date?: string;
  /** Name and version of the program that wrote it. */
  readonly program: string;
  /** What the hole is blown with where no pump stands on it; the card then prints no pump flow. */
  readonly blownWith?: BlownWith;
}

/** Air, mist or foam in place of a pumped fluid. */
export interface BlownWith {
  /** `air`, `mist` or `foam`. */
  readonly medium: string;
  /** Least flow of free air that lifts the chips, where it is known [m³/s]. */
  readonly leastAirFlow?: number;
}
