import type { Shop, Tables } from "./database/tables.ts";
import type { PaperName } from "./paper.ts";
import { StoreFault } from "./store-fault.ts";

/** The row of a paper that must be there. */
export async function paperRow(shop: Shop, paper: PaperName): Promise<Tables["paper"]> {
  const name = paper.name.normalize("NFC");
  const rows = shop.selectFrom("paper").selectAll().where("kind", "=", paper.kind);
  // No database is asked for a null character, which none can hold.
  const row = name.includes("\0") ? undefined : await rows.where("name", "=", name).executeTakeFirst();
  if (row === undefined) throw noSuchPaper(paper, `give the name of a ${paper.kind} that is kept`);
  return row;
}

/** That nothing of that name is kept. */
export function noSuchPaper({ kind, name }: PaperName, expected: string): StoreFault {
  const wrong = `no ${kind} of the name ${JSON.stringify(name)} is kept`;
  return new StoreFault("not-found", { field: "name", got: JSON.stringify(name), wrong, expected });
}
