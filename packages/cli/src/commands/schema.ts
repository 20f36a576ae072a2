import { travelerJsonSchema } from "@bitwright/traveler";
import type { Terminal } from "../terminal.ts";

/** Prints the JSON Schema of the traveler. */
export function schemaCommand(terminal: Terminal): void {
  terminal.say(JSON.stringify(travelerJsonSchema(), null, 2));
}
