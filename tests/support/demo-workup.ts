import { readFileSync } from "node:fs";
import { parseTraveler, type Workup, workUp } from "@bitwright/traveler";
import { projectFile } from "./command.ts";

/** The demo travelers by name. */
export const DEMOS = ["house-well", "loop-hole", "measured-bit"] as const;

/** A demo traveler worked up in this process. */
export function demoWorkup(name: (typeof DEMOS)[number]): Workup {
  const read = parseTraveler(readFileSync(projectFile(`examples/${name}.traveler.json`), "utf8"));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return workUp(read);
}
