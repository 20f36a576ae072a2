import { type UnitSystem, workUp } from "@bitwright/traveler";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";

/** Options of `bitwright layout`. */
export interface LayoutOptions {
  readonly json?: boolean;
  readonly units: UnitSystem;
}

/** Prints the layout of a traveler's bit as a layout file: metres and radians, whatever the units asked for. */
export function layoutCommand(file: string, _options: LayoutOptions, terminal: Terminal): void {
  const { bit } = workUp(readTraveler(file));
  terminal.say(JSON.stringify(bit.layout, null, 2));
}
