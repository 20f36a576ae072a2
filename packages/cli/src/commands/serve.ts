import { readdirSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { ExampleJob, RunningServer } from "@bitwright/server";
import { Complaint } from "../complaint.ts";
import { readText } from "../files.ts";
import { PROGRAM } from "../program.ts";
import type { Terminal } from "../terminal.ts";
import { wholeNumber } from "../whole-number.ts";
import { complainingOfStore, placeOf, type StoreChoice, usualWho } from "../with-store.ts";

/** Options of `bitwright serve`. */
export interface ServeOptions extends StoreChoice {
  readonly host: string;
  readonly port?: string;
  readonly by?: string;
  /** Whether an empty shop gets the worked examples; `--no-examples` keeps it empty. */
  readonly examples: boolean;
}

/** The port where nobody asks for another [-]: (d) our choice. */
const USUAL_PORT = 7417;
const MOST_PORT = 65_535;
/** Time that what is under way is given to end [ms]: (d) our choice. */
const PATIENCE = 5000;

const EXAMPLES = fileURLToPath(new URL("../../../../examples", import.meta.url));
/** The example that stands first in the list of an empty shop. */
const FIRST = "house-well";

/** Serves the shop on this machine until it is told to end. */
export async function serveCommand(options: ServeOptions, terminal: Terminal): Promise<void> {
  const asked = options.port === undefined ? undefined : wholeNumber("--port", options.port, 0, 0, MOST_PORT);
  if (options.by !== undefined && !/^\P{Cc}{1,120}$/u.test(options.by.trim())) {
    throw new Complaint([`--by: got "${options.by}"; give a name of 1 to 120 characters in one line`]);
  }
  const server = await serverFor(options, asked, terminal);
  const usual = `:${asked ?? USUAL_PORT}`;
  if (asked === undefined && !server.address.endsWith(usual)) {
    terminal.say(`Port ${USUAL_PORT} is taken by another program; this one took the next that is free.`);
  }
  if (server.examples > 0) terminal.say(`The shop was empty: ${server.examples} worked examples are in it now.`);
  terminal.say(
    `Bitwright serves ${server.place}\nOpen ${server.address} in a browser on this machine. Ctrl-C ends it.`,
  );
  await toldToEnd(server, terminal);
}

async function serverFor(options: ServeOptions, asked: number | undefined, terminal: Terminal): Promise<RunningServer> {
  // Loaded here and not at the top: no other command needs it.
  const { ListenRefused, startServer } = await import("@bitwright/server");
  try {
    return await complainingOfStore(() =>
      startServer({
        place: placeOf(options),
        program: PROGRAM,
        who: options.by ?? usualWho(),
        host: options.host,
        port: asked ?? USUAL_PORT,
        orNextPort: asked === undefined,
        examples: options.examples ? exampleJobs() : [],
        onFault: (error) => terminal.complain(`A fault: ${error instanceof Error ? error.stack : error}`),
      }),
    );
  } catch (error) {
    if (error instanceof ListenRefused) throw new Complaint([`serve: ${error.message}`]);
    throw error;
  }
}

/** The worked examples of this project, the first one first. */
function exampleJobs(): ExampleJob[] {
  const files = readdirSync(EXAMPLES).filter((name) => name.endsWith(".traveler.json"));
  const jobs = files.map((file) => ({ name: basename(file, ".traveler.json"), text: readText(join(EXAMPLES, file)) }));
  return jobs.sort((a, b) => Number(b.name === FIRST) - Number(a.name === FIRST));
}

/** Waits for Ctrl-C or the system's word to end, then ends cleanly; a second word ends at once, as does patience. */
function toldToEnd(server: RunningServer, terminal: Terminal): Promise<void> {
  return new Promise((ended, failed) => {
    const end = () => {
      for (const signal of ["SIGINT", "SIGTERM"] as const) process.off(signal, end);
      terminal.say("Ending.");
      // What hangs is left: every save that was told as done is on the disk already.
      setTimeout(() => process.exit(0), PATIENCE).unref();
      server.close().then(ended, failed);
    };
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.on(signal, end);
  });
}
