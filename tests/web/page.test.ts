import { readdirSync, readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { describe, expect, inject, it } from "vitest";
import { accessibilityFaults, box, expectSilence, goTo, openExample, picture, settled, useBench } from "./screen.ts";

const bench = useBench();
const STATIONS = ["Inquiry", "Ground", "Advice", "Cut", "String", "Flow", "Card"];

describe("the page", () => {
  it("keeps the scripts of the first view under 500 kB, packed", () => {
    const folder = inject("page");
    const index = readFileSync(`${folder}/index.html`, "utf8");
    const scripts = [...index.matchAll(/(?:src|href)="(\/assets\/[^"]+\.js)"/g)].map(([, name]) => name);
    expect(scripts.length).toBeGreaterThan(0);
    const packed = scripts.reduce((sum, name) => sum + gzipSync(readFileSync(folder + name)).length, 0);
    console.log(`scripts of the first view: ${Math.round(packed / 1000)} kB packed`);
    expect(packed).toBeLessThan(500_000);
    // The engine at work comes after, in the worker.
    expect(readdirSync(`${folder}/assets`).some((name) => name.startsWith("work.worker"))).toBe(true);
  });

  it.each(["system", "sun", "dark"])(
    "is clean to the accessibility check on every station, screen %s",
    async (theme) => {
      const screen = await bench.open();
      const { page } = screen;
      await page.evaluate((look) => {
        localStorage.setItem(
          "bitwright-settings",
          JSON.stringify({ state: { units: "field", theme: look }, version: 0 }),
        );
      }, theme);
      await page.reload();
      await page.getByRole("heading", { level: 1 }).waitFor();
      expect(await accessibilityFaults(page), "start").toEqual([]);
      await picture(page, `start-${theme}`);
      await openExample(page);
      for (const station of STATIONS) {
        await goTo(page, station);
        await settled(page);
        expect(await accessibilityFaults(page), station).toEqual([]);
        await picture(page, `${station.toLowerCase()}-${theme}`);
      }
      expectSilence(screen);
    },
  );

  it.each(STATIONS)("fits a phone on %s, with targets for a thumb", async (station) => {
    const screen = await bench.open({ width: 390, height: 844 });
    const { page } = screen;
    await openExample(page);
    await goTo(page, station);
    await settled(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    const bar = await page.getByRole("navigation", { name: "Stations of the job" }).boundingBox();
    expect((bar?.y ?? 0) + (bar?.height ?? 0)).toBe(844);
    const small = await page.getByRole("button").evaluateAll((buttons) =>
      buttons
        .filter((button) => !button.matches(".open-figure, .help"))
        .map((button) => ({ words: button.textContent, ...button.getBoundingClientRect().toJSON() }))
        .filter(({ width, height }) => width > 0 && (width < 44 || height < 44))
        .map(({ words }) => words),
    );
    expect(small).toEqual([]);
    expect(await accessibilityFaults(page)).toEqual([]);
    await picture(page, `phone-${station.toLowerCase()}`);
    expectSilence(screen);
  });

  it("is worked with the keys alone, from the start to a bed's words", async () => {
    const { page } = await bench.open();
    const tabTo = async (name: RegExp) => {
      for (let presses = 0; presses < 80; presses++) {
        await page.keyboard.press("Tab");
        const held = await page.evaluate(() => {
          const element = document.activeElement;
          const label = element
            ?.getAttribute("aria-labelledby")
            ?.split(" ")
            .map((id) => document.getElementById(id)?.textContent);
          return label?.join(" ") ?? element?.getAttribute("aria-label") ?? element?.textContent ?? "";
        });
        if (name.test(held)) return;
      }
      throw new Error(`no Tab leads to ${name}`);
    };
    await tabTo(/^New inquiry$/);
    await page.keyboard.press("Enter");
    await box(page, "Hole diameter").waitFor();
    await tabTo(/^Hole diameter$/);
    await page.keyboard.type("4 3/4");
    await page.keyboard.press("Enter");
    expect(await box(page, "Hole diameter").inputValue()).toBe("4 3/4 in");
    await page.keyboard.press("Alt+2");
    await page.getByRole("heading", { name: "What will the bit meet?" }).waitFor();
    await tabTo(/^Bottom of a new bed$/);
    await page.keyboard.type("90");
    await page.keyboard.press("Tab");
    await page.keyboard.type("gray shale");
    await page.keyboard.press("Enter");
    // Enter goes down: the next row waits in the same column.
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label")))
      .toBe("Driller's words for a new bed");
    expect(await box(page, "Bottom of bed 1").inputValue()).toBe("90 ft");
    expect(await box(page, "Driller's words for bed 1").inputValue()).toBe("gray shale");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Control+s");
    await page.getByRole("dialog", { name: "Save a version" }).waitFor();
    await page.keyboard.press("Escape");
    await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
  });
});

describe("what is kept", () => {
  it("survives a reload, bad input too", async () => {
    const { page } = await bench.open();
    await openExample(page);
    await goTo(page, "Inquiry");
    await box(page, "Job number").fill("2108");
    await box(page, "Job number").press("Tab");
    await box(page, "Torque").fill("strong");
    await box(page, "Torque").press("Tab");
    await page.getByText(/Got "strong"/).waitFor();
    await page.locator('[data-kept="kept"]').waitFor({ state: "attached" });
    await page.reload();
    await page.getByText(/Got "strong"/).waitFor();
    expect(await box(page, "Job number").inputValue()).toBe("2108");
    await page.goto(bench.server.url);
    await page.getByRole("link", { name: /Ridge Road house well.*2108/ }).waitFor();
  });

  it("is saved as versions at the shop, and a clash of two savings loses neither", async () => {
    const { page } = await bench.open();
    await openExample(page);
    const save = async (note: string) => {
      await page.getByRole("button", { name: "Save" }).click();
      await page.getByRole("textbox", { name: "What is in it" }).fill(note);
      await page.getByRole("button", { name: "Save version" }).click();
    };
    await save("as told on the phone");
    await page.getByText("Saved at the shop as version 1.").waitFor();
    const [id, versions] = [...bench.server.travelers].at(-1) ?? [];
    expect(versions?.at(-1)).toMatchObject({ id, note: "as told on the phone", version: 1 });

    // Somebody else saves in between.
    await fetch(`${bench.server.url}/api/travelers/${id}`, {
      method: "PUT",
      body: JSON.stringify({ document: { ...versions?.[0]?.document, job: { name: "Theirs" } }, baseVersion: 1 }),
    });
    await goTo(page, "Inquiry");
    await box(page, "Job number").fill("9");
    await box(page, "Job number").press("Tab");
    await save("mine");
    await page.getByRole("alert").getByText("Somebody else has saved this job").waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole("button", { name: "Take the other" }).click();
    await expect.poll(() => box(page, "Name of the job").inputValue()).toBe("Theirs");
    await page.getByRole("button", { name: "More" }).click();
    await page.getByRole("menuitem", { name: "Versions" }).click();
    await page.getByRole("dialog").getByText("mine").waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await picture(page, "versions");
  });

  it("is worked on with the server stopped, and says what cannot be done then", async () => {
    const { page, context } = await bench.open();
    await openExample(page);
    // The page keeps itself for this once its worker for that is ready.
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await expect.poll(() => page.evaluate(async () => (await caches.keys()).length)).toBeGreaterThan(0);
    await context.setOffline(true);
    await page.reload();
    await page.locator(".verdict").waitFor();
    await page.getByRole("button", { name: "Save" }).click();
    await page.getByRole("button", { name: "Save version" }).click();
    await page.getByText("The shop's server does not answer; save again when it is back.").waitFor();
    await page.goto(bench.server.url);
    await page.getByText("The shop's server does not answer. Jobs of this machine work without it").waitFor();
    await page.getByRole("link", { name: /Ridge Road house well/ }).waitFor();
    await picture(page, "start-offline");
    await context.setOffline(false);
  });
});

describe("what is found and how it was reached", () => {
  it("opens the working of a figure", async () => {
    const screen = await bench.open();
    const { page } = screen;
    await openExample(page);
    await page.getByRole("button", { name: /^49 ft, show how it was reached/ }).click();
    const working = page.getByRole("dialog", { name: "Least depth of the casing shoe" });
    await working.waitFor();
    // 44 ft of gravel's bottom and 5 ft into the bed that takes the shoe
    await working.getByText("13.4112 m").waitFor();
    await working.getByText("common practice").first().waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await picture(page, "working");
    await page.keyboard.press("Escape");
    await expect.poll(() => working.count()).toBe(0);
    expectSilence(screen);
  });

  it("goes to the place of a finding", async () => {
    const { page } = await bench.open();
    await openExample(page);
    await page
      .getByRole("link", { name: /^Caution: sandstone, water bearing/ })
      .first()
      .click();
    await page.getByRole("heading", { name: "What will the bit meet?" }).waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.closest("tr")?.textContent)).toMatch(/^7/);
  });

  it("sets a choice over the advice and takes it back with one tap", async () => {
    const { page } = await bench.open();
    await openExample(page);
    const wings = page.locator(".choice", { has: page.getByRole("heading", { name: "Wings" }) });
    await wings.getByText("Set another").click();
    await box(page, "Wings").fill("6");
    await box(page, "Wings").press("Enter");
    await wings.getByText("set by hand").waitFor();
    await wings.getByText("5 wings of 3", { exact: true }).first().waitFor();
    await settled(page);
    await page.getByText(/6 1\/8 in steel, 6 wings/).waitFor();
    await picture(page, "override");
    expect(await accessibilityFaults(page)).toEqual([]);
    await wings.getByRole("button", { name: /^Back to/ }).click();
    await settled(page);
    await page.getByText(/6 1\/8 in steel, 5 wings/).waitFor();
  });
});
