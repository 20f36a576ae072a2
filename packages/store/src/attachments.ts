import { createHash } from "node:crypto";
import type { Kysely } from "kysely";
import type { Shop, Tables } from "./database/tables.ts";
import { givenName, givenNote, givenWho } from "./given.ts";
import { bytesInWords } from "./limits.ts";
import { paperRow } from "./paper-row.ts";
import { inPieces } from "./pieces.ts";
import type { StoreContext } from "./store-context.ts";
import { StoreFault } from "./store-fault.ts";

/** A file that goes with a traveler. */
export interface AttachmentEntry {
  readonly id: string;
  readonly name: string;
  /** As given: `image/jpeg`. */
  readonly mediaType: string;
  /** [B] */
  readonly size: number;
  /** SHA-256 of its bytes, in hexadecimal digits. */
  readonly sha256: string;
  /** In UTC. */
  readonly addedAt: string;
  readonly who: string;
  readonly note: string;
}

/** A file that is to go with a traveler. */
export interface Attaching {
  /** Name of the traveler. */
  readonly traveler: string;
  /** Name of the file, without folders; no two of one traveler share it. */
  readonly name: string;
  readonly mediaType: string;
  readonly who: string;
  readonly note: string;
  /** Read piece by piece; other saves wait meanwhile, so give bytes that are at hand. */
  readonly bytes: Iterable<Uint8Array> | AsyncIterable<Uint8Array>;
}

/** The files of an open shop. */
export interface Attachments {
  /** Keeps a file whole or not at all. */
  readonly add: (attaching: Attaching) => Promise<AttachmentEntry>;
  /** The files of a traveler, by name. */
  readonly list: (traveler: string) => Promise<AttachmentEntry[]>;
  /** The bytes of a file, piece by piece; ends with a fault if they are not those that were given. */
  readonly bytes: (attachment: Pick<AttachmentEntry, "id" | "size" | "sha256">) => AsyncIterable<Uint8Array>;
}

/** The attachments of an open shop. */
export function attachmentsOf(db: Kysely<Tables>, context: StoreContext): Attachments {
  return {
    add: (attaching) => add(db, context, attaching),
    async list(traveler) {
      const { id } = await paperRow(db, { kind: "traveler", name: traveler });
      const rows = await db.selectFrom("attachment").selectAll().where("paper_id", "=", id).execute();
      return rows.map(entryOf).sort((a, b) => (a.name < b.name ? -1 : 1));
    },
    bytes: (attachment) => keptBytes(db, attachment),
  };
}

async function add(db: Kysely<Tables>, context: StoreContext, attaching: Attaching): Promise<AttachmentEntry> {
  const name = givenName("attachment", attaching.name);
  const mediaType = givenMediaType(attaching.mediaType);
  const made = { id: context.newId(), added_by: givenWho(attaching.who), note: givenNote(attaching.note) };
  return db.transaction().execute(async (shop) => {
    const { id: paper_id } = await paperRow(shop, { kind: "traveler", name: attaching.traveler });
    const added_at = context.now().toISOString();
    const empty = { ...made, paper_id, name, media_type: mediaType, added_at, size: 0, sha256: "" };
    const taken = await shop
      .insertInto("attachment")
      .values(empty)
      .onConflict((same) => same.columns(["paper_id", "name"]).doNothing())
      .returning("id")
      .executeTakeFirst();
    if (taken === undefined) {
      const wrong = `${attaching.traveler} has an attachment "${name}" already`;
      throw new StoreFault("in-the-way", { field: "attachment", got: name, wrong, expected: "give another name" });
    }
    const told = await keepPieces(shop, made.id, attaching.bytes, context.limits.attachment);
    await shop.updateTable("attachment").set(told).where("id", "=", made.id).execute();
    return entryOf({ ...empty, ...told });
  });
}

/** `type/subtype` as files carry it. */
function givenMediaType(mediaType: string): string {
  if (/^[\w.+-]{1,60}\/[\w.+-]{1,60}$/.test(mediaType)) return mediaType;
  const expected = "give a kind of file such as image/jpeg or application/octet-stream";
  throw new StoreFault("bad-value", { field: "mediaType", got: JSON.stringify(mediaType), expected });
}

async function keepPieces(shop: Shop, attachment_id: string, given: Attaching["bytes"], most: number) {
  const hash = createHash("sha256");
  let size = 0;
  let number = 0;
  for await (const bytes of inPieces(given)) {
    size += bytes.length;
    if (size > most) {
      const limit = bytesInWords(most);
      const got = `more than ${limit}`;
      throw new StoreFault("bad-value", { field: "attachment", got, expected: `give a file of at most ${limit}` });
    }
    hash.update(bytes);
    number += 1;
    await shop.insertInto("attachment_piece").values({ attachment_id, number, bytes }).execute();
  }
  return { size, sha256: hash.digest("hex") };
}

/** The bytes of an attachment in a shop or in one view of it. */
export async function* keptBytes(
  shop: Shop,
  { id, size, sha256 }: Pick<AttachmentEntry, "id" | "size" | "sha256">,
): AsyncGenerator<Uint8Array> {
  const hash = createHash("sha256");
  let got = 0;
  for (let number = 1; ; number += 1) {
    const rows = shop.selectFrom("attachment_piece").select("bytes").where("attachment_id", "=", id);
    const piece = await rows.where("number", "=", number).executeTakeFirst();
    if (piece === undefined) break;
    got += piece.bytes.length;
    hash.update(piece.bytes);
    yield piece.bytes;
  }
  if (got === size && hash.digest("hex") === sha256) return;
  const wrong = `attachment ${id} gives ${got} B that are not the ${size} B that were kept`;
  throw new StoreFault("damaged", { field: "attachment", got: id, wrong, expected: "take it from a backup" });
}

function entryOf(row: Tables["attachment"]): AttachmentEntry {
  return {
    id: row.id,
    name: row.name,
    mediaType: row.media_type,
    size: row.size,
    sha256: row.sha256,
    addedAt: row.added_at,
    who: row.added_by,
    note: row.note,
  };
}
