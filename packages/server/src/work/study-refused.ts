import type { Problem } from "@bitwright/traveler";

/** A study that cannot be run on what was given. */
export class StudyRefused extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.message);
    this.name = "StudyRefused";
    this.problem = problem;
  }
}
