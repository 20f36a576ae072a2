import type { FastifyInstance } from "fastify";
import { HttpProblem } from "./problem-details.ts";

const LOOPBACK_NAMES = /^(localhost|127(\.\d{1,3}){3}|\[::1\])$/;
const SAFE = new Set(["GET", "HEAD", "OPTIONS"]);

/** Whether a host, as a browser writes it, is this machine by a name that no other server can take. */
function isLoopback(host: string): boolean {
  const [name = ""] = /^(\[[^\]]*\]|[^:]*)(?=(:\d{1,5})?$)/.exec(host.toLowerCase()) ?? [];
  return LOOPBACK_NAMES.test(name);
}

/**
 * Nobody signs in yet, so the one thing that keeps strangers out is that they are on other machines. A page of theirs in a
 * browser on this machine is not: it may point a name of its own at this machine, or post a form here. The first is told
 * by the host it asks for, the second by where it says it comes from.
 */
export function guardAgainstPages(app: FastifyInstance): void {
  app.addHook("onRequest", async ({ headers, method }) => {
    const host = headers.host ?? "";
    if (!isLoopback(host)) {
      throw new HttpProblem("foreign-host", `got the host "${host.slice(0, 100)}"; ask for localhost or 127.0.0.1`);
    }
    if (SAFE.has(method)) return;
    const { origin } = headers;
    const site = headers["sec-fetch-site"];
    const fromHere = origin === undefined || origin.toLowerCase() === `http://${host.toLowerCase()}`;
    const said = site === undefined || site === "same-origin" || site === "none";
    if (fromHere && said) return;
    throw new HttpProblem("foreign-origin", `got a ${method} from "${(origin ?? String(site)).slice(0, 100)}"`);
  });
}
