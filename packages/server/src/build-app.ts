import helmet from "@fastify/helmet";
import multipart from "@fastify/multipart";
import rateLimit from "@fastify/rate-limit";
import Fastify from "fastify";
import { serializerCompiler, validatorCompiler, type ZodTypeProvider } from "fastify-type-provider-zod";
import { guardAgainstPages } from "./http/guards.ts";
import { describeApi } from "./http/openapi.ts";
import { HttpProblem, PROBLEM_TYPE, problemBody } from "./http/problem-details.ts";
import { refuseInWords, sendProblem } from "./http/refusals.ts";
import { SECURITY_HEADERS } from "./http/security-headers.ts";
import { aboutRoutes } from "./routes/about.ts";
import { travelerMaker } from "./routes/create-traveler.ts";
import { fileRoutes } from "./routes/files.ts";
import { listAndSettingRoutes } from "./routes/lists-and-settings.ts";
import { studyRoutes } from "./routes/studies.ts";
import { travelerRoutes } from "./routes/travelers.ts";
import { webAppRoutes } from "./routes/web-app.ts";
import { workupRoutes } from "./routes/workups.ts";
import type { App, ServerContext } from "./server-context.ts";

const MINUTE = 60_000;

/** The web server of an open shop, not yet listening. `webFolder` holds the built screens, where they are built. */
export async function buildApp(context: ServerContext, webFolder: string): Promise<App> {
  const { limits, onFault, program, jobs } = context;
  const app = Fastify({
    bodyLimit: limits.body,
    // Names in addresses are percent-encoded, a character in up to twelve places.
    routerOptions: { maxParamLength: 1000 },
    frameworkErrors: (error, request, reply) => void sendProblem(error, request, reply as never, onFault),
    clientErrorHandler(_, socket) {
      if (!socket.writable) return;
      const body = JSON.stringify(problemBody(new HttpProblem("bad-request", "what came is no HTTP request")));
      const head = [`HTTP/1.1 400 Bad Request`, `content-type: ${PROBLEM_TYPE}`, `content-length: ${body.length}`];
      socket.end(`${head.join("\r\n")}\r\nconnection: close\r\n\r\n${body}`);
    },
  }).withTypeProvider<ZodTypeProvider>();
  app.setValidatorCompiler(validatorCompiler).setSerializerCompiler(serializerCompiler);
  // JSON alone: a form of another server's page can send plain text without being asked first.
  app.removeContentTypeParser("text/plain");
  const { unanswered } = refuseInWords(app, onFault);
  await app.register(helmet, SECURITY_HEADERS);
  guardAgainstPages(app);
  await app.register(rateLimit, {
    max: limits.requests,
    timeWindow: MINUTE,
    errorResponseBuilder: (_, { after }) =>
      new HttpProblem("too-many", `${limits.requests} requests a minute are taken; come back in ${after}`),
  });
  await describeApi(app, program);
  const create = travelerMaker(context);
  aboutRoutes(app, context);
  travelerRoutes(app, context, create);
  workupRoutes(app, context);
  studyRoutes(app, context);
  listAndSettingRoutes(app, context);
  await app.register(async (files: App) => {
    files.removeAllContentTypeParsers();
    await files.register(multipart);
    files.addContentTypeParser("*", (_request, payload, done) => done(null, payload));
    fileRoutes(files, context, create);
  });
  const page = await webAppRoutes(app, webFolder);
  app.setNotFoundHandler(
    (request, reply) => page(request, reply) ?? sendProblem(unanswered(request, reply), request, reply, onFault),
  );
  app.addHook("preClose", async () => jobs.close());
  return app;
}
