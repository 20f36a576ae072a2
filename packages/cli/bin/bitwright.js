#!/usr/bin/env node
import { existsSync } from "node:fs";

const built = new URL("../dist/main.js", import.meta.url);
if (existsSync(built)) {
  const { run } = await import(built.href);
  process.exitCode = await run(process.argv.slice(2));
} else {
  console.error("bitwright is not built yet: run `npm run build` in the project's folder first.");
  process.exitCode = 1;
}
