import { readFileSync } from "node:fs";
import { sameChoices } from "@bitwright/engine";
import { type ChoiceStudy, choiceStudy, parseTraveler, type Workup, workUp } from "@bitwright/traveler";
import { beforeAll, describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { projectFile } from "../../../../tests/support/command.ts";
import { NOTHING_PRINTED } from "../../../../tests/support/worked-up.ts";
import { elementsWhere, xmlTree } from "../../../../tests/support/xml-tree.ts";
import { choiceSheets } from "./choice-sheets.ts";
import { choiceText } from "./choice-text.ts";

const example = JSON.parse(readFileSync(projectFile("examples/house-well.traveler.json"), "utf8"));

function worked(document: unknown): Workup {
  const read = parseTraveler(document);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return workUp(read);
}

const field = { units: "field", program: "Bitwright 0.1.0" } as const;
let workup: Workup;
let study: ChoiceStudy;
beforeAll(() => {
  workup = worked(example);
  const limits = { cutter: ["1308", "1608"], wings: [4, 5], body: ["steel"] as const };
  study = choiceStudy(workup, { limits }) ?? expect.fail("nothing is drilled");
}, 60_000);
const sheet = (name: string) =>
  choiceSheets(workup, study, field).find((one) => one.name === name)?.text ?? expect.fail(`no ${name}`);

describe("choiceSheets", () => {
  it("draws every candidate once, rings the first and marks the pick of the rules", () => {
    const root = xmlTree(sheet("choice.svg"));
    const classed = (name: string) => elementsWhere(root, ({ attributes }) => attributes.class === name);
    const { ranked } = study.ranking;
    expect(classed("candidate")).toHaveLength(ranked.length - 1);
    expect(classed("candidate best")).toHaveLength(1);
    expect(classed("rule")).toHaveLength(1);
    expect(classed("cost best")).toHaveLength(1);
    expect(classed("cost rule")).toHaveLength(1);
    const words = elementsWhere(root, ({ name }) => name === "text").map(({ text }) => text);
    expect(words.filter((text) => /^\d+ {2}\d{4}, \d wings/.test(text)).length).toBeGreaterThanOrEqual(10);
    for (const text of words) expect(text).not.toMatch(/NaN|undefined/);
  });

  it("writes the words of the rules over no number, however close the others stand", () => {
    const { ranked } = study.ranking;
    const at = ranked.findIndex(({ candidate }) => sameChoices(candidate.choices, study.byRule.choices));
    const { figures } = ranked[at].candidate;
    const crowded = ranked.map((one, k) => {
      const off = k - at;
      const costPerLength = { ...figures.costPerLength, mid: figures.costPerLength.mid * (1 + 0.004 * (off % 2)) };
      const meanRate = figures.meanRate * (1 + (Math.abs(off) < 6 ? 0.006 : 0.02) * off);
      return {
        ...one,
        candidate: { ...one.candidate, figures: { ...one.candidate.figures, costPerLength, meanRate } },
      };
    });
    const among: ChoiceStudy = {
      ...study,
      byRule: crowded[at].candidate,
      ranking: { ...study.ranking, ranked: crowded },
    };
    const drawing = choiceSheets(workup, among, field).find(({ name }) => name === "choice.svg")?.text ?? "";
    const texts = elementsWhere(xmlTree(drawing), ({ name }) => name === "text");
    const words = texts.find(({ text, attributes }) => text === "rules of thumb" && attributes["text-anchor"]);
    const numbers = texts.filter(({ text, attributes }) => /^([1-9]|10)$/.test(text) && attributes["stroke-width"]);
    expect(numbers).toHaveLength(10);
    for (const number of numbers) {
      const across = Math.abs(Number(number.attributes.x) - Number(words?.attributes.x));
      const down = Math.abs(Number(number.attributes.y) - Number(words?.attributes.y));
      expect(Math.max(across / 12, down / 3)).toBeGreaterThanOrEqual(1);
    }
  });

  it("lists every candidate, the cheapest first", () => {
    const rows = sheet("candidates.csv").trimEnd().split("\n").slice(1);
    expect(rows).toHaveLength(study.ranking.ranked.length + study.ranking.excluded.length);
    const costs = rows.slice(0, study.ranking.ranked.length).map((row) => Number(row.split(",")[6]));
    expect([...costs].sort((a, b) => a - b)).toEqual(costs);
  });

  it("writes the first as a specification that, typed into the traveler, drills and lives as it was ranked", () => {
    const bit = JSON.parse(sheet("best-bit.json"));
    const again = worked({ ...example, bit });
    const { figures } = study.ranking.ranked[0].candidate;
    expectClose(again.life.life?.footage ?? 0, figures.footage.mid, 1e-6);
    const hole = again.cut.beds.reduce((sum, { bed }) => sum + bed.bottom - bed.top, 0);
    const time = again.cut.beds.reduce((sum, { bed, rate }) => sum + (bed.bottom - bed.top) / rate.mid, 0);
    expectClose(hole / time, figures.freshRate.mid, 1e-6);
    expect(again.bit.layout.cutters).toHaveLength(figures.cutters);
  });
});

describe("choiceText", () => {
  it("tells the first, each rule beside it, the ends of the band and the prices, in either units", () => {
    for (const units of ["field", "metric"] as const) {
      const text = choiceText(workup, study, { units, currency: "USD" });
      expect(text).not.toMatch(NOTHING_PRINTED);
      expect(text).toMatch(/^Cheapest: \d{4}, \d wings/);
      for (const rule of ["cutter size", "wings", "back rake", "bevel", "body"])
        expect(text).toContain(`\n- ${rule}: `);
      expect(text).toMatch(/If bits wear ten times as fast as taken: /);
      expect(text).toMatch(/Prices not given, taken as usual in US dollars: rig 350 \/h/);
      expect(text).toContain(units === "field" ? "USD/ft" : "USD/m");
    }
  });

  it("says that the job is in another currency than the usual prices", () => {
    const abroad = worked({ ...example, job: { ...example.job, currency: "EUR" } });
    expect(choiceText(abroad, study, { units: "metric", currency: "EUR" })).toMatch(/give every\s+price/);
  });
});
