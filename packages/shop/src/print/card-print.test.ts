import type { CardContent, CardRow } from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { DEMOS, demoWorkup } from "../../../../tests/support/demo-workup.ts";
import { pdfRead } from "../../../../tests/support/pdf-text.ts";
import { cardPrint, setCard } from "./index.ts";

const foot = 0.3048;
const program = "Bitwright 0.0.0";
const { card } = demoWorkup("house-well");
const paper = { units: "field", program } as const;
const [first] = card.rows.filter(({ drilled }) => drilled);

/** A bed of so many feet with a joint every ten. */
function bed(k: number, feet: number, more: Partial<CardRow> = {}): CardRow {
  const depth = (value: number) => ({ kind: "depth", value: value * foot }) as const;
  const [feed] = first.feed;
  const joints = Array.from({ length: Math.floor(feet / 10) }, (_, j) => ({
    ...feed,
    depth: depth(k * feet + 10 * (j + 1)),
  }));
  return { ...first, ground: `bed ${k + 1}`, from: depth(k * feet), to: depth((k + 1) * feet), feed: joints, ...more };
}

const withRows = (rows: readonly CardRow[], more: Partial<CardContent> = {}) => ({ ...card, rows, ...more });
const beds = (count: number, feet: number) => Array.from({ length: count }, (_, k) => bed(k, feet));

describe.each(DEMOS)("the printed card of %s", (name) => {
  const workup = demoWorkup(name);

  // Letter is 8 1/2 by 11 in at 72 pt; A4 is 210 by 297 mm by ISO 216.
  it.each([
    ["field", 8.5 * 72, 11 * 72],
    ["metric", (210 / 25.4) * 72, (297 / 25.4) * 72],
  ] as const)("is one page of the usual paper in %s units", async (units, width, height) => {
    const { pages, size, title, text } = await pdfRead(cardPrint(workup, { units, program }).pdf);
    expect(pages).toBe(1);
    expect(size[0]).toBeCloseTo(width, 0);
    expect(size[1]).toBeCloseTo(height, 0);
    expect(title).toBe(`Driller's card: ${workup.card.job}`);
    expect(text).toContain(`${program}, ${units} units, page 1 of 1`);
    expect(text).toContain("Read and signed:");
  });

  it("names every bed, every stop sign and every topic of safety, and who has the last say", async () => {
    const { text } = await pdfRead(cardPrint(workup, { units: "field", program }).pdf);
    const { rows, stopSigns, cautions, standing } = workup.card;
    for (const { ground } of rows) expect(text).toContain(ground);
    for (const { sign } of stopSigns) expect(text).toContain(sign.toUpperCase());
    for (const { topic, deferral } of cautions) {
      expect(text).toContain(topic.toUpperCase());
      expect(text).toContain(deferral);
    }
    expect(text).toContain(standing);
  });

  it("prints every joint", async () => {
    const { text } = await pdfRead(cardPrint(workup, { units: "field", program }).pdf);
    const depths = workup.card.rows.flatMap(({ feed }) => feed.map(({ depth }) => depth.value / foot));
    expect(depths.length).toBeGreaterThan(10);
    const acts = text.match(/(▼ PUSH|▲ HOLD|● HANG)/g) ?? [];
    expect(acts).toHaveLength(depths.length);
  });
});

describe("setCard", () => {
  it("gives the same bytes for the same card", () => {
    const once = setCard(card, paper);
    const again = setCard(structuredClone(card), paper);
    expect(Buffer.compare(once.pdf, again.pdf)).toBe(0);
    expect(again.svg).toBe(once.svg);
    expect(once.svg).toMatch(/^<svg role="img" [^>]*><title>Driller's card: [^<]+<\/title>/);
  });

  it("holds no time of making", () => {
    expect(Buffer.from(setCard(card, paper).pdf).toString("latin1")).not.toMatch(/\/(CreationDate|ModDate)/);
  });

  it("sets a short card in large type and leaves nothing out", async () => {
    const short = { ...card, rows: [first], warnings: [], stopSigns: card.stopSigns.slice(0, 3), cautions: [] };
    const { step, leftOut, pdf } = setCard({ ...short, rows: [{ ...first, feed: first.feed.slice(0, 4) }] }, paper);
    expect([step, leftOut]).toEqual(["large type", ""]);
    expect((await pdfRead(pdf)).text).not.toContain("Left out");
  });

  it("steps the type down as there is more to say, and says what it left out", async () => {
    const prints = [1, 6, 14].map((count) => setCard(withRows(beds(count, 20)), paper));
    const sizes = prints.map(({ step }) =>
      ["large", "middle", "small", "lesser", "least", "fine", "finest"].indexOf(step.split(" ")[0]),
    );
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    for (const { pdf, leftOut } of prints) if (leftOut) expect((await pdfRead(pdf)).text).toContain(leftOut);
  });

  it("prints all of sixty joints", async () => {
    const { pdf, leftOut } = setCard(withRows(beds(6, 100)), paper);
    const { text, pages } = await pdfRead(pdf);
    expect(pages).toBe(1);
    expect(text.match(/▼ PUSH/g)).toHaveLength(60);
    expect(leftOut).not.toMatch(/joints/);
  });

  it("keeps to a page with two hundred joints, and says how many it left out", async () => {
    const { pdf, leftOut } = setCard(withRows(beds(10, 200)), paper);
    const { text, pages } = await pdfRead(pdf);
    expect(pages).toBe(1);
    const [, left = "0"] = /(\d+) of 200 joints/.exec(leftOut) ?? [];
    expect((text.match(/▼ PUSH/g) ?? []).length + Number(left)).toBe(200);
    expect(text).toContain(`${left} of 200 joints`);
  });

  it("prints all of thirty beds", async () => {
    const { text, pages } = await pdfRead(setCard(withRows(beds(30, 20)), paper).pdf);
    expect(pages).toBe(1);
    for (let k = 1; k <= 30; k++) expect(text).toContain(` bed ${k} `);
    expect(text).not.toContain("THIS CARD SAYS NOTHING");
  });

  it("warns in a box where even the beds do not fit", async () => {
    const { pdf } = setCard(withRows(beds(150, 20)), paper);
    const { text, pages } = await pdfRead(pdf);
    expect(pages).toBe(1);
    const [, depth, more] = /BELOW ([\d,]+) ft THIS CARD SAYS NOTHING: (\d+) more beds do not fit/.exec(text) ?? [];
    expect(Number(depth.replace(",", ""))).toBe((150 - Number(more)) * 20);
  });

  it("says first of all that a bit without ground for it is not to be run", async () => {
    const rows = card.rows.map((row) => ({
      ...row,
      drilled: false,
      feed: [],
      remarks: ["Not with this bit. Use: auger."],
    }));
    const { text } = await pdfRead(setCard(withRows(rows), paper).pdf);
    expect(text).toContain("DO NOT RUN THIS BIT IN THIS HOLE.");
    expect(text).toContain("NOT THIS BIT. Use: auger.");
    expect(text).not.toContain("JOINT BY JOINT");
  });

  it("takes what a person typed as text, never as a part of the layout", async () => {
    const job = '#panic("x") *a* _b_ $c$ <d> @e `f` \\g "h" // i [j] {k}';
    const { text, pages } = await pdfRead(setCard({ ...card, job, warnings: [`${job}: ${job}`] }, paper).pdf);
    expect(pages).toBe(1);
    expect(text).toContain(job);
  });

  it("cuts very long names and lets long words break, inside the page", async () => {
    const long = "Ridge".repeat(100);
    const rows = card.rows.map((row) => ({ ...row, ground: long }));
    const { text, pages } = await pdfRead(setCard(withRows(rows, { job: long, customer: long, bit: long }), paper).pdf);
    expect(pages).toBe(1);
    expect(text).toContain("...");
    expect(text).toContain("HOW TO RUN IT");
  });

  it("prints no pump flow for a hole drilled on air", async () => {
    const { text } = await pdfRead(setCard(card, { ...paper, blownWith: { medium: "air", leastAirFlow: 0.24 } }).pdf);
    expect(text).toContain("Air: at least 509 cfm of free air");
    expect(text).not.toMatch(/gpm|CLEANS|TURN FLOW/);
  });

  it("refuses a link that its code would be too fine for, with length and limit", () => {
    expect(() => setCard(card, paper, `https://example.org/${"x".repeat(200)}`)).toThrow(
      "the text of a QR code must be at most 180 bytes long, got 220",
    );
    expect(setCard(card, paper, "https://example.org/card").svg).not.toBe(setCard(card, paper).svg);
  });
});
