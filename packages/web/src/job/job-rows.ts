import { headOf, type JobHead } from "./job-document.ts";
import { keptJobs } from "./kept-jobs.ts";
import { shopServer } from "./server.ts";

/** One job of the start page. */
export interface JobRow {
  readonly id: string;
  readonly head: JobHead;
  readonly changedAt: string;
  /** Where it stands: on this machine, at the shop, or both. */
  readonly stands: string;
}

/** Hands on the jobs of this machine at once, and with those of the shop when its server has answered. */
export async function jobRows(hand: (rows: readonly JobRow[], away: boolean) => void): Promise<void> {
  const kept = await keptJobs.all().catch(() => []);
  const here = kept.map(({ id, document, changedAt, server, unsent }): JobRow => {
    const stands = !server ? "this machine only" : unsent ? "edited since it was saved" : `version ${server.version}`;
    return { id, head: headOf(document), changedAt, stands };
  });
  hand(here, false);
  const answer = await shopServer.list();
  if (answer.is !== "done") return hand(here, true);
  const known = new Set(kept.flatMap(({ id, server }) => [id, server?.id]));
  const there = answer.value.travelers
    .filter(({ id }) => !known.has(id))
    .map(
      ({ id, version, savedAt, ...head }): JobRow => ({ id, head, changedAt: savedAt, stands: `version ${version}` }),
    );
  hand(
    [...here, ...there].sort((a, b) => b.changedAt.localeCompare(a.changedAt)),
    false,
  );
}
