import type { RockResponse } from "@bitwright/engine";
import { degree, MPa } from "./field-units.ts";

/** A middling sandstone for tests; the constants stand for no certain rock. */
export const sandstoneLike: RockResponse = {
  specificEnergy: 60 * MPa,
  contactStress: 60 * MPa,
  faceFriction: 18 * degree,
  flatFriction: 0.3,
  kappa: 5,
};
