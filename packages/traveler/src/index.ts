export * from "./document/index.ts";
