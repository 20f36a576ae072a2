import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildApp } from "../../packages/server/src/build-app.ts";
import { type App, type ServerLimits, USUAL_SERVER_LIMITS } from "../../packages/server/src/server-context.ts";
import { studyJobs } from "../../packages/server/src/work/study-jobs.ts";
import { startThreads, type Threads } from "../../packages/server/src/work/threads.ts";
import type { Store } from "../../packages/store/src/index.ts";
import { openForTest } from "./shop-of-test.ts";

/** A server that does not listen: requests are put in by hand. */
export interface ServerOfTest {
  readonly app: App;
  readonly store: Store;
  /** Faults of the program that it told of. */
  readonly faults: unknown[];
  readonly close: () => Promise<void>;
}

/** What a test changes of the usual server. */
export interface TestServerOptions {
  /** A folder that is made and removed again where not given. */
  readonly place?: string;
  readonly limits?: Partial<ServerLimits>;
  readonly webFolder?: string;
  /** Threads of the test's own in place of some of the real ones. */
  readonly threads?: Partial<Threads>;
  /** Routes that are added before it is ready. */
  readonly more?: (app: App) => void;
}

/** A server with a clock and ids that are known, who saves being Ada. */
export async function serverOfTest(options: TestServerOptions = {}): Promise<ServerOfTest> {
  const folder = mkdtempSync(join(tmpdir(), "bitwright-server-"));
  const store = await openForTest(options.place ?? join(folder, "shop"));
  const faults: unknown[] = [];
  const onFault = (error: unknown) => void faults.push(error);
  const real = startThreads("Bitwright 9.8.7", onFault);
  const threads = { ...real, ...options.threads };
  let id = 0;
  const jobs = studyJobs({ threads, newId: () => `study-${++id}`, onFault });
  const limits = { ...USUAL_SERVER_LIMITS, ...options.limits };
  const context = { store, threads, jobs, limits, program: "Bitwright 9.8.7", who: "Ada", onFault };
  const app = await buildApp(context, options.webFolder ?? join(folder, "no-screens"));
  options.more?.(app);
  return {
    app,
    store,
    faults,
    async close() {
      await app.close();
      await real.close();
      await store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A form as a browser sends it. */
export async function formOf(fields: Readonly<Record<string, string | File>>) {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.append(name, value);
  const body = new Response(form);
  const headers = { "content-type": body.headers.get("content-type") ?? "" };
  return { headers, payload: Buffer.from(await body.arrayBuffer()) };
}
