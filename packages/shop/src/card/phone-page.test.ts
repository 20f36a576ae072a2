import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { demoWorkup } from "../../../../tests/support/demo-workup.ts";
import { xmlTree } from "../../../../tests/support/xml-tree.ts";
import { PHONE_STYLE_DIGEST, phonePage } from "./phone-page.ts";
import { PHONE_STYLE } from "./phone-style.ts";

const { card } = demoWorkup("loop-hole");
const paper = { units: "field", program: "Bitwright 0.0.0" } as const;
const bodyOf = (page: string) => page.slice(page.indexOf("<body"));

describe("phonePage", () => {
  const page = phonePage(card, paper);

  it("lets its own style through by its digest, and nothing else", () => {
    const digest = createHash("sha256").update(PHONE_STYLE).digest("base64");
    expect(PHONE_STYLE_DIGEST).toBe(`sha256-${digest}`);
    expect(page).toContain(`content="default-src 'none'; style-src 'sha256-${digest}'"`);
    expect(page.slice(page.indexOf("<style>") + 7, page.indexOf("</style>"))).toBe(PHONE_STYLE);
    expect(bodyOf(page)).not.toMatch(/<script|<style| style=| on\w+=|https?:/);
  });

  it("is well formed", () => {
    xmlTree(page.replace("<!doctype html>", "").trim());
  });

  it("leads from each depth to its bed", () => {
    for (const [, id] of page.matchAll(/href="#([^"]+)"/g)) expect(page).toContain(`id="${id}"`);
    expect([...page.matchAll(/href="#bed-\d+"/g)]).toHaveLength(card.rows.length);
  });

  it("takes what a person typed as text", () => {
    const job = '<script>alert("x")</script> & co';
    const typed = phonePage({ ...card, job, rows: card.rows.map((row) => ({ ...row, ground: job })) }, paper);
    expect(typed).not.toContain("<script");
    expect(typed).toContain("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; co");
  });

  it("names no place in the bar that the page does not have", () => {
    const { breakIn: _, makeUp: __, fuel: ___, ...bare } = card;
    const short = phonePage({ ...bare, cautions: [] }, paper);
    expect(short).not.toMatch(/href="#(start|safety)"/);
    expect(short).toContain('href="#stop"');
  });

  it("says of a bed that is not for the bit only what to use there", () => {
    const rows = card.rows.map((row) => ({ ...row, drilled: false, remarks: ["Not with this bit. Use: auger."] }));
    const none = bodyOf(phonePage({ ...card, rows }, paper));
    expect(none).toContain("! DO NOT RUN THIS BIT IN THIS HOLE.");
    expect(none).toContain("✕ NOT THIS BIT.");
    expect(none).toContain("Use: auger.");
    expect(none).not.toContain("<table");
  });

  it("prints metric units throughout where they are asked for", () => {
    const metric = bodyOf(phonePage(card, { ...paper, units: "metric" }));
    expect(metric).toMatch(/\d kN</);
    expect(metric).not.toMatch(/\b(psi|lbf|gpm|ft\/h)\b/);
  });

  it("gives no pump flow on a hole drilled on foam", () => {
    const foam = bodyOf(phonePage(card, { ...paper, blownWith: { medium: "foam" } }));
    expect(foam).toContain("Foam: not worked out here");
    expect(foam).not.toMatch(/gpm|drill no faster/);
  });
});
