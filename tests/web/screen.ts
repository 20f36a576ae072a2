import { mkdirSync } from "node:fs";
import axe from "axe-core";
import { type Browser, type BrowserContext, chromium, type Locator, type Page } from "playwright-core";
import { afterAll, beforeAll, expect, inject } from "vitest";
import { projectFile } from "../support/command.ts";
import { type PageServer, servePage } from "./page-server.ts";

/** The browser and the server of one file of tests. */
export interface Bench {
  readonly server: PageServer;
  /** A page of its own, with nothing kept from others; its console must stay silent. */
  readonly open: (options?: { readonly width?: number; readonly height?: number }) => Promise<Screen>;
}

/** One page at work. */
export interface Screen {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What the console said that a user would call an error, and what was thrown. */
  readonly complaints: readonly string[];
}

/** Starts a server for the tests of a file, and ends it with what they opened. */
export function useBench(): Bench {
  let browser: Browser;
  let server: PageServer;
  const contexts: BrowserContext[] = [];
  beforeAll(async () => {
    browser = await chromium.connect(inject("browser"));
    server = await servePage(inject("page"));
  });
  afterAll(async () => {
    for (const context of contexts) await context.close();
    await browser.close();
    await server.close();
  });
  return {
    get server() {
      return server;
    },
    open: async ({ width = 1366, height = 900 } = {}) => {
      const context = await browser.newContext({ viewport: { width, height } });
      contexts.push(context);
      const page = await context.newPage();
      const complaints: string[] = [];
      page.on("pageerror", ({ message }) => complaints.push(message));
      page.on("console", (message) => {
        if (["error", "warning"].includes(message.type())) complaints.push(message.text());
      });
      await page.goto(server.url);
      await page.getByRole("heading", { level: 1 }).waitFor();
      return { page, context, complaints };
    },
  };
}

/** Opens the worked example on its advice. */
export async function openExample(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Open the worked example" }).click();
  await page.locator(".verdict").waitFor();
  await settled(page);
}

/** The field of a name. */
export function box(page: Page, name: string): Locator {
  return page.getByRole("textbox", { name, exact: true });
}

/** Goes to a station by its name. */
export async function goTo(page: Page, station: string): Promise<void> {
  const stations = page.getByRole("navigation", { name: "Stations of the job" });
  await stations.getByRole("link", { name: new RegExp(`^${station}`) }).click();
  await page.locator(`a[aria-current="page"]`, { hasText: station }).waitFor();
}

/** Waits until the worker has nothing left to do and every edit is kept. */
export async function settled(page: Page): Promise<void> {
  await page.locator('[data-busy="false"]').waitFor({ state: "attached" });
  await page.locator('[data-kept="kept"]').waitFor({ state: "attached" });
}

/** Takes a picture for a person to look at; `out` is not committed. */
export async function picture(page: Page, name: string): Promise<void> {
  const folder = projectFile("out/web");
  mkdirSync(folder, { recursive: true });
  await page.evaluate(() => window.scrollTo(0, 0));
  await page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
}

/** The rules of WCAG 2.2, levels A and AA, and good practice that the screen breaks; of all rules, or of a few. */
export async function accessibilityFaults(page: Page, rules?: readonly string[]): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async (only) => {
    const { axe: check } = globalThis as unknown as {
      axe: {
        run: (
          options: object,
        ) => Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
      };
    };
    const { violations } = await check.run(only ? { runOnly: only } : {});
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`),
    );
  }, rules);
}

/** Holds that the console said nothing. */
export function expectSilence({ complaints }: Screen): void {
  expect(complaints).toEqual([]);
}
