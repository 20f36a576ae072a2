export type { Assumed } from "./assumed.ts";
export { type FieldFacts, fieldFacts, fieldPaths } from "./field-facts.ts";
export { type ParsedTraveler, parseTraveler, writeTraveler } from "./parse-traveler.ts";
export { type Problem, problem } from "./problem.ts";
export { problemsOf } from "./problems-of.ts";
export type { QuantityChoice } from "./quantity-facts.ts";
export { LISTED_PIPE, LISTED_PUMPS, LISTED_RIGS } from "./resolve/gear-lists.ts";
export type * from "./resolved-traveler.ts";
export {
  TRAVELER_FORMAT,
  TRAVELER_VERSION,
  type Traveler,
  travelerJsonSchema,
  travelerSchema,
} from "./traveler-schema.ts";
