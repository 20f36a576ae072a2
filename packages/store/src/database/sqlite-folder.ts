import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { StoreFault } from "../store-fault.ts";

/** The database file in a data folder. */
export const DATABASE_FILE = "shop.sqlite";
const HOLDER_FILE = "in-use.txt";

/** How long a second process waits for the first to end before it gives up [ms]. */
const PATIENCE = 2000;

/** A data folder that this process holds alone. */
export interface HeldFolder {
  readonly database: Database.Database;
  readonly letGo: () => void;
}

/**
 * Opens the database of a data folder, making both where needed. The connection keeps the system's lock on the file until
 * it is closed; the system frees it when the process dies, however it dies, so no lock is ever left behind.
 */
export function holdFolder(folder: string, openedAt: string): HeldFolder {
  const holder = join(folder, HOLDER_FILE);
  let database: Database.Database | undefined;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    database = new Database(join(folder, DATABASE_FILE), { timeout: PATIENCE });
    database.pragma("locking_mode = EXCLUSIVE");
    const journal = database.pragma("journal_mode = WAL", { simple: true });
    if (journal !== "wal") throw new Error(`the write-ahead log cannot be used here, the journal is "${journal}"`);
    database.pragma("synchronous = FULL");
    database.pragma("foreign_keys = ON");
    // The first write takes the lock.
    database.exec("begin immediate; commit");
    writeFileSync(holder, `process ${process.pid}, since ${openedAt}\n`);
  } catch (error) {
    database?.close();
    throw openingFault(folder, error, holder);
  }
  const held = database;
  return {
    database: held,
    letGo: () => {
      // The note goes first: afterwards the folder may already be another's.
      rmSync(holder, { force: true });
      if (held.open) held.close();
    },
  };
}

function openingFault(folder: string, error: unknown, holder: string): StoreFault {
  const code = (error as { code?: string }).code ?? "";
  const words = error instanceof Error ? error.message : String(error);
  const about = { field: "data", got: folder };
  if (code.startsWith("SQLITE_BUSY") || code.startsWith("SQLITE_LOCKED")) {
    const wrong = `${folder} is in use by another process (${holderOf(holder)})`;
    return new StoreFault("in-use", { ...about, wrong, expected: "end that one first, or give another folder" });
  }
  if (code === "SQLITE_NOTADB" || code.startsWith("SQLITE_CORRUPT")) {
    const wrong = `${join(folder, DATABASE_FILE)} is no sound database (${words})`;
    return new StoreFault("damaged", { ...about, wrong, expected: "restore a backup into another folder" });
  }
  const wrong = `${folder} cannot be used (${words})`;
  return new StoreFault("out-of-reach", { ...about, wrong, expected: "give a folder that may be written" });
}

function holderOf(holder: string): string {
  try {
    return readFileSync(holder, "utf8").trim() || "which does not say its number";
  } catch {
    return "which does not say its number";
  }
}
