import { choicesByRule } from "@bitwright/engine";
import {
  bandsSheets,
  choiceSheets,
  choiceText,
  depthSheets,
  flowSheets,
  lifeSheets,
  mapSheets,
  stabilitySheets,
} from "@bitwright/shop";
import {
  bandsStudy,
  choiceStudy,
  depthStudy,
  flowStudy,
  lifeBands,
  mapStudy,
  parseTraveler,
  stabilityStudy,
  type Workup,
  workUp,
} from "@bitwright/traveler";
import { describe, expect, it } from "vitest";
import { ODD_TRAVELERS, type OddTraveler } from "../support/odd-travelers.ts";
import { NOTHING_PRINTED } from "../support/worked-up.ts";
import { xmlTree } from "../support/xml-tree.ts";

function workedUp(name: OddTraveler): Workup {
  const read = parseTraveler(JSON.stringify(ODD_TRAVELERS[name]));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return workUp(read);
}

// What every job has to keep to that a longer look at it is taken of; the looks are short ones.
describe.each(Object.keys(ODD_TRAVELERS) as OddTraveler[])("a longer look at %s", (name) => {
  it("comes to sheets that hold together, whatever the job", () => {
    const workup = workedUp(name);
    const map = mapStudy(workup);
    const stability = stabilityStudy(workup, { speeds: 2 });
    const bands = bandsStudy(workup, { samples: 3 });
    const options = { units: "field", program: "Bitwright" } as const;
    const sheets = [
      ...mapSheets(workup, map, options),
      ...stabilitySheets(workup, stability, options),
      ...depthSheets(workup, depthStudy(workup), options),
      ...bandsSheets(workup, bands, options),
      ...lifeSheets(workup, workup.life, options, lifeBands(workup, { samples: 2, holes: 2 })),
    ];
    const flow = flowStudy(workup, { pumps: 2 });
    expect(flow === undefined).toBe(workup.flow.circuit === undefined);
    if (flow) sheets.push(...flowSheets(workup, flow, options));
    // As few bits as there can be: one of each rake.
    const { cutter, wings, chamfer } = choicesByRule(workup.advice.bit);
    const choice = choiceStudy(workup, {
      limits: { cutter: [cutter], wings: [wings], chamfer: [chamfer], body: ["steel"] },
    });
    expect(choice === undefined).toBe(workup.cut.beds.length === 0);
    if (choice) {
      sheets.push(...choiceSheets(workup, choice, options));
      sheets.push({ name: "rank", text: choiceText(workup, choice, { units: "metric", currency: "USD" }) });
    }
    for (const { name: sheet, text } of sheets) {
      if (sheet.endsWith(".svg")) xmlTree(text);
      expect(text, sheet).not.toMatch(NOTHING_PRINTED);
    }
    const drilled = workup.cut.beds.length;
    for (const { beds } of [map, stability, bands]) expect(beds).toHaveLength(drilled);
    for (const { map: drawn, run, rulePoint, rulePasses } of map.beds) {
      // The run of the card lies inside every limit and on the map.
      expect(run.weight).toBeLessThanOrEqual(drawn.mostWeight);
      for (const { points } of drawn.lines) for (const { weight } of points) expect(weight).toBeGreaterThanOrEqual(0);
      if (!rulePoint) expect(rulePasses).toEqual([]);
    }
  });
});

it("says of clay that the bit would bury under the rule of thumb, and of rock that it would not", () => {
  const codes = (name: OddTraveler) =>
    mapStudy(workedUp(name)).beds.flatMap(({ findings }) => findings.map(({ code }) => code));
  expect(codes("only clay")).toContain("rule-of-thumb-buries");
  expect(codes("minimal")).not.toContain("rule-of-thumb-buries");
});
