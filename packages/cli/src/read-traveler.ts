import { parseTraveler } from "@bitwright/traveler";
import { complaintAbout } from "./complaint.ts";
import { readText } from "./files.ts";

/** The traveler in a file; what is wrong with it ends the command in plain lines. */
export function readTraveler(file: string) {
  const read = parseTraveler(readText(file));
  if (!read.ok) throw complaintAbout(file, read.problems);
  return read;
}
