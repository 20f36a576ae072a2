export type { RockResponse } from "./rock-response.ts";
