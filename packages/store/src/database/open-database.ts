import { resolve } from "node:path";
import { Kysely, PostgresDialect, SqliteDialect, sql } from "kysely";
import { type Dialect, migrateForward } from "./migrations.ts";
import { SCHEMA, serverPool, withoutPassword } from "./postgres-server.ts";
import { holdFolder } from "./sqlite-folder.ts";
import type { Tables } from "./tables.ts";

/** An open database of a shop, and what only its own kind can do. */
export interface OpenDatabase {
  readonly db: Kysely<Tables>;
  /** The place as it may be shown. */
  readonly place: string;
  /** What the database itself finds wrong with its files; empty where it is sound or does not tell. */
  readonly ownFaults: () => Promise<string[]>;
  /** Runs `read` on one unchanging view of the whole shop. */
  readonly oneView: <T>(read: (view: Kysely<Tables>) => Promise<T>) => Promise<T>;
  readonly close: () => Promise<void>;
}

const isServer = (place: string) => /^postgres(ql)?:\/\//i.test(place);

/** Opens a shop in a folder, or on a PostgreSQL server where the place is a `postgres://` address. */
export async function openDatabase(place: string, openedAt: string): Promise<OpenDatabase> {
  return isServer(place) ? onServer(place) : inFolder(resolve(place), openedAt);
}

async function inFolder(folder: string, openedAt: string): Promise<OpenDatabase> {
  const held = holdFolder(folder, openedAt);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: held.database }) });
  const close = async () => {
    held.letGo();
    await db.destroy();
  };
  await migrated(db, { bytes: "blob" }, folder, close);
  const ownFaults = async () => {
    const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(db);
    const lost = await sql<{ table: string }>`pragma foreign_key_check`.execute(db);
    return [
      ...rows.map((row) => row.integrity_check).filter((words) => words !== "ok"),
      ...lost.rows.map(({ table }) => `a row of ${table} belongs to nothing`),
    ];
  };
  // One connection, held for the whole reading: nobody writes meanwhile.
  return { db, place: folder, ownFaults, oneView: (read) => db.transaction().execute(read), close };
}

async function onServer(url: string): Promise<OpenDatabase> {
  const pool = await serverPool(url);
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  const close = () => db.destroy();
  await migrated(db, { bytes: "bytea", schema: SCHEMA }, withoutPassword(url), close);
  return {
    db,
    place: withoutPassword(url),
    ownFaults: async () => [],
    oneView: (read) => db.transaction().setIsolationLevel("repeatable read").execute(read),
    close,
  };
}

async function migrated(db: Kysely<Tables>, dialect: Dialect, place: string, close: () => Promise<void>) {
  try {
    await migrateForward(db, dialect, place);
  } catch (error) {
    await close();
    throw error;
  }
}
