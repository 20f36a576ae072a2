import type { Kysely } from "kysely";
import type { KeptTable, Shop, Tables } from "../database/tables.ts";
import { PIECE } from "../pieces.ts";
import type { StoreContext } from "../store-context.ts";
import { StoreFault } from "../store-fault.ts";
import { readBackup } from "./read-backup.ts";
import { type BackupCounts, entryOfAttachment, KEPT_TABLES } from "./shop-file.ts";

/** Fills an empty shop from a backup in one transaction. A shop that holds anything is left as it is. */
export async function restoreInto(
  db: Kysely<Tables>,
  file: string,
  place: string,
  { limits }: StoreContext,
): Promise<BackupCounts> {
  const backup = readBackup(file, limits.backup);
  await db.transaction().execute(async (shop) => {
    const kept = await shop.selectFrom("paper").select("id").limit(1).executeTakeFirst();
    if (kept !== undefined) {
      const wrong = `${place} holds a shop already`;
      const expected = "restore into a new folder or an empty database; nothing is written over";
      throw new StoreFault("in-the-way", { field: "data", got: place, wrong, expected });
    }
    for (const table of KEPT_TABLES) {
      for (const row of backup.rowsOf(table)) await put(shop, table, row, file);
    }
    // In the order in which they were written, so that they are unpacked run by run.
    for (const { id } of await shop.selectFrom("attachment").select("id").orderBy("id").execute()) {
      const bytes = backup.bytesOf(entryOfAttachment(id));
      for (let at = 0, number = 1; at < bytes.length; at += PIECE, number += 1) {
        const piece = { attachment_id: id, number, bytes: Buffer.from(bytes.subarray(at, at + PIECE)) };
        await shop.insertInto("attachment_piece").values(piece).execute();
      }
    }
  });
  return backup.counts;
}

async function put(shop: Shop, table: KeptTable, row: Readonly<Record<string, string | number>>, file: string) {
  try {
    // Every column has been held to its type as the line was read.
    await shop
      .insertInto(table)
      .values(row as never)
      .execute();
  } catch (error) {
    if (!isUnfit(error)) throw error;
    const wrong = `${file}: a row of ${table} does not fit the others (${(error as Error).message})`;
    throw new StoreFault("damaged", { field: "backup", got: file, wrong, expected: "give a whole backup" });
  }
}

/** Whether a database found that rows do not belong together: PostgreSQL says class 23, SQLite a constraint. */
function isUnfit(error: unknown): boolean {
  return /^(23...|SQLITE_CONSTRAINT.*)$/.test((error as { code?: string }).code ?? "");
}
