import type { Workup } from "@bitwright/traveler";
import type { ReactNode } from "react";
import { Link } from "wouter";
import { placeHref } from "../figure/findings-panel.tsx";
import { openJob } from "../job/open-job.ts";
import { workedJob } from "../worker/worked-job.ts";
import { isStale } from "./station-state.ts";
import { screenOfField } from "./stations.ts";

/** What a station shows of the workup: the last good one, hatched while a newer one is on its way or cannot be made. */
export function OfWorkup({ children }: { readonly children: (workup: Workup) => ReactNode }) {
  const { id, document } = openJob();
  const worked = workedJob();
  const { workup, problems, busy } = worked;
  if (!workup && busy && problems.length === 0) return <p className="soft">Working it up …</p>;
  if (!workup) {
    return (
      <section className="banner plainly" aria-label="What is needed first">
        <p>This station needs a job that can be worked up. Still to do:</p>
        <ul>
          {problems.map(({ field, message }) => (
            <li key={message}>
              <Link href={placeHref(id, screenOfField(field).id, field)}>{message}</Link>
            </li>
          ))}
        </ul>
      </section>
    );
  }
  return <div className={isStale(document, worked) ? "stack stale" : "stack"}>{children(workup)}</div>;
}
