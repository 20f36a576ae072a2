import { createHash } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { type UnzipFileInfo, unzipSync } from "fflate";
import { KEPT_COLUMNS, type KeptTable } from "../database/tables.ts";
import { bytesInWords } from "../limits.ts";
import { StoreFault } from "../store-fault.ts";
import {
  type BackupCounts,
  CONTENTS,
  entryOfTable,
  KEPT_TABLES,
  SHOP_FORMAT,
  SHOP_VERSION,
  type ShopContents,
} from "./shop-file.ts";

/** A backup whose every entry is what its list of contents says. */
export interface ReadBackup {
  readonly counts: BackupCounts;
  readonly bytesOf: (entry: string) => Uint8Array;
  readonly rowsOf: (table: KeptTable) => Iterable<Readonly<Record<string, string | number>>>;
}

/** Reads a backup and holds every entry to its size and hash before anything is made of it. */
export function readBackup(file: string, most: number): ReadBackup {
  const damaged = (wrong: string) =>
    new StoreFault("damaged", {
      field: "backup",
      got: file,
      wrong: `${file}: ${wrong}`,
      expected: "give a whole backup",
    });
  const zip = bytesOfFile(file, most);
  const found: UnzipFileInfo[] = [];
  unpacked(() => unzipSync(zip, { filter: (entry) => found.push(entry) < 0 }), damaged);
  const bytesOf = entriesInRuns(zip, found, damaged);
  // Held to the sizes that the zip tells before anything is unpacked: a few bytes may claim to be a great many.
  const size = found.reduce((sum, { originalSize }) => sum + originalSize, 0);
  if (size > most + zip.length) throw damaged(`it says to hold ${bytesInWords(size)}, more than ${bytesInWords(most)}`);
  const contents = contentsOf(bytesOf(CONTENTS), damaged);
  const named = new Set(contents.entries.map(({ name }) => name));
  for (const { name } of found) if (name !== CONTENTS && !named.has(name)) throw damaged(`${name} is not of it`);
  for (const table of KEPT_TABLES)
    if (!named.has(entryOfTable(table))) throw damaged(`the table ${table} is not in it`);
  for (const { name, size, sha256 } of contents.entries) {
    const bytes = bytesOf(name);
    if (bytes.length !== size || createHash("sha256").update(bytes).digest("hex") !== sha256) {
      throw damaged(`the entry ${name} is not what was written`);
    }
  }
  const rowsOf: ReadBackup["rowsOf"] = (table) => rowsIn(table, bytesOf(entryOfTable(table)), damaged);
  const count = (table: KeptTable) => [...rowsOf(table)].length;
  const counts = {
    papers: count("paper"),
    versions: count("paper_version"),
    refusals: count("refusal"),
    attachments: count("attachment"),
  };
  return { counts, bytesOf, rowsOf };
}

type Damaged = (wrong: string) => StoreFault;

/** Unpacked at once and held until another entry is asked for [B]; one entry may be larger. */
const RUN = 16 * 1024 ** 2;

/**
 * The bytes of an entry, unpacked together with those that follow it. Each unpacking walks the whole index of the zip, so
 * that entry by entry a shop of many attachments would take as long as their number squared.
 */
function entriesInRuns(zip: Uint8Array, found: readonly UnzipFileInfo[], damaged: Damaged): ReadBackup["bytesOf"] {
  const placeOf = new Map(found.map(({ name }, place) => [name, place]));
  let run: Readonly<Record<string, Uint8Array>> = {};
  return (entry) => {
    const place = placeOf.get(entry);
    if (place === undefined) throw damaged(`the entry ${entry} is not in it`);
    if (!Object.hasOwn(run, entry)) {
      const names = new Set<string>();
      for (let at = place, room = RUN; at < found.length && (room > 0 || at === place); at++) {
        names.add(found[at].name);
        room -= found[at].originalSize;
      }
      run = unpacked(() => unzipSync(zip, { filter: ({ name }) => names.has(name) }), damaged);
    }
    return run[entry];
  };
}

function bytesOfFile(file: string, most: number): Uint8Array {
  try {
    const { size } = statSync(file);
    if (size <= most) return readFileSync(file);
    const expected = `give a backup of at most ${bytesInWords(most)}`;
    throw new StoreFault("bad-value", { field: "backup", got: bytesInWords(size), expected });
  } catch (error) {
    if (error instanceof StoreFault) throw error;
    const wrong = `${file} cannot be read (${(error as Error).message})`;
    throw new StoreFault("out-of-reach", { field: "backup", got: file, wrong, expected: "give a backup of a shop" });
  }
}

function unpacked<T>(unpack: () => T, damaged: Damaged): T {
  try {
    return unpack();
  } catch (error) {
    throw damaged(`it is no sound zip (${error instanceof Error ? error.message : error})`);
  }
}

function contentsOf(bytes: Uint8Array, damaged: Damaged): ShopContents {
  const contents = unpacked(() => JSON.parse(new TextDecoder().decode(bytes)), damaged) as ShopContents;
  if (contents?.format !== SHOP_FORMAT) throw damaged("it is no backup of a shop");
  if (contents.version !== SHOP_VERSION) {
    const wrong = `this backup is of version ${contents.version}, written by ${contents.program}`;
    const expected = `this program reads version ${SHOP_VERSION}`;
    throw new StoreFault("newer", { field: "backup", got: String(contents.version), wrong, expected });
  }
  if (!Array.isArray(contents.entries)) throw damaged("it lists no contents");
  return contents;
}

function* rowsIn(table: KeptTable, bytes: Uint8Array, damaged: Damaged) {
  const columns = Object.entries(KEPT_COLUMNS[table]);
  for (let at = 0, line = 1; at < bytes.length; line += 1) {
    const end = bytes.indexOf(10, at);
    const text = new TextDecoder().decode(bytes.subarray(at, end < 0 ? bytes.length : end));
    at = end < 0 ? bytes.length : end + 1;
    const row = unpacked(() => JSON.parse(text), damaged);
    const fits = columns.every(([name, type]) => typeof row?.[name] === type);
    if (!fits || Object.keys(row).length !== columns.length) throw damaged(`line ${line} of ${table} is no row of it`);
    yield row as Record<string, string | number>;
  }
}
