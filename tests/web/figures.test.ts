import { describe, expect, it } from "vitest";
import { accessibilityFaults, box, expectSilence, goTo, openExample, picture, settled, useBench } from "./screen.ts";

const bench = useBench();

describe("the stations of the workup", () => {
  it("show the figures of the job, with the drawings of the shop", async () => {
    const screen = await bench.open();
    const { page } = screen;
    await openExample(page);
    await goTo(page, "Cut");
    await settled(page);
    // The bit of the demo has fifteen cutters: a row for each.
    const cutters = page.getByRole("region", { name: /^Cutters in / }).getByRole("row");
    expect(await cutters.count()).toBe(1 + 15);
    await page.getByRole("img", { name: /^Profile/ }).waitFor();
    await goTo(page, "String");
    // Rule of the trade: deep enough the driller holds back.
    await page.getByRole("row", { name: /360 ft.*hold back/ }).waitFor();
    await page.getByRole("img", { name: /^Weight/ }).waitFor();
    await goTo(page, "Flow");
    await page.getByText("150 gpm", { exact: false }).first().waitFor();
    await page.getByRole("img", { name: /pump's pressure goes/ }).waitFor();
    await goTo(page, "Ground");
    await page.getByRole("img", { name: /^The ground by depth/ }).waitFor();
    expectSilence(screen);
  });

  it("work with a weight set by hand and come back from it with one tap", async () => {
    const { page } = await bench.open();
    await openExample(page);
    await goTo(page, "Cut");
    await page.getByText("Set weight, speed or a limit by hand").click();
    await box(page, "Weight to work with").fill("2000 lbf");
    await box(page, "Weight to work with").press("Enter");
    await settled(page);
    const rows = page.getByRole("region", { name: "How to run it, bed by bed" }).getByRole("row");
    await expect.poll(() => rows.filter({ hasText: "2,000 lbf" }).count()).toBe(4);
    await picture(page, "cut-by-hand");
    await page.getByRole("button", { name: "Back to the computed values" }).click();
    await settled(page);
    await expect.poll(() => rows.filter({ hasText: "2,000 lbf" }).count()).toBe(0);
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
