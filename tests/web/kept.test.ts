import { describe, expect, it } from "vitest";
import { accessibilityFaults, box, goTo, openExample, picture, useBench } from "./screen.ts";

const bench = useBench();

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
