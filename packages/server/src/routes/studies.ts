import { PassThrough } from "node:stream";
import { parseTraveler } from "@bitwright/traveler";
import type { FastifyReply } from "fastify";
import * as z from "zod";
import { badValues, HttpProblem, problemBody, problemSchema } from "../http/problem-details.ts";
import type { App, ServerContext } from "../server-context.ts";
import { problemsOfOptions } from "../work/study-inputs.ts";
import { isOver, type StudyJob } from "../work/study-jobs.ts";
import { type AskedStudy, STUDY_KINDS, STUDY_OPTIONS, type StudyKind } from "../work/study-kinds.ts";
import { documentSchema, fileReply, refusals } from "./shapes.ts";
import { textOf } from "./traveler-texts.ts";
import { sendSheet } from "./workups.ts";

const asking = <Kind extends StudyKind>(kind: Kind) =>
  z.object({ kind: z.literal(kind), document: documentSchema, options: STUDY_OPTIONS[kind].optional() });

const askedSchema = z
  .discriminatedUnion("kind", [
    asking("layout"),
    asking("life"),
    asking("bands"),
    asking("map"),
    asking("rank"),
    asking("stability"),
    asking("depth"),
    asking("flow"),
    asking("ports"),
  ])
  .meta({ id: "AskedStudy" });

const jobSchema = z
  .object({
    id: z.string(),
    kind: z.enum(STUDY_KINDS),
    state: z.enum(["waiting", "running", "done", "stopped", "failed"]),
    progress: z.object({
      done: z.number(),
      of: z.number().optional().meta({ description: "Absent where nobody knows." }),
      doing: z.string().meta({ description: "What it is at, in words." }),
    }),
    sheets: z.array(z.string()).meta({ description: "Names of its sheets, when it is over." }),
    result: z.any().optional().meta({ description: "What it has found, in SI, when it is over." }),
    problem: problemSchema.optional(),
  })
  .meta({ id: "Study" });

/** A sign of life for whoever listens, in the pauses between events [ms]: (c) common practice, no source. */
const HEARTBEAT = 15_000;

/** Id of the event after which none comes. */
const LAST_EVENT = "over";

/** Long looks at a document, run on threads: asked for, watched, stopped. */
export function studyRoutes(app: App, { jobs, limits }: ServerContext): void {
  const params = z.object({ id: z.string().min(1).max(100) });
  const about = (operationId: string, summary: string) => ({ tags: ["studies"], operationId, summary });
  const found = (id: string): StudyJob => {
    const job = jobs.find(id);
    if (job) return job;
    throw new HttpProblem("not-found", `no study ${JSON.stringify(id)}; the server keeps the last ones until it ends`);
  };
  const sendJob = (reply: FastifyReply, job: StudyJob) =>
    reply.type("application/json; charset=utf-8").header("cache-control", "no-store").send(jobText(job));

  app.post(
    "/api/studies",
    {
      schema: {
        ...about("startStudy", "Starts a study of a document"),
        body: askedSchema,
        response: { 202: z.object({ id: z.string() }), ...refusals },
      },
    },
    async ({ body: { kind, document, options = {} } }, reply) => {
      const asked = { kind, options } as AskedStudy;
      const text = textOf(document);
      const read = parseTraveler(text);
      if (!read.ok) throw badValues(read.problems);
      const problems = problemsOfOptions(asked);
      if (problems.length > 0) throw badValues(problems);
      if (jobs.underWay() >= limits.studies) {
        throw new HttpProblem("too-many", `${limits.studies} studies wait or run already; end one first`);
      }
      const { id } = jobs.start(text, asked);
      reply.code(202).header("location", `/api/studies/${id}`);
      return { id };
    },
  );

  app.get(
    "/api/studies/:id",
    { schema: { ...about("readStudy", "How a study stands"), params, response: { 200: jobSchema, ...refusals } } },
    async ({ params: { id } }, reply) => sendJob(reply, found(id)),
  );

  app.delete(
    "/api/studies/:id",
    {
      schema: {
        ...about("stopStudy", "Stops a study within a second and keeps what it has"),
        params,
        response: { 200: jobSchema, ...refusals },
      },
    },
    async ({ params: { id } }, reply) => sendJob(reply, (await jobs.cancel(id)) ?? found(id)),
  );

  app.get(
    "/api/studies/:id/events",
    {
      schema: {
        ...about("watchStudy", "How a study stands, told at every change until it is over (server-sent events)"),
        params,
        response: { 200: fileReply("Events whose data are a Study", "text/event-stream"), ...refusals },
      },
    },
    async ({ params: { id }, headers }, reply) => {
      const job = found(id);
      // A browser comes back when a stream ends; one that has heard the end is told to stay away.
      if (headers["last-event-id"] === LAST_EVENT) return reply.code(204).send();
      const stream = new PassThrough();
      const tell = (now: StudyJob) => {
        stream.write(`${isOver(now) ? `id: ${LAST_EVENT}\n` : ""}data: ${jobText(now)}\n\n`);
        if (isOver(now)) stream.end();
      };
      const leave = jobs.watch(id, tell);
      const beat = setInterval(() => stream.write(":\n\n"), HEARTBEAT);
      stream.on("close", () => {
        leave();
        clearInterval(beat);
      });
      tell(job);
      return reply.type("text/event-stream; charset=utf-8").header("cache-control", "no-store").send(stream);
    },
  );

  app.get(
    "/api/studies/:id/sheets/:name",
    {
      schema: {
        ...about("readStudySheet", "A drawing or table of a study that is over"),
        params: params.extend({ name: z.string().min(1).max(100) }),
        response: { 200: fileReply("The sheet", "image/svg+xml", "text/csv", "application/json"), ...refusals },
      },
    },
    async ({ params: { id, name } }, reply) => sendSheet(reply, found(id).sheets, name),
  );
}

/** A study as JSON text; what it has found is put in as it came from its thread. */
function jobText({ id, kind, state, progress, sheets, result, failed }: StudyJob): string {
  const why =
    failed && (failed.problems.length > 0 ? badValues(failed.problems) : new HttpProblem("fault", failed.detail));
  const problem = why && problemBody(why);
  const plain = JSON.stringify({ id, kind, state, progress, sheets: sheets.map(({ name }) => name), problem });
  return result === undefined ? plain : `${plain.slice(0, -1)},"result":${result}}`;
}
