import { create } from "zustand";
import type { JobDocument } from "./job-document.ts";
import { type KeptJob, type KeptVersion, keptJobs } from "./kept-jobs.ts";
import { openJob, replaceDocument, showJob } from "./open-job.ts";
import { type SaveClash, shopServer } from "./server.ts";

/** How the open job stands to what is kept of it. */
interface Keeping {
  /** Whether every edit is on this machine. */
  readonly kept: "kept" | "keeping" | "cannot";
  /** The last version that the server took. */
  readonly version?: number;
  /** Whether the server lacks what stands here. */
  readonly unsent: boolean;
  /** What came of the last try to save a version. */
  readonly said?: string;
  readonly clash?: SaveClash;
}

export const keeping = create<Keeping>()(() => ({ kept: "kept", unsent: false }));

/** Writing waits this long for the next edit [ms]. */
const PAUSE = 250;

/** A new id. Made of numbers at random, for a page that is not served over a safe line has no other way. */
function newId(): string {
  const parts = crypto.getRandomValues(new Uint32Array(3));
  return `job-${[...parts].map((part) => part.toString(36)).join("")}`;
}

/** Keeps a new job on this machine and returns its id. */
export async function keepNew(document: JobDocument): Promise<string> {
  const id = newId();
  await keptJobs.write({ id, document, changedAt: new Date().toISOString(), versions: [], unsent: true });
  return id;
}

/** Puts a job on the screen: from this machine, or from the server where it has a newer one or the only one. */
export async function openKept(id: string): Promise<"open" | "unknown" | "away"> {
  const kept = await keptJobs.read(id);
  if (kept) show(kept);
  if (kept && (kept.unsent || !kept.server)) return "open";
  const answer = await shopServer.read(kept?.server?.id ?? id);
  if (answer.is !== "done") return kept ? "open" : answer.is === "away" ? "away" : "unknown";
  const { version, document } = answer.value;
  if (kept?.server?.version === version) return "open";
  const taken: KeptJob = {
    id,
    document,
    changedAt: answer.value.savedAt,
    versions: kept?.versions ?? [],
    server: { id: answer.value.id, version },
    unsent: false,
  };
  // An edit made while the server was asked is not thrown away for its answer.
  if (kept && openJob.getState().document !== kept.document) return "open";
  await keptJobs.write(taken);
  show(taken);
  return "open";
}

function show({ id, document, server, unsent }: KeptJob): void {
  showJob(id, document);
  keeping.setState({ kept: "kept", unsent, ...(server ? { version: server.version } : {}) }, true);
}

/** Keeps every edit of the open job on this machine from now on. */
export function keepEveryEdit(): () => void {
  let timer: number | undefined;
  let waiting: { id: string; document: JobDocument } | undefined;
  const write = async () => {
    window.clearTimeout(timer);
    if (!waiting) return;
    const { id, document } = waiting;
    waiting = undefined;
    try {
      const changedAt = new Date().toISOString();
      await keptJobs.change(id, (job) => ({ ...job, document, changedAt, unsent: true }));
      if (!waiting) keeping.setState({ kept: "kept" });
    } catch {
      keeping.setState({ kept: "cannot" });
    }
  };
  const stop = openJob.subscribe(({ id, document }, before) => {
    if (id === undefined || document === before.document) return;
    if (id !== before.id) return void write();
    waiting = { id, document };
    keeping.setState({ kept: "keeping", unsent: true });
    window.clearTimeout(timer);
    timer = window.setTimeout(() => void write(), PAUSE);
  });
  const leave = () => void write();
  window.addEventListener("pagehide", leave);
  return () => {
    stop();
    window.removeEventListener("pagehide", leave);
    void write();
  };
}

/** Puts the open job aside as a version with a name, and sends it to the shop's server where there is one. */
export async function saveVersion(note: string): Promise<void> {
  const { id, document } = openJob.getState();
  if (id === undefined) return;
  const version: KeptVersion = { savedAt: new Date().toISOString(), note, document };
  await keptJobs.change(id, (job) => ({ ...job, document, versions: [...job.versions, version] }));
  await send(id, document, note);
}

async function send(id: string, document: JobDocument, note: string): Promise<void> {
  const { server } = (await keptJobs.read(id)) ?? {};
  const answer = server
    ? await shopServer.save(server.id, document, server.version, note)
    : await shopServer.begin(document, note);
  if (answer.is === "done") {
    const { id: serverId, version } = answer.value;
    await keptJobs.change(id, (job) => ({
      ...job,
      server: { id: serverId, version },
      unsent: job.document !== document && JSON.stringify(job.document) !== JSON.stringify(document),
    }));
    const unsent = openJob.getState().document !== document;
    keeping.setState({ kept: "kept", version, unsent, said: `Saved at the shop as version ${version}.` }, true);
  } else if (answer.is === "clash") {
    keeping.setState({ clash: answer.clash, said: "Somebody else has saved this job in the meantime." });
  } else if (answer.is === "away") {
    keeping.setState({
      said: "The version is kept on this machine. The shop's server does not answer; save again when it is back.",
    });
  } else {
    keeping.setState({ said: `The version is kept on this machine. The shop's server refused it: ${answer.words}` });
  }
}

/** Ends a clash of two savings. Neither is lost: the other stays among the versions. */
export async function settleClash(keep: "yours" | "theirs"): Promise<void> {
  const { clash } = keeping.getState();
  const { id, document } = openJob.getState();
  if (!clash || id === undefined) return;
  const { theirs } = clash;
  const server = { id: theirs.id, version: theirs.version };
  const { clash: _, said: __, ...rest } = keeping.getState();
  keeping.setState({ ...rest, version: theirs.version }, true);
  if (keep === "yours") {
    await keptJobs.change(id, (job) => ({ ...job, server }));
    await send(id, document, "kept over a version saved in the meantime");
  } else {
    replaceDocument(theirs.document, `version ${theirs.version} of the shop taken`);
    await keptJobs.change(id, (job) => ({ ...job, document: theirs.document, server, unsent: false }));
    keeping.setState({
      unsent: false,
      said: `Version ${theirs.version} of the shop is taken; yours is among the versions.`,
    });
  }
}
