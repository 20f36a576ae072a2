import { flowStudy, parseTraveler, workUp } from "@bitwright/traveler";
import { describe, expect, it } from "vitest";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { elementsWhere, xmlTree } from "../../../../tests/support/xml-tree.ts";
import { flowSheets } from "./index.ts";

function sheetsFor(pump: object, pumps?: number) {
  const traveler = soundTraveler();
  const read = parseTraveler({ ...traveler, inquiry: { ...traveler.inquiry, pump } });
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  const workup = workUp(read);
  const study = flowStudy(workup, pumps === undefined ? {} : { pumps });
  if (!study) throw new Error("a hole on mud has a circuit");
  const sheets = flowSheets(workup, study, { units: "field", program: "Bitwright 0.0.0" });
  const svg = (name: string) => xmlTree(sheets.find((sheet) => sheet.name === name)?.text ?? "");
  return { study, losses: svg("losses.svg"), pump: svg("pump.svg") };
}
const byClass = (root: ReturnType<typeof xmlTree>, name: string) =>
  elementsWhere(root, ({ attributes }) => attributes.class === name);

describe("the sheet of losses", () => {
  const { study, losses } = sheetsFor({ flow: "150 gpm", pressureRating: "250 psi" }, 2);
  const bars = byClass(losses, "loss").map(
    (group) => elementsWhere(group, ({ name }) => name === "rect")[0].attributes,
  );
  const each = 1 + study.present.circuit.losses.length + 1;

  it("has the pump and every part, now and changed, each bar as long as its loss", () => {
    expect(bars).toHaveLength(2 * each);
    const now = bars.slice(0, each).map(({ width }) => Number(width));
    const { circuit } = study.present;
    expect(now[1] / now[0]).toBeCloseTo(circuit.losses[0].pressureDrop / circuit.pumpPressure, 2);
    // The parts end to end are the pump.
    expect(now.slice(1).reduce((sum, width) => sum + width, 0) / now[0]).toBeCloseTo(1, 1);
  });

  it("draws both to one scale", () => {
    const [now, changed] = [bars[0], bars[each]].map(({ width }) => Number(width));
    const pressures = [study.present, study.changed].map((one) => one?.circuit.pumpPressure ?? Number.NaN);
    expect(changed / now).toBeCloseTo(pressures[1] / pressures[0], 2);
  });
});

describe("the sheet of pump and circuit", () => {
  it("marks where they meet", () => {
    expect(byClass(sheetsFor({ flow: "150 gpm", pressureRating: "250 psi" }, 2).pump, "operating-point")).toHaveLength(
      2,
    );
    const curve = [
      { flow: "0 gpm", pressure: "60 psi" },
      { flow: "300 gpm", pressure: "20 psi" },
    ];
    const { study, pump } = sheetsFor({ curve });
    expect(study.present.heldBy).toBe("pump curve");
    expect(byClass(pump, "operating-point")).toHaveLength(1);
  });

  it("marks nothing where nothing moves", () => {
    // A yield point of 8 lbf/100 ft² holds some 10 psi in this hole before anything flows.
    const { study, pump } = sheetsFor({ flow: "150 gpm", pressureRating: "2 psi" });
    expect(study.present).toMatchObject({ flow: 0, heldBy: "nothing moves" });
    expect(byClass(pump, "operating-point")).toEqual([]);
    expect(study.findings.map(({ code }) => code)).toContain("flow.pump-short");
  });
});
