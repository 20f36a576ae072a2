import { type Kysely, type Migration, Migrator, sql } from "kysely";
import { StoreFault } from "../store-fault.ts";
import type { Tables } from "./tables.ts";

/** What differs from one database to the other in the making of tables. */
export interface Dialect {
  /** Type of a column of bytes. */
  readonly bytes: "blob" | "bytea";
  /** Schema that holds the tables, where the database has such. */
  readonly schema?: string;
}

/** Steps forward, by name, in order. A step that was ever released is never changed; a change is a new step. */
function stepsFor({ bytes }: Dialect): Record<string, Migration> {
  return {
    "0001-papers-and-attachments": {
      async up(db) {
        await db.schema
          .createTable("paper")
          .addColumn("id", "text", (column) => column.primaryKey())
          .addColumn("kind", "text", (column) => column.notNull())
          .addColumn("name", "text", (column) => column.notNull())
          .addColumn("current", "integer", (column) => column.notNull())
          .addColumn("refused", "integer", (column) => column.notNull())
          .addUniqueConstraint("paper_name", ["kind", "name"])
          .execute();
        await db.schema
          .createTable("paper_version")
          .addColumn("paper_id", "text", (column) => column.notNull().references("paper.id"))
          .addColumn("number", "integer", (column) => column.notNull())
          .addColumn("saved_at", "text", (column) => column.notNull())
          .addColumn("saved_by", "text", (column) => column.notNull())
          .addColumn("note", "text", (column) => column.notNull())
          .addColumn("program", "text", (column) => column.notNull())
          .addColumn("title", "text", (column) => column.notNull())
          .addColumn("sound", "integer", (column) => column.notNull())
          .addColumn("body", "text", (column) => column.notNull())
          .addPrimaryKeyConstraint("paper_version_key", ["paper_id", "number"])
          .execute();
        await db.schema
          .createTable("refusal")
          .addColumn("paper_id", "text", (column) => column.notNull().references("paper.id"))
          .addColumn("number", "integer", (column) => column.notNull())
          .addColumn("based_on", "integer", (column) => column.notNull())
          .addColumn("found", "integer", (column) => column.notNull())
          .addColumn("refused_at", "text", (column) => column.notNull())
          .addColumn("saved_by", "text", (column) => column.notNull())
          .addColumn("note", "text", (column) => column.notNull())
          .addColumn("program", "text", (column) => column.notNull())
          .addColumn("body", "text", (column) => column.notNull())
          .addPrimaryKeyConstraint("refusal_key", ["paper_id", "number"])
          .execute();
        await db.schema
          .createTable("attachment")
          .addColumn("id", "text", (column) => column.primaryKey())
          .addColumn("paper_id", "text", (column) => column.notNull().references("paper.id"))
          .addColumn("name", "text", (column) => column.notNull())
          .addColumn("media_type", "text", (column) => column.notNull())
          .addColumn("size", "integer", (column) => column.notNull())
          .addColumn("sha256", "text", (column) => column.notNull())
          .addColumn("added_at", "text", (column) => column.notNull())
          .addColumn("added_by", "text", (column) => column.notNull())
          .addColumn("note", "text", (column) => column.notNull())
          .addUniqueConstraint("attachment_name", ["paper_id", "name"])
          .execute();
        await db.schema
          .createTable("attachment_piece")
          .addColumn("attachment_id", "text", (column) => column.notNull().references("attachment.id"))
          .addColumn("number", "integer", (column) => column.notNull())
          .addColumn("bytes", sql.raw(bytes), (column) => column.notNull())
          .addPrimaryKeyConstraint("attachment_piece_key", ["attachment_id", "number"])
          .execute();
      },
    },
  };
}

/** Brings the tables of a shop to today's form; a store of a newer program is left as it is. */
export async function migrateForward(db: Kysely<Tables>, dialect: Dialect, place: string): Promise<void> {
  const steps = stepsFor(dialect);
  const migrator = new Migrator({
    db,
    provider: { getMigrations: async () => steps },
    ...(dialect.schema === undefined ? {} : { migrationTableSchema: dialect.schema }),
  });
  const { error } = await migrator.migrateToLatest();
  if (error === undefined) return;
  const words = error instanceof Error ? error.message : String(error);
  if (!words.startsWith("corrupted migrations")) throw error;
  throw new StoreFault("newer", {
    field: "data",
    got: place,
    wrong: `${place} was written by a newer Bitwright (${words})`,
    expected: `open it with that one; this one knows it up to step ${Object.keys(steps).at(-1)}`,
  });
}
