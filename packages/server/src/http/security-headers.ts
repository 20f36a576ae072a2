import type { FastifyHelmetOptions } from "@fastify/helmet";

/**
 * What a page of this server may do: run its own scripts and its own WebAssembly, the one thing that `wasm-unsafe-eval`
 * lets through, and talk to this server alone. Styles may stand in elements, as drawings carry them so.
 */
export const SECURITY_HEADERS: FastifyHelmetOptions = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      defaultSrc: ["'self'"],
      scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
      scriptSrcAttr: ["'none'"],
      workerSrc: ["'self'"],
      connectSrc: ["'self'"],
      styleSrc: ["'self'", "'unsafe-inline'"],
      imgSrc: ["'self'", "data:", "blob:"],
      fontSrc: ["'self'", "data:"],
      manifestSrc: ["'self'"],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
  },
  // The server speaks plain HTTP on this machine alone, and a browser told otherwise would not find it again.
  strictTransportSecurity: false,
  crossOriginOpenerPolicy: { policy: "same-origin" },
  crossOriginResourcePolicy: { policy: "same-origin" },
  // Drawings are opened in a sandbox and the pages are not: one origin, two kinds of page.
  originAgentCluster: false,
  frameguard: { action: "deny" },
  referrerPolicy: { policy: "no-referrer" },
};

/** What a file that somebody gave or a drawing may do when it is opened by itself: nothing. */
export const FILE_POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; sandbox";
