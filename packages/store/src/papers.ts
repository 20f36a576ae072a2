import type { Kysely } from "kysely";
import { givenBody } from "./body.ts";
import type { Shop, Tables } from "./database/tables.ts";
import { givenName, givenNote, givenWho } from "./given.ts";
import type { PaperEntry, PaperKind, PaperName, RefusedSave, SavedVersion, SaveOutcome, Saving } from "./paper.ts";
import { noSuchPaper, paperRow } from "./paper-row.ts";
import type { StoreContext } from "./store-context.ts";
import { StoreFault } from "./store-fault.ts";
import { refusedSave, savedVersion, VERSION_COLUMNS, versionEntry } from "./version-row.ts";

/** Travelers, lists and settings with every saved version. */
export interface Papers {
  /** Saves a new version. One that builds on an older version than the newest is refused, and both are kept. */
  readonly save: (saving: Saving) => Promise<SaveOutcome>;
  /** All papers of a kind, by name. */
  readonly list: (kind: PaperKind) => Promise<PaperEntry[]>;
  /** The newest version of a paper, or the one asked for. */
  readonly read: (paper: PaperName, version?: number) => Promise<SavedVersion>;
  /** Every version that was saved, the first one first, without the texts. */
  readonly history: (paper: PaperName) => Promise<PaperEntry["newest"][]>;
  /** Every save that was refused, the first one first. */
  readonly refusals: (paper: PaperName) => Promise<RefusedSave[]>;
}

/** The papers of an open shop. */
export function papersOf(db: Kysely<Tables>, context: StoreContext): Papers {
  return {
    save: (saving) => save(db, context, saving),
    list: (kind) => list(db, kind),
    read: (paper, version) => read(db, paper, version),
    async history(paper) {
      const { id } = await paperRow(db, paper);
      const rows = db.selectFrom("paper_version").select(VERSION_COLUMNS).where("paper_id", "=", id);
      return (await rows.orderBy("number").execute()).map(versionEntry);
    },
    async refusals(paper) {
      const { id } = await paperRow(db, paper);
      const rows = db.selectFrom("refusal").selectAll().where("paper_id", "=", id);
      return (await rows.orderBy("number").execute()).map(refusedSave);
    },
  };
}

async function save(db: Kysely<Tables>, context: StoreContext, saving: Saving): Promise<SaveOutcome> {
  const { kind, body, basedOn } = saving;
  const name = givenName("name", saving.name);
  const { title, sound } = givenBody(kind, body, context.limits.body);
  if (!Number.isSafeInteger(basedOn) || basedOn < 0) {
    const expected = "give the version that the text was made from, 0 for a new paper";
    throw new StoreFault("bad-value", { field: "basedOn", got: String(basedOn), expected });
  }
  const made = {
    saved_by: givenWho(saving.who),
    note: givenNote(saving.note),
    program: context.program,
    body,
  };
  const at = context.now().toISOString();
  return db.transaction().execute(async (shop): Promise<SaveOutcome> => {
    if (basedOn === 0) {
      const row = { id: context.newId(), kind, name, current: 0, refused: 0 };
      await shop
        .insertInto("paper")
        .values(row)
        .onConflict((same) => same.columns(["kind", "name"]).doNothing())
        .execute();
    }
    // One statement both looks and moves on: of two savers, only one finds the version it built on.
    const moved = await shop
      .updateTable("paper")
      .set((row) => ({ current: row("current", "+", 1) }))
      .where("kind", "=", kind)
      .where("name", "=", name)
      .where("current", "=", basedOn)
      .returning(["id", "current"])
      .executeTakeFirst();
    if (moved === undefined) return refuse(shop, { kind, name }, { ...made, based_on: basedOn, refused_at: at });
    const version = { ...made, paper_id: moved.id, number: moved.current, saved_at: at, title, sound: Number(sound) };
    await shop.insertInto("paper_version").values(version).execute();
    return { ok: true, saved: versionEntry(version) };
  });
}

/** What is known of a refused save before it has its number. */
type Refusing = Omit<Tables["refusal"], "paper_id" | "number" | "found">;

async function refuse(shop: Shop, paper: PaperName, refusing: Refusing): Promise<SaveOutcome> {
  const row = await shop
    .updateTable("paper")
    .set((old) => ({ refused: old("refused", "+", 1) }))
    .where("kind", "=", paper.kind)
    .where("name", "=", paper.name)
    .returning(["id", "current", "refused"])
    .executeTakeFirst();
  if (row === undefined) throw noSuchPaper(paper, "save it as a new one, on version 0");
  const refusal = { ...refusing, paper_id: row.id, number: row.refused, found: row.current };
  await shop.insertInto("refusal").values(refusal).execute();
  return { ok: false, refused: refusedSave(refusal), newest: await read(shop, paper) };
}

async function list(db: Kysely<Tables>, kind: PaperKind): Promise<PaperEntry[]> {
  const rows = await db
    .selectFrom("paper")
    .innerJoin("paper_version", (join) =>
      join.onRef("paper_version.paper_id", "=", "paper.id").onRef("paper_version.number", "=", "paper.current"),
    )
    .select(["paper.name", "paper.refused"])
    .select(VERSION_COLUMNS)
    .where("paper.kind", "=", kind)
    .execute();
  const entries = rows.map((row) => ({ kind, name: row.name, refused: row.refused, newest: versionEntry(row) }));
  // Sorted here, because every database has an order of letters of its own.
  return entries.sort((a, b) => (a.name < b.name ? -1 : 1));
}

async function read(shop: Shop, paper: PaperName, version?: number): Promise<SavedVersion> {
  const { id, current } = await paperRow(shop, paper);
  const number = version ?? current;
  const rows = shop.selectFrom("paper_version").selectAll().where("paper_id", "=", id);
  const row =
    Number.isInteger(number) && number >= 1 && number <= current
      ? await rows.where("number", "=", number).executeTakeFirst()
      : undefined;
  if (row === undefined) {
    const expected = `give a version of ${paper.name} from 1 to ${current}`;
    throw new StoreFault("not-found", { field: "version", got: String(number), expected });
  }
  return savedVersion(row);
}
