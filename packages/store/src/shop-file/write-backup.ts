import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { keptBytes } from "../attachments.ts";
import type { KeptTable, Shop } from "../database/tables.ts";
import { bytesInWords } from "../limits.ts";
import type { StoreContext } from "../store-context.ts";
import { StoreFault } from "../store-fault.ts";
import { readBackup } from "./read-backup.ts";
import {
  type BackupCounts,
  CONTENTS,
  entryOfAttachment,
  entryOfTable,
  KEPT_TABLES,
  SHOP_FORMAT,
  SHOP_VERSION,
  type ShopContents,
} from "./shop-file.ts";
import { tableRows } from "./table-rows.ts";
import { type ZipWriter, zipWriter } from "./zip-writer.ts";

/** A zip counts its entries in two bytes [-]. */
const MOST_ENTRIES = 65_535;

/** Writes everything in one view of a shop to a new zip file. The file has its name only once it has been read back whole. */
export async function writeBackup(view: Shop, file: string, context: StoreContext): Promise<BackupCounts> {
  if (existsSync(file)) {
    const wrong = `${file} is there already`;
    throw new StoreFault("in-the-way", { field: "backup", got: file, wrong, expected: "give the name of a new file" });
  }
  const part = `${file}.part`;
  try {
    const zip = zipWriter(part, context.now());
    try {
      await writeEntries(zip, view, context);
    } catch (error) {
      zip.abandon();
      throw error;
    }
    zip.end();
    const { counts } = readBackup(part, context.limits.backup);
    renameSync(part, file);
    settle(dirname(file));
    return counts;
  } catch (error) {
    rmSync(part, { force: true });
    if (error instanceof StoreFault || (error as { syscall?: string }).syscall === undefined) throw error;
    const wrong = `${file} cannot be written (${(error as Error).message})`;
    throw new StoreFault("out-of-reach", {
      field: "backup",
      got: file,
      wrong,
      expected: "give a file on another disk",
    });
  }
}

async function writeEntries(zip: ZipWriter, view: Shop, { limits, program, now }: StoreContext): Promise<void> {
  const entries: ShopContents["entries"][number][] = [];
  let size = 0;
  const grown = (bytes: number) => {
    size += bytes;
    if (size > limits.backup) throw tooLarge(`more than ${bytesInWords(limits.backup)}`, bytesInWords(limits.backup));
  };
  for (const table of KEPT_TABLES) entries.push(await zip.entry(entryOfTable(table), lines(view, table), grown));
  const attachments = await view.selectFrom("attachment").select(["id", "size", "sha256"]).orderBy("id").execute();
  if (entries.length + attachments.length + 1 > MOST_ENTRIES) {
    throw tooLarge(`${attachments.length} attachments`, `${MOST_ENTRIES - KEPT_TABLES.length - 1} attachments`);
  }
  for (const one of attachments) entries.push(await zip.entry(entryOfAttachment(one.id), keptBytes(view, one), grown));
  const madeAt = now().toISOString();
  const contents: ShopContents = { format: SHOP_FORMAT, version: SHOP_VERSION, program, madeAt, entries };
  await zip.entry(CONTENTS, [Buffer.from(`${JSON.stringify(contents, null, 2)}\n`)]);
}

function tooLarge(got: string, most: string): StoreFault {
  const expected = `one zip takes ${most}; end the program and copy the data folder, or use the server's own backup`;
  return new StoreFault("bad-value", { field: "backup", got, wrong: `the shop holds ${got}`, expected });
}

async function* lines(view: Shop, table: KeptTable): AsyncGenerator<Uint8Array> {
  for await (const row of tableRows(view, table)) yield Buffer.from(`${JSON.stringify(row)}\n`);
}

/** Waits until the name of a file stands on the disk; a system that cannot wait for a folder has written it by itself. */
function settle(folder: string): void {
  try {
    const handle = openSync(folder, "r");
    fsyncSync(handle);
    closeSync(handle);
  } catch (error) {
    if (!["EISDIR", "EPERM", "EACCES", "EINVAL", "EBADF"].includes((error as { code?: string }).code ?? ""))
      throw error;
  }
}
