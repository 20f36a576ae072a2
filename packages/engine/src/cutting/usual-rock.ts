import { type RockResponse, rockById, rockResponse } from "../ground/index.ts";
import { exactBand } from "../quantity/index.ts";

/** Shale of 30 MPa: shares of the load hardly depend on the rock [Pa]. */
const USUAL_STRENGTH = 30e6;

/**
 * The rock that layouts are judged in where none is named: shale at a confined strength of 30 MPa.
 *
 * @source (d) our choice; shares of load and side force hardly depend on it
 */
export function usualRock(): RockResponse {
  return rockResponse({ rock: rockById("shale"), confinedStrength: exactBand(USUAL_STRENGTH) }).mid;
}
