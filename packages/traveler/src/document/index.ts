export type { Assumed } from "./assumed.ts";
export { type Problem, problem } from "./problem.ts";
export type * from "./resolved-traveler.ts";
