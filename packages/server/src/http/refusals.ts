import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { HttpProblem, PROBLEM_TYPE, problemBody } from "./problem-details.ts";
import { problemOfError } from "./problem-of-error.ts";

/** Sends a problem and, where it is a fault of the program, tells of it. */
export function sendProblem(
  error: unknown,
  request: Pick<FastifyRequest, "url">,
  reply: FastifyReply,
  onFault: (error: unknown) => void,
): FastifyReply {
  const problem = problemOfError(error);
  if (problem.statusCode >= 500) onFault(error);
  const body = problemBody(problem, request.url.split("?")[0]);
  return reply.code(problem.statusCode).type(PROBLEM_TYPE).send(JSON.stringify(body));
}

/** Every refusal of the server as problem details, also of addresses and methods that there are not. */
export function refuseInWords(app: FastifyInstance, onFault: (error: unknown) => void) {
  const routes: { readonly method: string; readonly pattern: RegExp }[] = [];
  app.addHook("onRoute", ({ method, url }) => {
    if (!url.startsWith("/api/")) return;
    for (const one of [method].flat()) routes.push({ method: one, pattern: patternOf(url) });
  });
  app.setErrorHandler((error, request, reply) => sendProblem(error, request, reply, onFault));
  return {
    /** What is wrong with an address that no route answers. */
    unanswered(request: FastifyRequest, reply: FastifyReply): HttpProblem {
      const path = request.url.split("?")[0] ?? "";
      const methods = [...new Set(routes.filter(({ pattern }) => pattern.test(path)).map(({ method }) => method))];
      if (methods.length === 0) return new HttpProblem("not-found", `no such address: ${path}`);
      void reply.header("allow", methods.join(", "));
      return new HttpProblem("method-not-allowed", `${request.method} is not done here; ${methods.join(", ")} is`);
    },
  };
}

/** Addresses of a route as a pattern: `/api/travelers/:id`. */
function patternOf(url: string): RegExp {
  const escaped = url.replace(/[.\\+?^${}()|[\]]/g, "\\$&");
  return new RegExp(`^${escaped.replace(/:[A-Za-z]+/g, "[^/]+")}$`);
}
