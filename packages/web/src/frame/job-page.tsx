import { type ComponentType, useEffect, useState } from "react";
import { Link } from "wouter";
import { FindingsPanel } from "../figure/findings-panel.tsx";
import { keepEveryEdit, openKept } from "../job/keep.ts";
import { openJob } from "../job/open-job.ts";
import { AdviceStation } from "../station/advice/advice-station.tsx";
import { CardStation } from "../station/card/card-station.tsx";
import { CutStation } from "../station/cut/cut-station.tsx";
import { FlowStation } from "../station/flow/flow-station.tsx";
import { GroundStation } from "../station/ground/ground-station.tsx";
import { InquiryStation } from "../station/inquiry/inquiry-station.tsx";
import { isStale } from "../station/station-state.ts";
import { SCREENS, type ScreenId } from "../station/stations.ts";
import { StringStation } from "../station/string/string-station.tsx";
import { keepWorkedUp, workedJob } from "../worker/worked-job.ts";
import { SavingWords } from "./clash-banner.tsx";
import { useGoToPlace } from "./go-to-place.ts";
import { StationList } from "./station-list.tsx";
import { JobBar, TopBar } from "./top-bar.tsx";
import { useKeys } from "./use-keys.ts";

const STATIONS: Readonly<Record<ScreenId, ComponentType>> = {
  inquiry: InquiryStation,
  ground: GroundStation,
  advice: AdviceStation,
  cut: CutStation,
  string: StringStation,
  flow: FlowStation,
  card: CardStation,
};

/** One job: its stations down the side, one of them at work, and what was found. */
export function JobPage({ id, screen }: { readonly id: string; readonly screen: string }) {
  const [state, setState] = useState<"opening" | "open" | "unknown" | "away">("opening");
  useEffect(() => {
    setState("opening");
    void openKept(id).then(setState);
  }, [id]);
  useEffect(() => keepEveryEdit(), []);
  useEffect(() => keepWorkedUp(), []);
  useKeys(id);
  const shown = openJob((job) => job.id) === id;
  useGoToPlace(shown && state === "open");
  const found = SCREENS.find((one) => one.id === screen);
  if (!found || state === "unknown" || state === "away") return <NoJob state={state} />;
  const Station = STATIONS[found.id];
  return (
    <>
      <JobBar />
      <div className="job">
        <StationList job={id} current={found.id} />
        <main className="work">
          <article className="station">
            <header>
              <h1>{found.question}</h1>
              <WorkWords />
            </header>
            <SavingWords />
            {shown ? <Station /> : <p className="soft">Opening …</p>}
          </article>
          <FindingsPanel screen={found.id} />
        </main>
      </div>
    </>
  );
}

/** Whether what stands below is of today's document. */
function WorkWords() {
  const document = openJob((job) => job.document);
  const worked = workedJob();
  const { busy, fault, problems } = worked;
  const stale = isStale(document, worked);
  const words = fault
    ? `The program itself failed: ${fault}. Your entries are kept; take the last step back and go on.`
    : problems.length > 0 && worked.workup
      ? "What is hatched is of the last job that could be worked up: something is to be mended first."
      : busy
        ? stale
          ? "Working it up again; what is hatched is of the job before the last edit."
          : "Working it up …"
        : "";
  return (
    <p role="status" className={words === "" ? "unseen" : fault ? "banner" : "note soft"} data-busy={busy}>
      {words}
    </p>
  );
}

function NoJob({ state }: { readonly state: string }) {
  return (
    <>
      <TopBar />
      <main className="start">
        <h1>This job is not here</h1>
        <p>
          {state === "away"
            ? "This machine has no copy of it, and the shop's server does not answer. Jobs that were opened on this machine work without it."
            : "Neither this machine nor the shop has a job or a station of this address."}
        </p>
        <p>
          <Link className="button main" href="/">
            All jobs
          </Link>
        </p>
      </main>
    </>
  );
}
