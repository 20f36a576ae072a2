export type { Assumed } from "./assumed.ts";
export { type ParsedTraveler, parseTraveler, writeTraveler } from "./parse-traveler.ts";
export { type Problem, problem } from "./problem.ts";
export { problemsOf } from "./problems-of.ts";
export type * from "./resolved-traveler.ts";
export {
  TRAVELER_FORMAT,
  TRAVELER_VERSION,
  type Traveler,
  travelerJsonSchema,
  travelerSchema,
} from "./traveler-schema.ts";
