export * from "./document/index.ts";
export * from "./import/index.ts";
export * from "./layout-file/index.ts";
export * from "./quantity/index.ts";
export * from "./studies/index.ts";
export { workUp } from "./work-up.ts";
export * from "./workup.ts";
export { workupJson } from "./workup-json.ts";
