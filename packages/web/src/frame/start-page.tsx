import { type ChangeEvent, useEffect, useRef, useState } from "react";
import { Button } from "react-aria-components";
import { Link, useLocation } from "wouter";
import example from "../../../../examples/house-well.traveler.json";
import { type JobDocument, newInquiry } from "../job/job-document.ts";
import { jobFromFile } from "../job/job-file.ts";
import { type JobRow, jobRows } from "../job/job-rows.ts";
import { keepNew } from "../job/keep.ts";
import { TopBar } from "./top-bar.tsx";
import { whenWords } from "./versions-dialog.tsx";

/** Where a day begins: the jobs, a new inquiry, a worked example. */
export function StartPage() {
  const [, go] = useLocation();
  const [rows, setRows] = useState<readonly JobRow[]>();
  const [away, setAway] = useState(false);
  const [refusal, setRefusal] = useState<string>();
  const file = useRef<HTMLInputElement>(null);
  useEffect(() => {
    void jobRows((found, isAway) => {
      setRows(found);
      setAway(isAway);
    });
  }, []);
  const begin = async (document: JobDocument, screen: string) => {
    const id = await keepNew(document);
    go(`/job/${encodeURIComponent(id)}/${screen}`);
  };
  const openFile = async (event: ChangeEvent<HTMLInputElement>) => {
    const [picked] = event.target.files ?? [];
    event.target.value = "";
    if (!picked) return;
    const read = jobFromFile(await picked.text());
    if (read.ok) await begin(read.document, "inquiry");
    else setRefusal(`${picked.name}: ${read.words}`);
  };
  return (
    <>
      <TopBar />
      <main className="start">
        <h1>Which job is on the bench?</h1>
        <div className="row">
          <Button className="button main" onPress={() => void begin(newInquiry(), "inquiry")}>
            New inquiry
          </Button>
          <Button className="button" onPress={() => void begin(example as unknown as JobDocument, "advice")}>
            Open the worked example
          </Button>
          <Button className="button" onPress={() => file.current?.click()}>
            Open a traveler file
          </Button>
          <input
            ref={file}
            type="file"
            accept=".json,application/json"
            hidden
            aria-label="Traveler file"
            onChange={(event) => void openFile(event)}
          />
        </div>
        {refusal ? (
          <p role="alert" className="banner">
            {refusal}
          </p>
        ) : null}
        <section className="stack" aria-labelledby="jobs-head">
          <h2 id="jobs-head">Recent jobs</h2>
          {away ? (
            <p className="banner plainly">
              The shop's server does not answer. Jobs of this machine work without it; those of the shop show when it is
              back.
            </p>
          ) : null}
          {rows === undefined ? <p className="soft">Looking …</p> : null}
          {rows?.length === 0 ? (
            <p className="soft">None yet. The worked example shows a house well from the call to the card.</p>
          ) : null}
          <ul className="jobs">
            {rows?.map((row) => (
              <JobLine key={row.id} row={row} />
            ))}
          </ul>
        </section>
      </main>
    </>
  );
}

function JobLine({ row }: { readonly row: JobRow }) {
  const { id, head, changedAt, stands } = row;
  const who = [head.number ? `no. ${head.number}` : "", head.customer ?? "", head.date ?? ""]
    .filter(Boolean)
    .join(" · ");
  return (
    <li>
      <Link href={`/job/${encodeURIComponent(id)}/inquiry`}>
        <strong>{head.name}</strong>
        <span className="soft note">{stands}</span>
        <span>{who}</span>
        <span className="soft note">{whenWords(changedAt)}</span>
      </Link>
    </li>
  );
}
