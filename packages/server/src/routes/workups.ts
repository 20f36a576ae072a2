import type { FastifyReply } from "fastify";
import * as z from "zod";
import { sendFile, typeOfSheet } from "../http/file-reply.ts";
import { HttpProblem } from "../http/problem-details.ts";
import type { App, ServerContext } from "../server-context.ts";
import { fileReply, idParams, refusals, unitsQuery, versionQuery } from "./shapes.ts";
import { needsSound } from "./traveler-texts.ts";

/** Workups and sheets: reckoned by the server from the version that is kept, never taken from a caller. */
export function workupRoutes(app: App, { store, threads, program }: ServerContext): void {
  const about = { tags: ["workups"], params: idParams };

  /** The text of a version; which one and by which program stands in the head of the reply. */
  async function textOf(reply: FastifyReply, name: string, asked: number | undefined) {
    const { body, version } = await store.papers.read({ kind: "traveler", name }, asked);
    reply.header("bitwright-traveler-version", String(version)).header("bitwright-program", program);
    return { body, version };
  }

  app.get(
    "/api/travelers/:id/workup",
    {
      schema: {
        ...about,
        operationId: "workUp",
        summary: "A traveler worked up: every figure, finding and working in SI",
        querystring: versionQuery,
        response: { 200: fileReply("The workup", "application/json"), ...refusals },
      },
    },
    async ({ params: { id }, query }, reply) => {
      const { body } = await textOf(reply, id, query.version);
      const answer = await threads.workup(body);
      if (!answer.ok) needsSound(answer);
      return reply.type("application/json; charset=utf-8").header("cache-control", "no-store").send(answer.value);
    },
  );

  app.get(
    "/api/travelers/:id/sheets",
    {
      schema: {
        ...about,
        operationId: "listSheets",
        summary: "Names of the sheets of a traveler",
        querystring: versionQuery,
        response: {
          200: z.object({ version: z.int(), program: z.string(), sheets: z.array(z.string()) }),
          ...refusals,
        },
      },
    },
    async ({ params: { id }, query }, reply) => {
      const { body, version } = await textOf(reply, id, query.version);
      const answer = await threads.sheets(body, "field");
      if (!answer.ok) needsSound(answer);
      return { version, program, sheets: [...answer.value.map(({ name }) => name), PRINTED_CARD] };
    },
  );

  app.get(
    "/api/travelers/:id/sheets/:name",
    {
      schema: {
        ...about,
        operationId: "readSheet",
        summary: "A sheet of a traveler: drawing, card or table",
        params: idParams.extend({ name: z.string().min(1).max(100) }),
        querystring: versionQuery.extend(unitsQuery.shape),
        response: {
          200: fileReply(
            "The sheet",
            "image/svg+xml",
            "text/plain",
            "text/html",
            "text/csv",
            "application/json",
            "application/pdf",
          ),
          ...refusals,
        },
      },
    },
    async ({ params: { id, name }, query: { version, units } }, reply) => {
      const { body } = await textOf(reply, id, version);
      if (name === PRINTED_CARD) {
        const printed = await threads.cardPdf(body, units);
        if (!printed.ok) needsSound(printed);
        return sendFile(reply, { name, mediaType: typeOfSheet(name), content: printed.value, shown: true });
      }
      const answer = await threads.sheets(body, units);
      if (!answer.ok) needsSound(answer);
      return sendSheet(reply, answer.value, name);
    },
  );

  app.get(
    "/card/:id",
    {
      schema: {
        ...about,
        operationId: "readCardOnPhone",
        summary: "The driller's card as a page for the phone, under an address short enough to type",
        querystring: versionQuery.extend(unitsQuery.shape),
        response: { 200: fileReply("The card", "text/html"), ...refusals },
      },
    },
    async ({ params: { id }, query: { version, units } }, reply) => {
      const { body } = await textOf(reply, id, version);
      const answer = await threads.sheets(body, units);
      if (!answer.ok) needsSound(answer);
      return sendSheet(reply, answer.value, PHONE_CARD);
    },
  );
}

/** The card as it prints; made when it is asked for, for it takes longer than the other sheets. */
const PRINTED_CARD = "card.pdf";
/** The same for a phone. */
const PHONE_CARD = "card.html";

/** Sends one of the sheets by its name. */
export function sendSheet(
  reply: FastifyReply,
  sheets: readonly { readonly name: string; readonly text: string }[],
  name: string,
): FastifyReply {
  const sheet = sheets.find((one) => one.name === name);
  if (sheet) return sendFile(reply, { name, mediaType: typeOfSheet(name), content: sheet.text, shown: true });
  const names = sheets.map((one) => one.name).join(", ");
  throw new HttpProblem("not-found", `no sheet ${JSON.stringify(name)}; there is ${names || "none"}`);
}
