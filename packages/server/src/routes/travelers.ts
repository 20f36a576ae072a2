import * as z from "zod";
import { isExample } from "../example-jobs.ts";
import { sendFile } from "../http/file-reply.ts";
import type { App, ServerContext } from "../server-context.ts";
import type { CreateTraveler } from "./create-traveler.ts";
import { jobLines } from "./job-lines.ts";
import {
  conflictSchema,
  documentSchema,
  fileReply,
  idParams,
  noteSchema,
  refusals,
  refusedSaveSchema,
  savedTravelerSchema,
  versionEntrySchema,
  versionParams,
  versionQuery,
  versionSchema,
} from "./shapes.ts";
import { conflict, entryOf, refusedOf, savedOf, textOf, workedBeforeSaving } from "./traveler-texts.ts";

const listEntrySchema = versionEntrySchema
  .extend({
    id: z.string(),
    customer: z.string().optional(),
    number: z.string().optional(),
    date: z.string().optional(),
    refused: z.int().meta({ description: "Refused saves kept with it." }),
    example: z.boolean().meta({ description: "Whether it is a worked example, as it came with the program." }),
  })
  .meta({ id: "TravelerEntry" });

/** Travelers with every version. */
export function travelerRoutes(app: App, context: ServerContext, create: CreateTraveler): void {
  const { papers } = context.store;
  const paper = (name: string) => ({ kind: "traveler", name }) as const;
  const about = { tags: ["travelers"] };
  const jobs = jobLines(context);

  app.get(
    "/api/travelers",
    {
      schema: {
        ...about,
        operationId: "listTravelers",
        summary: "All travelers, the one saved last first",
        response: { 200: z.object({ travelers: z.array(listEntrySchema) }), ...refusals },
      },
    },
    async () => {
      const entries = await papers.list("traveler");
      const travelers = await Promise.all(
        entries.map(async ({ name, newest, refused }) => {
          const job = await jobs(name, newest.version);
          return {
            id: name,
            ...entryOf(newest),
            ...job,
            name: newest.title || name,
            refused,
            example: isExample(newest),
          };
        }),
      );
      return { travelers: travelers.sort((a, b) => (a.savedAt < b.savedAt ? 1 : a.savedAt > b.savedAt ? -1 : 0)) };
    },
  );

  app.post(
    "/api/travelers",
    {
      schema: {
        ...about,
        operationId: "createTraveler",
        summary: "Keeps a new traveler, whole or half filled",
        body: z.object({ document: documentSchema, note: noteSchema.optional() }),
        response: { 201: savedTravelerSchema, ...refusals },
      },
    },
    async ({ body: { document, note = "" } }, reply) => {
      const worked = await workedBeforeSaving(context, textOf(document));
      const id = await create(textOf(document), note);
      reply.code(201).header("location", `/api/travelers/${encodeURIComponent(id)}`);
      return { ...savedOf(id, await papers.read(paper(id), 1)), ...worked };
    },
  );

  app.get(
    "/api/travelers/:id",
    {
      schema: {
        ...about,
        operationId: "readTraveler",
        summary: "A traveler in its newest version",
        params: idParams,
        response: { 200: savedTravelerSchema, ...refusals },
      },
    },
    async ({ params: { id } }) => savedOf(id, await papers.read(paper(id))),
  );

  app.put(
    "/api/travelers/:id",
    {
      schema: {
        ...about,
        operationId: "saveTraveler",
        summary: "Keeps the next version of a traveler, where nobody else has saved meanwhile",
        params: idParams,
        body: z.object({
          document: documentSchema,
          baseVersion: versionSchema.meta({ description: "The version that the document was made from." }),
          note: noteSchema.optional(),
        }),
        response: {
          200: savedTravelerSchema,
          409: { description: "Conflict", content: { "application/problem+json": { schema: conflictSchema } } },
          ...refusals,
        },
      },
    },
    async ({ params: { id }, body: { document, baseVersion, note = "" } }) => {
      const body = textOf(document);
      const worked = await workedBeforeSaving(context, body);
      const outcome = await papers.save({ ...paper(id), body, basedOn: baseVersion, who: context.who, note });
      if (outcome.ok) return { ...savedOf(id, { ...outcome.saved, body }), ...worked };
      const { refused, newest } = outcome;
      throw conflict(id, refused, newest, { yours: document, theirs: savedOf(id, newest) });
    },
  );

  app.get(
    "/api/travelers/:id/versions",
    {
      schema: {
        ...about,
        operationId: "listVersions",
        summary: "Who saved which version when, the first one first",
        params: idParams,
        response: { 200: z.object({ versions: z.array(versionEntrySchema) }), ...refusals },
      },
    },
    async ({ params: { id } }) => ({ versions: (await papers.history(paper(id))).map(entryOf) }),
  );

  app.get(
    "/api/travelers/:id/versions/:version",
    {
      schema: {
        ...about,
        operationId: "readVersion",
        summary: "A traveler in one of its versions",
        params: versionParams,
        response: { 200: savedTravelerSchema, ...refusals },
      },
    },
    async ({ params: { id, version } }) => savedOf(id, await papers.read(paper(id), version)),
  );

  app.get(
    "/api/travelers/:id/refusals",
    {
      schema: {
        ...about,
        operationId: "listRefusals",
        summary: "Saves that were refused because somebody else had saved, kept whole",
        params: idParams,
        response: { 200: z.object({ refusals: z.array(refusedSaveSchema) }), ...refusals },
      },
    },
    async ({ params: { id } }) => ({ refusals: (await papers.refusals(paper(id))).map(refusedOf) }),
  );

  app.get(
    "/api/travelers/:id/file",
    {
      schema: {
        ...about,
        operationId: "downloadTraveler",
        summary: "The traveler file, exactly as it was saved",
        params: idParams,
        querystring: versionQuery,
        response: { 200: fileReply("The traveler file", "application/json"), ...refusals },
      },
    },
    async ({ params: { id }, query: { version } }, reply) => {
      const { body: content } = await papers.read(paper(id), version);
      return sendFile(reply, { name: `${id}.traveler.json`, mediaType: "application/json; charset=utf-8", content });
    },
  );
}
