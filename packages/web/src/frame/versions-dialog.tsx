import { useEffect, useState } from "react";
import { Button } from "react-aria-components";
import { type KeptJob, keptJobs } from "../job/kept-jobs.ts";
import { openJob, replaceDocument } from "../job/open-job.ts";
import { shopServer, type VersionHead } from "../job/server.ts";
import { closeDialog } from "./opened.ts";
import { OverScreen } from "./over-screen.tsx";

/** The versions of the job, of this machine and of the shop; each can be brought back, as a step that undo takes back. */
export function VersionsDialog() {
  return (
    <OverScreen name="versions" heading="Versions">
      <VersionList />
      <Button className="button main" onPress={closeDialog}>
        Close
      </Button>
    </OverScreen>
  );
}

function VersionList() {
  const id = openJob((state) => state.id);
  const [kept, setKept] = useState<KeptJob>();
  const [shop, setShop] = useState<readonly VersionHead[] | "away">([]);
  const server = kept?.server?.id;
  useEffect(() => {
    if (id !== undefined) void keptJobs.read(id).then(setKept);
  }, [id]);
  useEffect(() => {
    if (server === undefined) return;
    void shopServer.versions(server).then((answer) => setShop(answer.is === "done" ? answer.value.versions : "away"));
  }, [server]);
  const bringBackShop = async (version: number) => {
    if (server === undefined) return;
    const answer = await shopServer.version(server, version);
    if (answer.is !== "done") return setShop("away");
    replaceDocument(answer.value.document, `version ${version} brought back`);
    closeDialog();
  };
  return (
    <>
      <h3>On this machine</h3>
      {kept && kept.versions.length > 0 ? (
        <ol className="versions">
          {[...kept.versions].reverse().map(({ savedAt, note, document }) => (
            <li key={savedAt} className="row">
              <span>
                {note} <span className="soft note">{whenWords(savedAt)}</span>
              </span>
              <Button
                className="button"
                onPress={() => {
                  replaceDocument(document, `"${note}" brought back`);
                  closeDialog();
                }}
              >
                Bring back
              </Button>
            </li>
          ))}
        </ol>
      ) : (
        <p className="soft">None yet. Ctrl S saves one.</p>
      )}
      <h3>At the shop</h3>
      {shop === "away" ? (
        <p className="soft">The shop's server does not answer. Its versions show when it is back.</p>
      ) : shop.length === 0 ? (
        <p className="soft">None yet.</p>
      ) : (
        <ol className="versions">
          {shop.map(({ version, savedAt, savedBy, note }) => (
            <li key={version} className="row">
              <span>
                {version}. {note ?? ""}{" "}
                <span className="soft note">{[savedBy, whenWords(savedAt)].filter(Boolean).join(", ")}</span>
              </span>
              <Button className="button" onPress={() => void bringBackShop(version)}>
                Bring back
              </Button>
            </li>
          ))}
        </ol>
      )}
    </>
  );
}

/** A moment as this machine writes it. */
export function whenWords(moment: string): string {
  const at = new Date(moment);
  return Number.isNaN(at.getTime())
    ? moment
    : at.toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" });
}
