import { type SheetOptions, sheetsOf, summaryText } from "@bitwright/shop";
import type { CardPrint } from "@bitwright/shop/print";
import { type UnitSystem, type Workup, workUp, workupJson } from "@bitwright/traveler";
import { Complaint } from "../complaint.ts";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright work`. */
export interface WorkOptions {
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
  /** Address of the card for a phone, printed on it as a code. */
  readonly cardLink?: string;
}

/** Works a traveler up: the summary on the terminal, the sheets in a folder. */
export async function workCommand(
  file: string,
  { out, json, units, cardLink }: WorkOptions,
  terminal: Terminal,
): Promise<void> {
  if (cardLink !== undefined && out === undefined) {
    throw new Complaint(["--card-link: it goes on the printed card; name the folder for it with --out"]);
  }
  const workup = workUp(readTraveler(file));
  const paper = { units, program: PROGRAM };
  const card = out === undefined ? undefined : await printed(workup, paper, cardLink);
  // Written before anything is said: a folder that cannot be written ends the command in its one line.
  const wrote = writeSheets(out, () => [
    ...sheetsOf(workup, paper),
    ...(card ? [{ name: "card.pdf", text: card.pdf }] : []),
  ]);
  terminal.say(json ? workupJson(workup).trimEnd() : summaryText(workup, paper));
  if (!wrote || json) return;
  terminal.say(wrote);
  if (card && card.leftOut !== "") terminal.say(`card.pdf is one page. ${card.leftOut}`);
}

/** The typesetter is loaded only where something is printed. */
async function printed(workup: Workup, paper: SheetOptions, link: string | undefined): Promise<CardPrint> {
  const { cardPrint } = await import("@bitwright/shop/print");
  return cardPrint(workup, { ...paper, ...(link === undefined ? {} : { link }) });
}
