import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

interface Saved {
  readonly id: string;
  readonly version: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly note?: string;
  readonly document: { readonly job?: { readonly name?: string; readonly customer?: string } };
}

/** A server of the page and of the API's contract, with its travelers in memory; it can be stopped and started again. */
export interface PageServer {
  readonly url: string;
  /** Versions of each traveler by id. */
  readonly travelers: ReadonlyMap<string, readonly Saved[]>;
  /** Whether the API answers; the page itself is served in any case. */
  answers: boolean;
  readonly close: () => Promise<void>;
}

/** Serves the built page of a folder on a free port. */
export async function servePage(folder: string): Promise<PageServer> {
  const travelers = new Map<string, Saved[]>();
  const shared = { answers: true };
  const server: Server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://page");
    if (!pathname.startsWith("/api/")) return void sendFile(folder, pathname, response);
    if (!shared.answers) return void request.socket.destroy();
    void answer(travelers, request, pathname).then(({ status, body }) => {
      const problem = status >= 400;
      response.writeHead(status, { "content-type": problem ? "application/problem+json" : "application/json" });
      response.end(JSON.stringify(body));
    });
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}`,
    travelers,
    get answers() {
      return shared.answers;
    },
    set answers(answers: boolean) {
      shared.answers = answers;
    },
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

async function sendFile(folder: string, pathname: string, response: ServerResponse): Promise<void> {
  const name = extname(pathname) === "" ? "/index.html" : pathname;
  try {
    const bytes = await readFile(join(folder, normalize(name)));
    response.writeHead(200, { "content-type": TYPES[extname(name)] ?? "application/octet-stream" }).end(bytes);
  } catch {
    response.writeHead(404).end();
  }
}

async function answer(
  travelers: Map<string, Saved[]>,
  request: IncomingMessage,
  pathname: string,
): Promise<{ status: number; body: unknown }> {
  const [, , , id, part, number] = pathname.split("/").map(decodeURIComponent);
  const refuse = (status: number, title: string, more = {}) => ({ status, body: { title, status, ...more } });
  const sent = request.method === "GET" ? {} : JSON.parse(await bodyOf(request));
  const save = (one: string, versions: Saved[]) => {
    const at = new Date(Date.UTC(2026, 2, 14, 8, versions.length));
    const saved = { id: one, version: versions.length + 1, savedAt: at.toISOString(), savedBy: "bench", ...sent };
    versions.push(saved);
    travelers.set(one, versions);
    return saved;
  };
  if (id === undefined) {
    if (request.method === "POST") return { status: 201, body: save(`t${travelers.size + 1}`, []) };
    const rows = [...travelers.values()].flatMap((versions) => versions.slice(-1));
    return { status: 200, body: { travelers: rows.map(({ document, ...head }) => ({ ...head, ...document.job })) } };
  }
  const versions = travelers.get(id);
  const last = versions?.at(-1);
  if (!versions || !last) return refuse(404, "There is no such traveler.");
  if (request.method === "PUT") {
    if (sent.baseVersion !== last.version)
      return refuse(409, "Saved meanwhile.", { yours: sent.document, theirs: last });
    return { status: 200, body: save(id, versions) };
  }
  if (part !== "versions") return { status: 200, body: last };
  if (number !== undefined) return { status: 200, body: versions[Number(number) - 1] };
  return { status: 200, body: { versions: versions.map(({ document: _, ...head }) => head) } };
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts).toString("utf8");
}
