import type { ReadTraveler } from "../traveler-schema.ts";

/** A bed as entered, its quantities read. */
export type GivenBed = ReadTraveler["ground"]["beds"][number];
