import type { Command } from "commander";
import { columns } from "../columns.ts";
import { Complaint } from "../complaint.ts";
import { writeWhole } from "../files.ts";
import type { Terminal } from "../terminal.ts";
import { wholeNumber } from "../whole-number.ts";
import { type StoreChoice, withStore } from "../with-store.ts";
import { attachCommand, takeCommand } from "./shop-attachments.ts";
import { MOST_VERSIONS, saveCommand } from "./shop-save.ts";

interface ListOptions extends StoreChoice {
  readonly json?: boolean;
}

interface ShowOptions extends StoreChoice {
  readonly version?: string;
  readonly refused?: string;
  readonly out?: string;
}

/** The commands that keep travelers between runs: `bitwright shop ...`. */
export function shopCommands(shop: Command, terminal: Terminal): void {
  const command = (name: string, does: string) =>
    shop.command(name).description(does).option("--data <place>", DATA_OPTION);
  command("list", "the travelers that are kept")
    .option("--json", "print JSON instead of text")
    .action((options) => listCommand(options, terminal));
  command("save", "save a traveler file as a new traveler or a new version")
    .argument("<traveler>", "traveler file")
    .option("--name <name>", "name in the shop; the file's own name where not given")
    .option("--on <version>", "the version that the file was made from")
    .option("--by <who>", "who saves it; the user of this machine where not given")
    .option("--note <text>", "what has changed and why")
    .action((file, options) => saveCommand(file, options, terminal));
  command("show", "print a traveler as it was saved")
    .argument("<name>", "name of the traveler in the shop")
    .option("--version <number>", "this version, not the newest")
    .option("--refused <number>", "a save that was refused")
    .option("--out <file>", "write it there")
    .action((name, options) => showCommand(name, options, terminal));
  command("history", "who saved which version when, what was refused, what is attached")
    .argument("<name>", "name of the traveler in the shop")
    .option("--json", "print JSON instead of text")
    .action((name, options) => historyCommand(name, options, terminal));
  command("attach", "keep a file with a traveler")
    .argument("<name>", "name of the traveler in the shop")
    .argument("<file>", "photo, log or paper")
    .option("--by <who>", "who attaches it; the user of this machine where not given")
    .option("--note <text>", "what it shows")
    .action((name, file, options) => attachCommand(name, file, options, terminal));
  command("take", "write an attached file out")
    .argument("<name>", "name of the traveler in the shop")
    .argument("<attachment>", "name of the attached file")
    .requiredOption("--out <file>", "new file to write it to")
    .action((name, attachment, options) => takeCommand(name, attachment, options, terminal));
}

/** What `--data` takes, the same for every command that keeps something. */
export const DATA_OPTION = "data folder or postgres:// address; $BITWRIGHT_DATA or ~/.bitwright where not given";

async function listCommand({ data, json }: ListOptions, terminal: Terminal): Promise<void> {
  const travelers = await withStore({ data }, ({ papers }) => papers.list("traveler"));
  if (json) {
    terminal.say(JSON.stringify(travelers, null, 2));
    return;
  }
  if (travelers.length === 0) {
    terminal.say("No traveler is kept yet. `npx bitwright shop save TRAVELER` keeps one.");
    return;
  }
  const rows = travelers.map(({ name, newest }) => [
    name,
    oneLine(newest.title),
    newest.sound ? "sound" : "unfinished",
    String(newest.version),
    newest.savedAt,
    newest.who,
  ]);
  terminal.say(columns(["name", "job", "state", "version", "saved (UTC)", "by"], rows, [0, 1, 2, 4, 5]));
}

async function showCommand(name: string, options: ShowOptions, terminal: Terminal): Promise<void> {
  const { data, out } = options;
  if (options.version !== undefined && options.refused !== undefined) {
    throw new Complaint(["--refused: got it with --version; give one of the two"]);
  }
  const version = options.version === undefined ? undefined : whole("--version", options.version);
  const paper = { kind: "traveler", name } as const;
  const body = await withStore({ data }, async ({ papers }) => {
    if (options.refused === undefined) return (await papers.read(paper, version)).body;
    const number = whole("--refused", options.refused);
    const refusals = await papers.refusals(paper);
    const refused = refusals.find((one) => one.number === number);
    if (refused) return refused.body;
    throw new Complaint([`--refused: got ${number}; ${name} has ${refusals.length} refused saves`]);
  });
  if (out === undefined) {
    terminal.say(body.replace(/\n$/, ""));
    return;
  }
  writeWhole(out, body);
  terminal.say(`Wrote ${out}.`);
}

const whole = (option: string, text: string) => wholeNumber(option, text, 1, 1, MOST_VERSIONS);

async function historyCommand(name: string, { data, json }: ListOptions, terminal: Terminal): Promise<void> {
  const paper = { kind: "traveler", name } as const;
  const { versions, refusals, attachments } = await withStore({ data }, async (store) => ({
    versions: await store.papers.history(paper),
    refusals: await store.papers.refusals(paper),
    attachments: await store.attachments.list(name),
  }));
  if (json) {
    terminal.say(JSON.stringify({ name, versions, refusals, attachments }, null, 2));
    return;
  }
  const rows = versions.map(({ version, savedAt, who, program, note }) => [
    String(version),
    savedAt,
    who,
    program,
    oneLine(note),
  ]);
  terminal.say(columns(["version", "saved (UTC)", "by", "with", "note"], rows, [1, 2, 3, 4]));
  for (const { number, basedOn, found, refusedAt, who, note } of refusals) {
    const said = note === "" ? "" : `: ${oneLine(note)}`;
    terminal.say(
      `Refused save ${number}: ${who}, ${refusedAt}, made from version ${basedOn} when ${found} was there${said}`,
    );
  }
  const { bytesInWords } = await import("@bitwright/store");
  for (const { name: file, size, addedAt, who, note } of attachments) {
    const said = note === "" ? "" : `: ${oneLine(note)}`;
    terminal.say(`Attached: ${file}, ${bytesInWords(size)}, ${who}, ${addedAt}${said}`);
  }
}

const oneLine = (text: string) => text.replace(/\s+/g, " ");
