import { execFile } from "node:child_process";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import chromium from "@sparticuz/chromium";
import { type BrowserServer, chromium as browsers } from "playwright-core";
import type { TestProject } from "vitest/node";

const WEB = fileURLToPath(new URL("../../packages/web/", import.meta.url));

declare module "vitest" {
  interface ProvidedContext {
    /** Address of the one browser of all tests of the page. */
    browser: string;
    /** Folder of the built page. */
    page: string;
  }
}

let server: BrowserServer | undefined;

/** Builds the page once and starts one browser for every test of it. */
export async function setup(project: TestProject): Promise<void> {
  // In a process of its own: the test runner's own mode would build a page that nobody ships.
  const vite = createRequire(`${WEB}package.json`).resolve("vite/package.json").replace("package.json", "bin/vite.js");
  const env = { ...process.env, NODE_ENV: "production" };
  await promisify(execFile)(process.execPath, [vite, "build", "--logLevel", "warn"], { cwd: WEB, env });
  server = await browsers.launchServer({
    executablePath: await chromium.executablePath(),
    headless: true,
    args: ["--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"],
  });
  project.provide("browser", server.wsEndpoint());
  project.provide("page", `${WEB}dist/page`);
}

/** Ends the browser. */
export async function teardown(): Promise<void> {
  await server?.close();
}
