import { KEPT_COLUMNS, type KeptTable, type Shop } from "../database/tables.ts";

/** The rows of a table one by one, in the order of their keys; never more than one text in memory. */
export async function* tableRows(view: Shop, table: KeptTable): AsyncGenerator<Record<string, unknown>> {
  if (table === "paper" || table === "attachment") {
    const columns = Object.keys(KEPT_COLUMNS[table]) as "id"[];
    const ids = await view.selectFrom(table).select("id").execute();
    for (const { id } of ids.sort((a, b) => (a.id < b.id ? -1 : 1))) {
      yield await view.selectFrom(table).select(columns).where("id", "=", id).executeTakeFirstOrThrow();
    }
    return;
  }
  const columns = Object.keys(KEPT_COLUMNS[table]) as "number"[];
  const keys = await view.selectFrom(table).select(["paper_id", "number"]).execute();
  const inOrder = keys.sort((a, b) =>
    a.paper_id === b.paper_id ? a.number - b.number : a.paper_id < b.paper_id ? -1 : 1,
  );
  for (const { paper_id, number } of inOrder) {
    const rows = view.selectFrom(table).select(columns).where("paper_id", "=", paper_id);
    yield await rows.where("number", "=", number).executeTakeFirstOrThrow();
  }
}
