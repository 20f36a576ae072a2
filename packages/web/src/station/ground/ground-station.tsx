import { figuresIn } from "@bitwright/shop";
import { useState } from "react";
import { Button } from "react-aria-components";
import { DocumentField } from "../../field/document-field.tsx";
import { entryText } from "../../field/read-entry.ts";
import { ShopDrawing } from "../../figure/shop-drawing.tsx";
import { useUnits } from "../../frame/settings.ts";
import { openJob } from "../../job/open-job.ts";
import { valueAt } from "../../job/path.ts";
import { workedJob } from "../../worker/worked-job.ts";
import { isStale } from "../station-state.ts";
import { BedRow } from "./bed-row.tsx";
import { GroundPaste } from "./ground-paste.tsx";
import { PhraseReading } from "./phrase-reading.tsx";

const SOURCE = ["ground", "source"];

/** What the bit will meet: the beds as typed or pasted, how their words were read, and how they stand to a PDC bit. */
export function GroundStation() {
  const document = openJob((state) => state.document);
  const worked = workedJob();
  const { workup } = worked;
  const figures = figuresIn(useUnits());
  const [pasting, setPasting] = useState(false);
  const [focused, setFocused] = useState<number>();
  const given = valueAt(document, ["ground", "beds"]);
  const beds: readonly unknown[] = Array.isArray(given) ? given : [];
  const stale = isStale(document, worked);
  // Beds of the workup stand in order of depth; each says which row it was.
  const placeOf = (at: number) =>
    stale ? -1 : (workup?.inquiry.ground.beds.findIndex(({ path }) => path === `ground.beds[${at}]`) ?? -1);
  const phrase = focused === undefined ? "" : entryText(valueAt(beds[focused], ["phrase"]));
  return (
    <>
      <p className="answer">
        {beds.length === 0
          ? "Nothing is known yet. Type the driller's log below, or paste a table of it."
          : `${beds.length} beds. Strengths are bands; a sample, a log or a returned bit makes them narrower.`}
      </p>
      <div className="row">
        <Button className="button" onPress={() => setPasting(!pasting)} aria-expanded={pasting}>
          Paste a table or open a log
        </Button>
      </div>
      {pasting ? <GroundPaste onDone={() => setPasting(false)} /> : null}
      <div className="sheet stack">
        <DocumentField path={SOURCE} label="Where the column came from" />
        <div className="table-room">
          <table className="beds">
            <caption className="unseen">Beds from the top down</caption>
            <thead>
              <tr>
                <th scope="col">bed</th>
                <th scope="col">top</th>
                <th scope="col">bottom</th>
                <th scope="col">driller's words</th>
                <th scope="col">taken as</th>
                <th scope="col">strength: one, or low / mid / high</th>
                <th scope="col">PDC</th>
                <th scope="col">
                  <span className="unseen">take out</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {Array.from({ length: beds.length + 1 }, (_, at) => {
                const place = placeOf(at);
                const ground = workup?.ground.beds[place];
                const before = entryText(valueAt(beds[at - 1], ["bottom"]));
                return (
                  <BedRow
                    // biome-ignore lint/suspicious/noArrayIndexKey: a bed is its place in the list
                    key={at}
                    at={at}
                    there={at < beds.length}
                    above={before === "" ? undefined : before}
                    fit={workup?.advice.fits[place]}
                    strength={ground ? figures.band("strength", ground.ucs) : undefined}
                    onFocus={() => setFocused(at)}
                  />
                );
              })}
            </tbody>
          </table>
        </div>
      </div>
      {phrase === "" ? null : <PhraseReading phrase={phrase} bed={`bed ${(focused ?? 0) + 1}`} />}
      {workup ? (
        <section aria-labelledby="strip-head" className={stale ? "stack stale" : "stack"}>
          <h2 id="strip-head">By depth</h2>
          <ShopDrawing group="ground" name="ground.svg" />
        </section>
      ) : null}
    </>
  );
}
