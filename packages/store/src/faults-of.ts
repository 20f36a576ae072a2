import type { OpenDatabase } from "./database/open-database.ts";
import type { Shop } from "./database/tables.ts";

/** Where the database is damaged, or a paper does not have the versions it counts. */
export async function faultsOf({ ownFaults, oneView }: OpenDatabase): Promise<string[]> {
  return [...(await ownFaults()), ...(await oneView(miscounts))];
}

async function miscounts(db: Shop): Promise<string[]> {
  const faults: string[] = [];
  const papers = await db.selectFrom("paper").selectAll().orderBy("id").execute();
  for (const { id, kind, name, current, refused } of papers) {
    const versions = await numbersIn(db, "paper_version", id);
    const refusals = await numbersIn(db, "refusal", id);
    if (!countsUpTo(versions, current) || current < 1) {
      faults.push(`${kind} ${name}: counts ${current} versions and has ${versions.join(", ") || "none"}`);
    }
    if (!countsUpTo(refusals, refused)) {
      faults.push(`${kind} ${name}: counts ${refused} refused saves and has ${refusals.join(", ") || "none"}`);
    }
  }
  return faults;
}

async function numbersIn(db: Shop, table: "paper_version" | "refusal", id: string): Promise<number[]> {
  const rows = await db.selectFrom(table).select("number").where("paper_id", "=", id).orderBy("number").execute();
  return rows.map(({ number }) => number);
}

const countsUpTo = (numbers: readonly number[], last: number) =>
  numbers.length === last && numbers.every((number, at) => number === at + 1);
