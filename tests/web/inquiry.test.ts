import { describe, expect, it } from "vitest";
import { accessibilityFaults, box, expectSilence, goTo, openExample, picture, settled, useBench } from "./screen.ts";

const bench = useBench();

const LOG = [
  "from ft\tto ft\tdescription",
  "0\t14\tbrown sandy clay",
  "14\t37\ttan clay, sticky",
  "37\t128\tgray shale",
  "128\t205\tlimestone, medium hard",
].join("\n");

describe("a new inquiry", () => {
  it("goes from nothing through pasted ground to the advice and the card", async () => {
    const screen = await bench.open();
    const { page } = screen;
    await page.getByRole("button", { name: "New inquiry" }).click();
    await box(page, "Name of the job").fill("Orchard Lane well");
    await box(page, "Hole diameter").fill("6 1/8");
    await expect.poll(() => page.getByText("= 6 1/8 in").count()).toBe(0);
    // 6 1/8 in × 25.4 mm/in = 155.575 mm
    await page.getByText("= 155.6 mm").waitFor();
    await box(page, "Hole diameter").press("Enter");
    expect(await box(page, "Hole diameter").inputValue()).toBe("6 1/8 in");
    await box(page, "To").fill("205 ft");
    await box(page, "To").press("Tab");

    await goTo(page, "Ground");
    await page.getByText("Nothing is known yet.").waitFor();
    await page.getByRole("button", { name: "Paste a table or open a log" }).click();
    await box(page, "Table or log").fill(LOG);
    await page.getByRole("button", { name: "Read it" }).click();
    // How it was read is shown before anything is taken.
    await page.getByText(/4 intervals of one bore/).waitFor();
    expect(await box(page, "Bottom of bed 1").count()).toBe(0);
    await picture(page, "ground-paste");
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole("button", { name: "Take these 4 beds" }).click();
    expect(await box(page, "Bottom of bed 4").inputValue()).toBe("205 ft");

    await goTo(page, "Advice");
    await page.locator(".verdict").waitFor();
    expect(await page.locator(".verdict").textContent()).toMatch(/^Yes, 0 to 205 ft/);
    await goTo(page, "Card");
    await page.getByRole("heading", { name: /limestone, medium hard/ }).waitFor();
    expectSilence(screen);
  });

  it("says what is still needed before a job can be worked up, and goes there", async () => {
    const screen = await bench.open();
    const { page } = screen;
    await page.getByRole("button", { name: "New inquiry" }).click();
    await goTo(page, "Advice");
    const needed = page.getByLabel("What is needed first");
    await needed.waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await needed.getByRole("link", { name: /inquiry\.holes\[0\]\.diameter/ }).click();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.closest("[data-where]")?.textContent))
      .toMatch(/^Hole diameter/);
    expectSilence(screen);
  });
});

describe("a field", () => {
  it("keeps bad input with the reason and the limit beside it, and the last good result greyed", async () => {
    const screen = await bench.open();
    const { page } = screen;
    await openExample(page);
    await goTo(page, "Inquiry");
    const field = box(page, "Pull-down");
    await field.fill("90 rpm");
    await field.press("Tab");
    const wrong = 'Got "90 rpm", which is a rotary speed. Give a force of 0 lbf to 1000 klbf';
    await page.getByText(wrong).waitFor();
    expect(await field.inputValue()).toBe("90 rpm");
    await expect.poll(() => field.getAttribute("aria-invalid")).toBe("true");
    await page.getByRole("link", { name: /^Inquiry 1 to mend/ }).waitFor();
    await picture(page, "bad-input");
    await goTo(page, "Advice");
    expect(await page.locator(".stale .verdict").textContent()).toMatch(/^Yes, 60 to 360 ft/);
    await page.getByText("What is hatched is of the last job that could be worked up").waitFor();
    await picture(page, "stale-advice");
    expect(await accessibilityFaults(page)).toEqual([]);
    expectSilence(screen);
  });

  it("gives an edit up on Esc", async () => {
    const { page } = await bench.open();
    await openExample(page);
    await goTo(page, "Inquiry");
    const field = box(page, "Torque");
    await field.fill("1");
    await field.press("Escape");
    expect(await field.inputValue()).toBe("4500 ft-lbf");
    await field.press("Tab");
    expect(await field.inputValue()).toBe("4500 ft-lbf");
    expect(await page.getByRole("button", { name: "Undo: nothing to take back" }).count()).toBe(1);
  });

  it("takes no value from the wheel", async () => {
    const { page } = await bench.open();
    await openExample(page);
    await goTo(page, "Inquiry");
    const field = box(page, "Torque");
    await field.focus();
    await field.hover();
    await page.mouse.wheel(0, 400);
    expect(await field.inputValue()).toBe("4500 ft-lbf");
  });
});

describe("steps", () => {
  it("are named, taken back and done again, by button and by key", async () => {
    const { page } = await bench.open();
    await openExample(page);
    await goTo(page, "Inquiry");
    const field = box(page, "Hoist");
    await field.fill("30000");
    await field.press("Enter");
    expect(await field.inputValue()).toBe("30000 lbf");
    await page.getByRole("button", { name: "Undo: Hoist: 30000 lbf" }).click();
    expect(await field.inputValue()).toBe("28000 lbf");
    await page.keyboard.press("Control+y");
    expect(await field.inputValue()).toBe("30000 lbf");
    await page.keyboard.press("Control+z");
    expect(await field.inputValue()).toBe("28000 lbf");
  });
});

describe("units", () => {
  it("switch at once on every screen, are remembered, and leave what was typed", async () => {
    const { page } = await bench.open();
    await openExample(page);
    await page.getByRole("radio", { name: "Metric" }).check({ force: true });
    // 60 ft × 0.3048 m/ft = 18.3 m, 360 ft = 109.7 m
    await expect.poll(() => page.locator(".verdict").textContent()).toMatch(/^Yes, 18\.3 to 109\.7 m/);
    await goTo(page, "Inquiry");
    expect(await box(page, "Pull-down").inputValue()).toBe("12000 lbf");
    // 12,000 lbf × 4.4482216 N/lbf = 53.38 kN
    await page.getByText("= 53.38 kN").waitFor();
    await settled(page);
    await page.reload();
    await page.getByText("= 53.38 kN").waitFor();
    await page.getByRole("radio", { name: "Field" }).check({ force: true });
    expect(await page.getByRole("button", { name: "Undo: nothing to take back" }).count()).toBe(1);
  });
});
