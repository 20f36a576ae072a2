export { type Read, readLayoutFile } from "./layout-file.ts";
export { readRockFile } from "./rock-file.ts";
