import { readdirSync, readFileSync } from "node:fs";
import { sheetsOf, summaryText } from "@bitwright/shop";
import { parseTraveler, type UnitSystem, type Workup, workUp } from "@bitwright/traveler";
import { describe, it } from "vitest";
import { projectFile } from "../support/command.ts";
import { degree, mm, rpm } from "../support/field-units.ts";
import { expectGoldenText } from "./golden-file.ts";

const PROGRAM = "Bitwright 0.0.0";
const SYSTEMS: readonly UnitSystem[] = ["field", "metric"];
const ENDING = ".traveler.json";

const examples = readdirSync(projectFile("examples"))
  .filter((name) => name.endsWith(ENDING))
  .map((name) => name.slice(0, -ENDING.length));

function workedUp(name: string): Workup {
  const read = parseTraveler(readFileSync(projectFile(`examples/${name}${ENDING}`), "utf8"));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return workUp(read);
}

const rounded = (value: number) => Number(value.toFixed(3));

/** The heart of a job in few numbers: where each cutter sits, and how each bed is run. One line for each. */
function heartOf({ bit, cut }: Workup): string {
  const places = bit.layout.cutters.map(
    ({ wing, radius, azimuth, height, profileAngle, backRake, sideRake, faceDiameter }) => ({
      wing,
      radiusMm: rounded(radius / mm),
      azimuthDeg: rounded(azimuth / degree),
      heightMm: rounded(height / mm),
      profileAngleDeg: rounded(profileAngle / degree),
      backRakeDeg: rounded(backRake / degree),
      sideRakeDeg: rounded(sideRake / degree),
      faceMm: rounded(faceDiameter / mm),
    }),
  );
  const runs = cut.beds.map(({ bed, weight, rotarySpeed, rate, drilling, run }) => ({
    bed: bed.name,
    weightKn: rounded(weight / 1000),
    rotaryRpm: rounded(rotarySpeed / rpm),
    rateMetresPerHour: [rate.low, rate.mid, rate.high].map((one) => rounded(one * 3600)),
    torqueNm: rounded(drilling.bit.torque),
    sideShare: rounded(drilling.bit.lateralShare),
    binds: run.computed.binds,
  }));
  const block = (rows: readonly object[]) => rows.map((row) => `    ${JSON.stringify(row)}`).join(",\n");
  return `{\n  "cutters": [\n${block(places)}\n  ],\n  "runs": [\n${block(runs)}\n  ]\n}\n`;
}

describe.each(examples)("the job of %s as last read", (name) => {
  const workup = workedUp(name);

  it.each(SYSTEMS)("summary and card in %s units", (units) => {
    expectGoldenText(`${name}.summary.${units}.txt`, `${summaryText(workup, { units, program: PROGRAM })}\n`);
    const card = sheetsOf(workup, { units, program: PROGRAM }).find((sheet) => sheet.name === "card.txt");
    expectGoldenText(`${name}.card.${units}.txt`, card?.text ?? "");
  });

  it("places of the cutters and running points", () => {
    expectGoldenText(`${name}.heart.json`, heartOf(workup));
  });
});
