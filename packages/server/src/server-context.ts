import type { IncomingMessage, ServerResponse } from "node:http";
import type { Store } from "@bitwright/store";
import type { FastifyBaseLogger, FastifyInstance, RawServerDefault } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import type { StudyJobs } from "./work/study-jobs.ts";
import type { Threads } from "./work/threads.ts";

/** The web server with routes typed by their schemas. */
export type App = FastifyInstance<
  RawServerDefault,
  IncomingMessage,
  ServerResponse,
  FastifyBaseLogger,
  ZodTypeProvider
>;

/** How much the server takes at a time. */
export interface ServerLimits {
  /** JSON of one request [B]. */
  readonly body: number;
  /** One attachment [B]. */
  readonly attachment: number;
  /** One file that is imported [B]. */
  readonly import: number;
  /** Requests a minute [-]. */
  readonly requests: number;
  /** Studies that may wait or run at once [-]. */
  readonly studies: number;
}

/**
 * A little more than the store takes, so that the store says what is too large; as many requests as a page makes that is
 * opened again and again.
 *
 * @source (c) common practice, no source
 */
export const USUAL_SERVER_LIMITS: ServerLimits = {
  body: 6 * 1024 ** 2,
  attachment: 256 * 1024 ** 2,
  import: 2_000_000_000,
  requests: 3000,
  studies: 20,
};

/** What every route works with. */
export interface ServerContext {
  readonly store: Store;
  readonly threads: Threads;
  readonly jobs: StudyJobs;
  readonly limits: ServerLimits;
  /** Name and version, as printed on every sheet: `Bitwright 0.1.0`. */
  readonly program: string;
  /** Who saves, as long as nobody signs in. */
  readonly who: string;
  /** Told of every fault of the program. */
  readonly onFault: (error: unknown) => void;
}
