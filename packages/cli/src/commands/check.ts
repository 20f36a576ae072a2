import { gravestFirst, SOURCE_KIND_WORDS } from "@bitwright/engine";
import type { UnitSystem } from "@bitwright/traveler";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";

/** Options of `bitwright check`. */
export interface CheckOptions {
  readonly json?: boolean;
  readonly units: UnitSystem;
}

/** Says that a traveler is sound and which values were assumed. */
export function checkCommand(file: string, { json }: CheckOptions, terminal: Terminal): void {
  const { resolved, assumed } = readTraveler(file);
  const findings = gravestFirst(resolved.findings);
  if (json) {
    terminal.say(JSON.stringify({ ok: true, job: resolved.job, assumed, findings }, null, 2));
    return;
  }
  const beds = resolved.ground.beds.length;
  terminal.say(`${file}: sound. ${resolved.job.name}, ${beds} ${beds === 1 ? "bed" : "beds"}.`);
  for (const { severity, where, message } of findings) terminal.say(`  ${severity}: ${where}: ${message}`);
  if (assumed.length === 0) {
    terminal.say("Nothing was assumed.");
    return;
  }
  terminal.say(`Assumed, because the traveler does not say (${assumed.length}):`);
  for (const { field, text, why, source } of assumed)
    terminal.say(`  ${field}: ${text}. ${why} (${SOURCE_KIND_WORDS[source.kind]})`);
}
