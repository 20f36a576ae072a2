import { workUp } from "@bitwright/traveler";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";

/** Prints the layout of a traveler's bit as a layout file: metres and radians, in the bit frame. */
export function layoutCommand(file: string, terminal: Terminal): void {
  const { bit } = workUp(readTraveler(file));
  terminal.say(JSON.stringify(bit.layout, null, 2));
}
