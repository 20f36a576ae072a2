import { Link } from "wouter";
import { Sign } from "../figure/sign.tsx";
import { openJob } from "../job/open-job.ts";
import { stationState } from "../station/station-state.ts";
import { SCREENS, type ScreenId } from "../station/stations.ts";
import { workedJob } from "../worker/worked-job.ts";

/** The stations of the job with how each stands; down the side, and under the thumb on a phone. */
export function StationList({ job, current }: { readonly job: string; readonly current: ScreenId }) {
  const document = openJob((state) => state.document);
  const worked = workedJob();
  return (
    <nav className="stations" aria-label="Stations of the job">
      <ol>
        {SCREENS.map((screen) => {
          const { sign, words } = stationState(screen, document, worked);
          return (
            <li key={screen.id}>
              <Link
                href={`/job/${encodeURIComponent(job)}/${screen.id}`}
                aria-current={screen.id === current ? "page" : undefined}
              >
                <Sign name={sign} className="sign" />
                <span>
                  {screen.name}
                  <span className="state">{words}</span>
                </span>
              </Link>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}
