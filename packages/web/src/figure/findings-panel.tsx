import { SOURCE_KIND_WORDS } from "@bitwright/engine";
import { figuresIn, type ToldFinding, toldFindings } from "@bitwright/shop";
import { useMemo } from "react";
import { Link } from "wouter";
import { useUnits } from "../frame/settings.ts";
import { openJob } from "../job/open-job.ts";
import { isStale } from "../station/station-state.ts";
import { type ScreenId, screenOfField, screenOfStation } from "../station/stations.ts";
import { workedJob } from "../worker/worked-job.ts";
import { Sign } from "./sign.tsx";

/** Everything doubtful about the job, the gravest first; a click goes to the place it speaks of. */
export function FindingsPanel({ screen }: { readonly screen: ScreenId }) {
  const units = useUnits();
  const { id, document } = openJob();
  const worked = workedJob();
  const { workup, problems } = worked;
  const told = useMemo(() => (workup ? toldFindings(workup, figuresIn(units)) : []), [workup, units]);
  const stale = isStale(document, worked);
  const weighty = told.filter(({ severity }) => severity !== "note");
  const notes = told.filter(({ severity }) => severity === "note");
  const isHere = ({ station }: ToldFinding) => screenOfStation(station).id === screen;
  return (
    <section className="findings" aria-labelledby="findings-head">
      <h2 id="findings-head">Findings</h2>
      {problems.length > 0 ? (
        <ol aria-label="What stands in the way">
          {problems.map(({ field, message }) => (
            <li key={message}>
              <Link className="finding caution" href={placeHref(id, screenOfField(field).id, field)}>
                <Sign name="stop" className="severity" />
                <span>
                  <span className="where">{field}</span>
                  {message.slice(field.length)}
                </span>
              </Link>
            </li>
          ))}
        </ol>
      ) : null}
      {stale ? <p className="note">These are of the last job that could be worked up.</p> : null}
      <div className={stale ? "stale" : undefined}>
        {told.length === 0 ? (
          <p className="soft">{workup ? "None." : "They come when the job is worked up."}</p>
        ) : (
          <>
            <FoundList found={weighty.filter(isHere)} job={id} />
            {weighty.every(isHere) ? null : <h3>On other stations</h3>}
            <FoundList found={weighty.filter((finding) => !isHere(finding))} job={id} />
            <details>
              <summary>
                {notes.length} {notes.length === 1 ? "note" : "notes"}
              </summary>
              <FoundList found={[...notes.filter(isHere), ...notes.filter((finding) => !isHere(finding))]} job={id} />
            </details>
          </>
        )}
      </div>
    </section>
  );
}

function FoundList({ found, job }: { readonly found: readonly ToldFinding[]; readonly job: string | undefined }) {
  if (found.length === 0) return null;
  return (
    <ol>
      {found.map((finding) => (
        <li key={`${finding.code} ${finding.message} ${finding.places}`}>
          <FoundLink finding={finding} job={job} />
        </li>
      ))}
    </ol>
  );
}

const WORDS = { stop: "Stop", caution: "Caution", note: "Note" } as const;

function FoundLink({ finding, job }: { readonly finding: ToldFinding; readonly job: string | undefined }) {
  const { severity, places, message, figure, source, station, where } = finding;
  return (
    <Link className={`finding ${severity}`} href={placeHref(job, screenOfStation(station).id, where[0] ?? "")}>
      <Sign name={severity} className="severity" />
      <span>
        <span className="where">
          {WORDS[severity]}: {places}
        </span>
        <br />
        {message}
        {figure}
        <span className="soft note"> ({SOURCE_KIND_WORDS[source.kind]})</span>
      </span>
    </Link>
  );
}

/** Address of a screen with the place on it that is meant. */
export function placeHref(job: string | undefined, screen: string, where: string): string {
  return `/job/${encodeURIComponent(job ?? "")}/${screen}?at=${encodeURIComponent(where)}`;
}
