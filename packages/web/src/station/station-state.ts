import { isMissing } from "../field/field-problem.ts";
import type { SignName } from "../figure/sign.tsx";
import type { JobDocument } from "../job/job-document.ts";
import { valueAt } from "../job/path.ts";
import type { WorkedJob } from "../worker/worked-job.ts";
import { type Screen, screenOfField, screenOfStation } from "./stations.ts";

/** How a station stands, as a sign and in words. */
export interface StationState {
  readonly sign: SignName;
  readonly words: string;
}

/** How the station of a screen stands. */
export function stationState(screen: Screen, document: JobDocument, worked: WorkedJob): StationState {
  const here = worked.problems.filter(({ field }) => screenOfField(field).id === screen.id);
  const wrong = here.filter((problem) => !isMissing(problem)).length;
  if (wrong > 0) return { sign: "stop", words: `${wrong} to mend` };
  if (isEmpty(screen, document) || here.some(isMissing)) return { sign: "empty", words: "empty" };
  const { workup } = worked;
  if (!workup) return { sign: "empty", words: worked.busy ? "at work" : "waits" };
  if (isStale(document, worked)) return { sign: "stale", words: "stale" };
  const found = workup.findings.filter(
    ({ station, severity }) => severity !== "note" && screenOfStation(station).id === screen.id,
  );
  const stops = found.filter(({ severity }) => severity === "stop").length;
  if (stops > 0) return { sign: "stop", words: counted(stops, "stop") };
  if (found.length > 0) return { sign: "caution", words: counted(found.length, "caution") };
  const assumed = workup.assumed.filter(
    ({ field }) => screenOfField(field).id === screen.id && !field.startsWith("prices"),
  );
  if (assumed.length > 0) return { sign: "assumed", words: `${assumed.length} assumed` };
  return { sign: "done", words: "done" };
}

/** Whether what is shown was worked out from an older document than the one that stands. */
export function isStale(document: JobDocument, { workup, of }: WorkedJob): boolean {
  return workup !== undefined && of !== document;
}

function isEmpty({ id }: Screen, document: JobDocument): boolean {
  if (id === "inquiry") return valueAt(document, ["inquiry", "holes", 0, "diameter"]) === undefined;
  const beds = valueAt(document, ["ground", "beds"]);
  return id === "ground" && !(Array.isArray(beds) && beds.length > 0);
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
