import type { Problem } from "@bitwright/traveler";

/** Something wrong with what was given: printed as plain lines, without a stack, and the command ends with status 2. */
export class Complaint extends Error {
  readonly lines: readonly string[];

  constructor(lines: readonly string[]) {
    super(lines.join("\n"));
    this.lines = lines;
  }
}

/** A complaint with one line for each problem, the file named in front. */
export function complaintAbout(file: string, problems: readonly Problem[]): Complaint {
  return new Complaint(problems.map(({ message }) => `${file}: ${message}`));
}
