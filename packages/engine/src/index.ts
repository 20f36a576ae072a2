export * from "./advice/index.ts";
export * from "./bit/index.ts";
export * from "./cutting/index.ts";
export * from "./flow/index.ts";
export * from "./fluid/index.ts";
export * from "./geometry/index.ts";
export * from "./ground/index.ts";
export * from "./quantity/index.ts";
