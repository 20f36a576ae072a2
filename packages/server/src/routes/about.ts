import * as z from "zod";
import type { App, ServerContext } from "../server-context.ts";
import { fileReply, refusals } from "./shapes.ts";

/** What the server is, and the description of all it does. */
export function aboutRoutes(app: App, { program }: ServerContext): void {
  const [, name = program, version = ""] = /^(\S+) (\S+)$/.exec(program) ?? [];
  app.get(
    "/api/about",
    {
      schema: {
        tags: ["about"],
        operationId: "about",
        summary: "Name and version of the program",
        response: { 200: z.object({ program: z.string(), version: z.string() }), ...refusals },
      },
    },
    async () => ({ program: name.toLowerCase(), version }),
  );
  app.get(
    "/api/openapi.json",
    {
      schema: {
        tags: ["about"],
        operationId: "describe",
        summary: "This description (OpenAPI 3.1)",
        response: { 200: fileReply("The description", "application/json"), ...refusals },
      },
    },
    async (_, reply) => reply.type("application/json; charset=utf-8").send(JSON.stringify(app.swagger())),
  );
}
