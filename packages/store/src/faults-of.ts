import type { OpenDatabase } from "./database/open-database.ts";

/** Where the database is damaged, or a paper does not have the versions it counts. */
export async function faultsOf({ db, ownFaults }: OpenDatabase): Promise<string[]> {
  const faults = await ownFaults();
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

async function numbersIn(db: OpenDatabase["db"], table: "paper_version" | "refusal", id: string): Promise<number[]> {
  const rows = await db.selectFrom(table).select("number").where("paper_id", "=", id).orderBy("number").execute();
  return rows.map(({ number }) => number);
}

const countsUpTo = (numbers: readonly number[], last: number) =>
  numbers.length === last && numbers.every((number, at) => number === at + 1);
