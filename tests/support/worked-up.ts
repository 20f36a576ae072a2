import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Finding, Working } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";
import { bitwright, type CommandRun } from "./command.ts";

/** The sheets that `bitwright work` writes. */
export const SHEETS = ["workup.json", "face.svg", "profile.svg", "card.txt", "card.html", "cutters.csv"] as const;

/** Name of one of them. */
export type SheetName = (typeof SHEETS)[number];

/** A traveler worked up by the real command: what it said, what it wrote. */
export interface WorkedUp extends CommandRun {
  readonly sheets: Readonly<Record<SheetName, string>>;
  /** `workup.json` read back; the radial grids are not in it. */
  readonly workup: Workup;
  /** Wall time of the command [s]. */
  readonly seconds: number;
}

/** Runs `bitwright work` on a traveler file into a folder and reads back all that it wrote. */
export function workedUp(traveler: string, out: string, ...options: readonly string[]): WorkedUp {
  const started = performance.now();
  const run = bitwright("work", traveler, "--out", out, ...options);
  const seconds = (performance.now() - started) / 1000;
  if (run.status !== 0) throw new Error(`work ended with status ${run.status}: ${run.err}`);
  const read = (name: SheetName) => readFileSync(join(out, name), "utf8");
  const sheets = Object.fromEntries(SHEETS.map((name) => [name, read(name)])) as Record<SheetName, string>;
  return { ...run, sheets, workup: JSON.parse(sheets["workup.json"]) as Workup, seconds };
}

/** Every part of a workup that carries findings or workings, wherever it stands. */
export function remarksIn(workup: unknown): { findings: Finding[]; workings: Working[] } {
  const findings: Finding[] = [];
  const workings: Working[] = [];
  const walk = (node: unknown) => {
    if (node === null || typeof node !== "object") return;
    for (const [key, value] of Object.entries(node)) {
      if (key === "findings" && Array.isArray(value)) findings.push(...value);
      else if (key === "working" && Array.isArray(value)) workings.push(...value);
      walk(value);
    }
  };
  walk(workup);
  return { findings, workings };
}

/** Text that no sheet and no summary may hold: what a program prints of what it does not have. */
export const NOTHING_PRINTED = /\b(NaN|undefined|Infinity|null)\b|\[object/;

/** A text with its line breaks and runs of spaces as single spaces, to look for sentences in. */
export function flat(text: string): string {
  return text.replace(/\s+/g, " ");
}
