import { existsSync } from "node:fs";
import { join } from "node:path";
import fastifyStatic from "@fastify/static";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { App } from "../server-context.ts";

/** Files whose names change with their content: the bundler puts them there. */
const HASHED = /[\\/]assets[\\/][^\\/]+-[\w-]{8,}\.\w+$/;

/** What answers an address outside `/api` that no file has. */
export type PageFallback = (request: FastifyRequest, reply: FastifyReply) => FastifyReply | undefined;

/**
 * Serves the built web app, its start page also under the addresses that the app makes up itself; where it is not built, a
 * page that says how to build it.
 */
export async function webAppRoutes(app: App, folder: string): Promise<PageFallback> {
  if (!existsSync(join(folder, "index.html"))) {
    return (request, reply) => (isPage(request) ? reply.type("text/html; charset=utf-8").send(PLAIN_PAGE) : undefined);
  }
  await app.register(fastifyStatic, {
    root: folder,
    wildcard: true,
    cacheControl: false,
    schemaHide: true,
    setHeaders(reply, path) {
      reply.header("cache-control", HASHED.test(path) ? "public, max-age=31536000, immutable" : "no-cache");
    },
  });
  return (request, reply) => (isPage(request) ? reply.sendFile("index.html") : undefined);
}

/** Whether a page is asked for, and not a file that is missing or something of the API. */
function isPage({ method, url }: FastifyRequest): boolean {
  const path = url.split("?")[0] ?? "";
  const last = path.split("/").at(-1) ?? "";
  return (method === "GET" || method === "HEAD") && !/^\/api(\/|$)/.test(path) && !last.includes(".");
}

const PLAIN_PAGE = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Bitwright</title>
<style>
body { font: 1rem/1.5 system-ui, sans-serif; max-width: 40rem; margin: 4rem auto; padding: 0 1rem; color: #222; background: #fff; }
code { background: #eee; padding: 0.1em 0.3em; }
@media (prefers-color-scheme: dark) { body { color: #ddd; background: #1b1b1b; } code { background: #333; } a { color: #9cf; } }
</style>
</head>
<body>
<h1>Bitwright</h1>
<p>The server runs and holds the shop. Its screens are not built here: run <code>npm run build</code> in the project's
folder and start it again.</p>
<p>The API answers already: <a href="/api/travelers">the travelers that are kept</a>, and
<a href="/api/openapi.json">the description of everything it does</a>.</p>
</body>
</html>
`;
