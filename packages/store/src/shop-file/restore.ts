import type { Kysely } from "kysely";
import type { Tables } from "../database/tables.ts";
import { PIECE } from "../pieces.ts";
import type { StoreContext } from "../store-context.ts";
import { StoreFault } from "../store-fault.ts";
import { readBackup } from "./read-backup.ts";
import { entryOfAttachment, KEPT_TABLES } from "./shop-file.ts";
import type { BackupCounts } from "./write-backup.ts";

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
      // Every column has been held to its type as the line was read.
      for (const row of backup.rowsOf(table))
        await shop
          .insertInto(table)
          .values(row as never)
          .execute();
    }
    for (const { id } of await shop.selectFrom("attachment").select("id").execute()) {
      const bytes = backup.bytesOf(entryOfAttachment(id));
      for (let at = 0, number = 1; at < bytes.length; at += PIECE, number += 1) {
        const piece = { attachment_id: id, number, bytes: Buffer.from(bytes.subarray(at, at + PIECE)) };
        await shop.insertInto("attachment_piece").values(piece).execute();
      }
    }
  });
  return backup.counts;
}
