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
    expect(await accessibilityFaults(page, ["target-size", "color-contrast"])).toEqual([]);
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
