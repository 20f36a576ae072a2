import { createReadStream, createWriteStream, existsSync, rmSync, statSync } from "node:fs";
import { basename } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { Complaint } from "../complaint.ts";
import { complaintOfFile } from "../files.ts";
import type { Terminal } from "../terminal.ts";
import { type StoreChoice, usualWho, withStore } from "../with-store.ts";

/** Options of `bitwright shop attach`. */
export interface AttachOptions extends StoreChoice {
  readonly by?: string;
  readonly note?: string;
}

/** Options of `bitwright shop take`. */
export interface TakeOptions extends StoreChoice {
  readonly out: string;
}

/** Kinds of files that a shop keeps, by the end of their names. */
const KINDS: Readonly<Record<string, string>> = {
  csv: "text/csv",
  jpeg: "image/jpeg",
  jpg: "image/jpeg",
  json: "application/json",
  pdf: "application/pdf",
  png: "image/png",
  svg: "image/svg+xml",
  txt: "text/plain",
  zip: "application/zip",
};

/** Keeps a file with a traveler, read piece by piece. */
export async function attachCommand(
  traveler: string,
  file: string,
  options: AttachOptions,
  terminal: Terminal,
): Promise<void> {
  const name = basename(file);
  const mediaType = KINDS[/\.([^.]+)$/.exec(name.toLowerCase())?.[1] ?? ""] ?? "application/octet-stream";
  const who = options.by ?? usualWho();
  try {
    if (!statSync(file).isFile()) throw new Complaint([`${file}: this is no file`]);
  } catch (error) {
    throw complaintOfFile(file, error);
  }
  await withStore(options, async ({ attachments }) => {
    const bytes = readPieces(file);
    const added = await attachments.add({ traveler, name, mediaType, who, note: options.note ?? "", bytes });
    terminal.say(`${traveler}: attached ${added.name}, ${added.size} B.`);
  });
}

async function* readPieces(file: string): AsyncGenerator<Uint8Array> {
  try {
    yield* createReadStream(file);
  } catch (error) {
    throw complaintOfFile(file, error);
  }
}

/** Writes an attached file out to a new file. */
export async function takeCommand(
  traveler: string,
  name: string,
  { data, out }: TakeOptions,
  terminal: Terminal,
): Promise<void> {
  if (existsSync(out)) throw new Complaint([`${out}: is there already; give the name of a new file`]);
  await withStore({ data }, async ({ attachments }) => {
    const there = await attachments.list(traveler);
    const wanted = there.find((one) => one.name === name.normalize("NFC"));
    if (wanted === undefined) {
      const names = there.map((one) => one.name).join(", ") || "nothing";
      throw new Complaint([`${traveler}: got "${name}", which is not attached; there is ${names}`]);
    }
    const { StoreFault } = await import("@bitwright/store");
    try {
      await pipeline(Readable.from(attachments.bytes(wanted)), createWriteStream(out, { flags: "wx" }));
    } catch (error) {
      if ((error as { code?: string }).code !== "EEXIST") rmSync(out, { force: true });
      if (error instanceof StoreFault) throw error;
      throw complaintOfFile(out, error);
    }
    terminal.say(`Wrote ${out}, ${wanted.size} B.`);
  });
}
