import { readFileSync } from "node:fs";
import { join } from "node:path";
import axe from "axe-core";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { bitwright, projectFile, temporaryFolder } from "../support/command.ts";

/** Main tap targets on the phone [px]. */
const TAP = 48;

const folder = temporaryFolder();
let browser: Browser;
let context: BrowserContext;
let page: Page;
const complaints: string[] = [];

beforeAll(async () => {
  const { status, err } = bitwright("work", projectFile("examples/house-well.traveler.json"), "--out", folder.path);
  expect([status, err]).toEqual([0, ""]);
  browser = await chromium.connect(inject("browser"));
  context = await browser.newContext({ viewport: { width: 390, height: 844 }, bypassCSP: false });
  page = await context.newPage();
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", ({ message }) => complaints.push(message));
  await page.setContent(readFileSync(join(folder.path, "card.html"), "utf8"));
});
afterAll(async () => {
  await context?.close();
  await browser?.close();
  folder.remove();
});

const box = async (selector: string) => {
  const found = await page.locator(selector).first().boundingBox();
  if (!found) throw new Error(`${selector} is not to be seen`);
  return found;
};

describe("the card on a phone of 390 px", () => {
  it("is as wide as the screen, in its own style, and the console stays silent", async () => {
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(await page.evaluate(() => getComputedStyle(document.body).fontSize)).toBe("19px");
    expect(complaints).toEqual([]);
  });

  it("holds no script and asks for nothing over the net", async () => {
    expect(await page.locator("script, link, img, iframe").count()).toBe(0);
    expect(await page.evaluate(() => performance.getEntriesByType("resource").length)).toBe(0);
  });

  it("lets the bed be found by its depth, with the weight of that bed in large figures", async () => {
    await page.getByRole("link", { name: /128-205 ft/ }).click();
    const bed = page.locator("section:target");
    const head = await bed.locator("h3").textContent();
    expect(head).toBe("128-205 ft: limestone, medium hard");
    const card = readFileSync(join(folder.path, "card.txt"), "utf8");
    const [, weight = "none"] = /limestone, medium hard\s+([\d,-]+)/.exec(card) ?? [];
    expect(await bed.locator("dd").first().textContent()).toBe(`${weight} lbf`);
    const { y } = await box("section:target");
    expect(y).toBeGreaterThanOrEqual(0);
    expect(y).toBeLessThan(100);
  });

  it("keeps what is tapped large, apart, and in the lower two thirds", async () => {
    const bars = await page.locator(".bar a, .bar label").all();
    expect(bars.length).toBe(5);
    const boxes = await Promise.all(bars.map((one) => one.boundingBox()));
    boxes.forEach((one, k) => {
      expect(one?.height).toBeGreaterThanOrEqual(TAP);
      expect(one?.width).toBeGreaterThanOrEqual(TAP);
      expect(one?.y).toBeGreaterThan(844 / 3);
      const before = boxes[k - 1];
      if (before && one) expect(one.x - before.x - before.width).toBeGreaterThanOrEqual(8);
    });
    await page.getByRole("link", { name: "Depth" }).click();
    for (const link of await page.locator(".depths a").all()) {
      expect((await link.boundingBox())?.height).toBeGreaterThanOrEqual(TAP);
    }
  });

  it("turns black for the night with one tap, and back", async () => {
    const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    expect(await paper()).toBe("rgb(255, 255, 255)");
    await page.getByText("Night", { exact: true }).click();
    expect(await paper()).toBe("rgb(0, 0, 0)");
    await page.getByText("Night", { exact: true }).click();
    expect(await paper()).toBe("rgb(255, 255, 255)");
  });

  it("says every joint, every warning and every caution whole", async () => {
    const text = ((await page.locator("main").textContent()) ?? "").replace(/\s+/g, " ");
    const { card } = JSON.parse(readFileSync(join(folder.path, "workup.json"), "utf8"));
    for (const warning of card.warnings) expect(text).toContain(warning.slice(warning.indexOf(": ") + 2));
    for (const caution of card.cautions) expect(text).toContain(caution.text);
    for (const { likely, act } of card.stopSigns) expect(text).toContain(`${likely}; ${act}`);
    const joints = card.rows.flatMap(({ feed }: { feed: unknown[] }) => feed).length;
    expect(await page.locator("tbody tr").count()).toBe(joints);
  });

  it("is found clean by the check for those who hear it read", async () => {
    // The page's own policy lets no foreign script in: the check runs in a copy of it without one.
    const copy = await (await browser.newContext({ viewport: { width: 390, height: 844 }, bypassCSP: true })).newPage();
    await copy.setContent(readFileSync(join(folder.path, "card.html"), "utf8"));
    await copy.evaluate(axe.source);
    const { violations } = await copy.evaluate(() => (window as unknown as { axe: typeof axe }).axe.run());
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await copy.context().close();
  });
});
