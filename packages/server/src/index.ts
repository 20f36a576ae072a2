export type { ExampleJob } from "./example-jobs.ts";
export { ListenRefused } from "./listen-refused.ts";
export type { ServerLimits } from "./server-context.ts";
export { type RunningServer, type ServerOptions, startServer } from "./start-server.ts";
