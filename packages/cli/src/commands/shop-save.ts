import { basename } from "node:path";
import type { SaveOutcome, Store } from "@bitwright/store";
import { Complaint } from "../complaint.ts";
import { readText } from "../files.ts";
import type { Terminal } from "../terminal.ts";
import { wholeNumber } from "../whole-number.ts";
import { type StoreChoice, usualWho, withStore } from "../with-store.ts";

/** Options of `bitwright shop save`. */
export interface SaveOptions extends StoreChoice {
  readonly name?: string;
  readonly on?: string;
  readonly by?: string;
  readonly note?: string;
}

/** More versions than anybody saves [-]. */
export const MOST_VERSIONS = 1_000_000;

/** Saves a traveler file, exactly as it is, as a new traveler or as the next version of one. */
export async function saveCommand(file: string, options: SaveOptions, terminal: Terminal): Promise<void> {
  const body = readText(file);
  const name = options.name ?? basename(file).replace(/(\.traveler)?\.json$/i, "");
  const on = options.on === undefined ? undefined : wholeNumber("--on", options.on, 0, 0, MOST_VERSIONS);
  const who = options.by ?? usualWho();
  const outcome = await withStore(options, async (store) => {
    const basedOn = on ?? (await newOnly(store, name));
    return store.papers.save({ kind: "traveler", name, body, basedOn, who, note: options.note ?? "" });
  });
  if (!outcome.ok) throw new Complaint(refusedWords(name, outcome));
  const { version, sound } = outcome.saved;
  const state = sound ? "" : ` It cannot be worked up yet: \`npx bitwright check ${file}\` says what is missing.`;
  terminal.say(`${name}: saved as version ${version}.${state}`);
}

/** Without a word on what the file was made from, only a new traveler may be meant. */
async function newOnly({ papers }: Store, name: string): Promise<0> {
  const there = (await papers.list("traveler")).find((one) => one.name === name.normalize("NFC"));
  if (there === undefined) return 0;
  const { version, who, savedAt } = there.newest;
  throw new Complaint([
    `${name}: is kept already, version ${version} by ${who}, ${savedAt}; say which version the file was made from, ` +
      `--on ${version}, or give another name, --name NAME`,
  ]);
}

function refusedWords(name: string, { refused, newest }: Extract<SaveOutcome, { ok: false }>): string[] {
  const { number, basedOn, found } = refused;
  const said = newest.note === "" ? "" : ` (${newest.note.replace(/\s+/g, " ")})`;
  return [
    `${name}: not saved: made from version ${basedOn}, but ${newest.who} saved version ${found} on ${newest.savedAt}${said}`,
    `  Both are kept: theirs is \`shop show ${name}\`, yours \`shop show ${name} --refused ${number}\`.`,
    `  Bring yours up to theirs, then save it with --on ${found}.`,
  ];
}
