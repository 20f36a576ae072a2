import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Working } from "@bitwright/engine";
import { formatQuantity, parseTraveler, type QuantityKind, type Workup } from "@bitwright/traveler";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { bitwright, processorSeconds, projectFile, temporaryFolder } from "../support/command.ts";
import { inch, poundForce } from "../support/field-units.ts";
import { inMetric } from "../support/in-metric.ts";
import { flat, NOTHING_PRINTED, remarksIn, SHEETS, type WorkedUp, workedUp } from "../support/worked-up.ts";
import { elementsWhere, xmlTree } from "../support/xml-tree.ts";

const folder = temporaryFolder();
afterAll(folder.remove);

const SECONDS_ALLOWED = 2;
/** How far past the rule of thumb the card may send the driller: as coarse as the rule itself (common practice). */
const OVER_RULE = 1.25;
/** Steel, for the buoyancy of the string (common practice; 65.5 ppg). */
const STEEL_DENSITY = 7849;

const examples = readdirSync(projectFile("examples")).filter((name) => name.endsWith(".traveler.json"));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

it("has the three demo travelers", () => {
  expect(examples).toEqual(["house-well.traveler.json", "loop-hole.traveler.json", "measured-bit.traveler.json"]);
});

describe.each(examples)("bitwright work examples/%s", (name) => {
  const traveler = projectFile(`examples/${name}`);
  let field: WorkedUp;
  let metric: WorkedUp;
  let workup: Workup;
  let inquiry: Workup["inquiry"]["inquiry"];

  beforeAll(() => {
    bitwright("check", traveler);
    field = workedUp(traveler, join(folder.path, name, "field"));
    metric = workedUp(traveler, join(folder.path, name, "metric"), "--units", "metric");
    workup = field.workup;
    inquiry = workup.inquiry.inquiry;
  });

  it(`takes under ${SECONDS_ALLOWED} s after a warm-up`, () => {
    // The fastest of a few, and then the time of the processor: the machine that runs the tests does other things besides.
    let seconds = Math.min(field.seconds, metric.seconds);
    for (let tries = 0; seconds > SECONDS_ALLOWED && tries < 6; tries++) {
      seconds = Math.min(seconds, workedUp(traveler, join(folder.path, name, "again")).seconds);
    }
    for (let tries = 0; seconds > SECONDS_ALLOWED && tries < 4; tries++) seconds = processorSeconds("work", traveler);
    console.log(`work ${name}: ${seconds.toFixed(2)} s`);
    expect(seconds).toBeLessThan(SECONDS_ALLOWED);
  });

  it("writes its sheets, says so, and prints nothing that it does not have", () => {
    for (const run of [field, metric]) {
      expect(run.err).toBe("");
      expect(readdirSync(join(folder.path, name, "field")).sort()).toEqual([...SHEETS, "card.pdf"].sort());
      expect(run.out).toContain(`Wrote ${SHEETS.join(", ")}, card.pdf to `);
      for (const text of [run.out, ...Object.values(run.sheets)]) expect(text).not.toMatch(NOTHING_PRINTED);
    }
  });

  it("draws both pictures well formed, with every cutter in them", () => {
    for (const { sheets } of [field, metric]) {
      for (const sheet of ["face.svg", "profile.svg"] as const) {
        const numbers = elementsWhere(xmlTree(sheets[sheet]), ({ attributes }) => attributes.class === "cutter-number")
          .flatMap(({ children }) => children)
          .filter(({ name: tag }) => tag === "text");
        expect(new Set(numbers.map(({ text }) => Number(text))).size).toBe(workup.bit.layout.cutters.length);
      }
    }
  });

  it("lists every cutter in the table, the columns alike and adding up to the bit", () => {
    const [head, ...rows] = field.sheets["cutters.csv"].trimEnd().split("\n");
    expect(rows).toHaveLength(workup.bit.layout.cutters.length);
    // The name of a bed may hold a comma; such a cell stands in quotes.
    const cells = (line: string): readonly string[] => line.match(/"[^"]*"|[^,]+|(?<=,)(?=,|$)/g) ?? [];
    const heads = cells(head);
    for (const row of rows) expect(cells(row)).toHaveLength(heads.length);
    const column = (title: string) => rows.map((row) => Number(cells(row)[heads.indexOf(title)]));
    const deepest = workup.cut.beds.reduce((most, bed) =>
      bed.drilling.advance > most.drilling.advance ? bed : most,
    ).drilling;
    expectClose(sum(column("part of weight [lbf]")) * poundForce, deepest.bit.weight, 1e-3);
    expectClose(sum(column("rock per turn [in³]")) * inch ** 3, sum(deepest.cutters.map(({ volume }) => volume)), 1e-3);
    workup.bit.layout.cutters.forEach(({ radius }, at) => {
      expectClose(column("radius [in]")[at] * inch, radius, 1e-3);
    });
  });

  it("shares weight, torque, power and rock out over cutters so that they add up", () => {
    for (const { drilling, weight, rotarySpeed } of workup.cut.beds) {
      const { bit, cutters, advance, holeRadius } = drilling;
      expectClose(bit.weight, weight, 1e-6);
      expectClose(bit.cuttingWeight + bit.contactWeight, bit.weight, 1e-9);
      expectClose(sum(cutters.map(({ axial }) => axial)), bit.weight, 1e-9);
      expectClose(sum(cutters.map(({ torque }) => torque)), bit.torque, 1e-9);
      expectClose(sum(cutters.map(({ power }) => power)), bit.torque * rotarySpeed, 1e-9);
      expectClose(sum(cutters.map(({ volumeShare }) => volumeShare)), 1, 1e-9);
      // Cutters take the whole hole and nothing twice; a core that no edge sweeps may be left.
      const uncut = workup.bit.review.coverage.uncutRings.map(([from, to]) => Math.PI * (to ** 2 - from ** 2));
      const hole = Math.PI * holeRadius ** 2;
      expectClose(sum(cutters.map(({ volume }) => volume)), (hole - sum(uncut)) * advance, 2e-3);
    }
  });

  it("keeps rate, energies and strengths to their definitions", () => {
    for (const { drilling, rotarySpeed, rate } of workup.cut.beds) {
      const { bit, advance, holeRadius, drillingEnergy, drillingStrength, mechanicalEnergy } = drilling;
      expectClose(drilling.rate, (advance * rotarySpeed) / (2 * Math.PI), 1e-9);
      expectClose(drillingEnergy, (2 * bit.torque) / (holeRadius ** 2 * advance), 1e-9);
      expectClose(drillingStrength, bit.weight / (holeRadius * advance), 1e-9);
      // Energy for each volume: what torque and weight do in one turn over the rock of one turn.
      const hole = Math.PI * holeRadius ** 2;
      expectClose(mechanicalEnergy, (2 * Math.PI * bit.torque + bit.weight * advance) / (hole * advance), 1e-9);
      expectClose(rate.mid, drilling.rate, 1e-6);
      expect(rate.low).toBeLessThanOrEqual(rate.mid);
      expect(rate.mid).toBeLessThanOrEqual(rate.high);
    }
  });

  it("keeps inside what rig, pump and hole can do", () => {
    const { rig, pump } = inquiry;
    const ceiling = workup.flow.circuit?.cleaning.rateCeiling.mid ?? 0;
    for (const { drilling, rate, rotarySpeed, run } of workup.cut.beds) {
      expect(rate.high).toBeLessThanOrEqual(ceiling);
      expect(run.computed.rate).toBeLessThanOrEqual(ceiling);
      expect(drilling.bit.torque).toBeLessThanOrEqual(rig.torque * 1.000001);
      expect(rotarySpeed).toBeLessThanOrEqual(rig.rotarySpeedMax * 1.000001);
      expect(rotarySpeed).toBeGreaterThanOrEqual(rig.rotarySpeedMin);
    }
    expect(workup.flow.circuit?.pumpPressure).toBeLessThanOrEqual(pump.pressureRating);
  });

  it("balances feed, string, top head and drag with the weight wanted at every joint, and reads it on the gauge", () => {
    const { rig, pipe, fluid } = inquiry;
    const joints = workup.string?.joints ?? [];
    expect(joints.length).toBeGreaterThan(5);
    const buoyancy = 1 - fluid.density / STEEL_DENSITY;
    for (const { depth, bed, feedForce, hangingWeight, targetWeight, gaugeReading, mostWeight } of joints) {
      expectClose(feedForce + hangingWeight + rig.topHeadWeight - rig.drag, targetWeight, 1e-9);
      expectClose(hangingWeight, depth * pipe.linearMass * 9.80665 * buoyancy, 1e-3);
      expectClose(gaugeReading ?? 0, rig.feedGaugeZero + Math.abs(feedForce) / (rig.gaugeForceFactor ?? 0), 1e-9);
      expect(feedForce).toBeLessThanOrEqual(rig.pullDown);
      expect(mostWeight).toBeGreaterThanOrEqual(targetWeight);
      const cut = workup.cut.beds.find((one) => one.bed.name === bed);
      expect(targetWeight).toBe(cut?.weight);
      expect(depth).toBeGreaterThan(cut?.bed.top ?? Number.NaN);
      expect(depth).toBeLessThanOrEqual(cut?.bed.bottom ?? Number.NaN);
    }
  });

  it("adds the losses up to the pump, over the whole way down and up", () => {
    const { circuit, flow } = workup.flow;
    if (!circuit) throw new Error("the demo holes are drilled on a liquid");
    const { losses, ports, pumpPressure } = circuit;
    expectClose(sum(losses.map(({ pressureDrop }) => pressureDrop)) + ports.pressureDrop, pumpPressure, 1e-9);
    expectClose(ports.speed * ports.area, flow, 1e-9);
    const depth = inquiry.bitHole.to;
    const along = (...parts: string[]) => sum(losses.filter(({ part }) => parts.includes(part)).map((l) => l.length));
    expectClose(along("annulus"), depth, 1e-9);
    expectClose(along("pipe"), depth, 1e-9);
    expectClose(along("surface gear"), inquiry.pump.surfaceGear, 1e-9);
  });

  it("never sends the driller more than a quarter over the rule of thumb", () => {
    const rule = (1000 * poundForce * inquiry.bitHole.diameter) / inch;
    const rows = workup.card.rows.filter(({ drilled }) => drilled);
    expect(rows.length).toBe(workup.cut.beds.length);
    for (const { weight, practiceWeight, rate } of rows) {
      expectClose(practiceWeight?.value ?? 0, rule, 1e-9);
      expect(weight?.to ?? weight?.value).toBeLessThanOrEqual(OVER_RULE * rule);
      expect(rate?.to).toBeLessThanOrEqual(workup.flow.circuit?.cleaning.rateCeiling.mid ?? 0);
    }
  });

  it("prints on the card the weight, speed and flow of the workup", () => {
    const figure = (kind: QuantityKind, si: number, figures = 3) =>
      formatQuantity(kind, si, "field", { figures }).split(" ")[0];
    const lines = field.sheets["card.txt"].split("\n");
    for (const { bed, weight, rotarySpeed } of workup.cut.beds) {
      // Nobody sets a weight under a thousand pounds to the pound: two figures there.
      const pounds = figure("force", weight, weight < 1000 * poundForce ? 2 : 3);
      const line = lines.find((one) => one.includes(` ${pounds}`) && one.includes(bed.name.slice(0, 15))) ?? "";
      expect(line, bed.name).toContain(` ${figure("rotary speed", rotarySpeed)} `);
      expect(line, bed.name).toContain(` ${figure("flow", workup.flow.flow)} `);
    }
  });

  it("gives every finding a place, a sentence and a source", () => {
    const { findings } = remarksIn(workup);
    expect(workup.findings.length).toBeGreaterThan(0);
    for (const { code, severity, where, message, source, value, limit, unit } of findings) {
      expect(code).toMatch(/^[a-z][a-z.-]+$/);
      expect(["stop", "caution", "note"]).toContain(severity);
      expect(where).not.toBe("");
      expect(message).toMatch(/[.?]$/);
      expect(["read", "recalled", "practice", "derived", "entered"]).toContain(source.kind);
      expect(source.cite.length).toBeGreaterThan(3);
      if (value !== undefined || limit !== undefined) expect(unit, code).toBeTruthy();
    }
    const weights = workup.findings.map(({ severity }) => ["stop", "caution", "note"].indexOf(severity));
    expect(weights).toEqual([...weights].sort((a, b) => a - b));
  });

  it("gives every working its relation, its source, and inputs with units and where they come from", () => {
    const { workings } = remarksIn(workup);
    expect(workings.length).toBeGreaterThan(100);
    for (const { name: what, relation, inputs, value, unit, source } of workings) {
      expect(relation, what).not.toBe("");
      expect(Number.isFinite(value), what).toBe(true);
      expect(unit, what).toBeTruthy();
      expect(source.cite, what).toBeTruthy();
      expect(inputs.length, what).toBeGreaterThan(0);
      for (const input of inputs) {
        expect(input.symbol, what).toBeTruthy();
        expect(input.meaning, what).toBeTruthy();
        expect(Number.isFinite(input.value), `${what}: ${input.meaning}`).toBe(true);
        expect(input.unit, what).toBeTruthy();
        expect(input.from, what).toBeTruthy();
      }
    }
  });

  it("holds a working for the figures that an office reads", () => {
    const { workings } = remarksIn(workup);
    const shown = flat(field.out);
    const expectShown = (start: string, kind: QuantityKind, figures = 3, last = "") => {
      const found = workings.filter((one: Working) => one.name.startsWith(start) && one.name.endsWith(last));
      expect(found.length, start).toBeGreaterThan(0);
      const texts = found.map(({ value }) => formatQuantity(kind, value, "field", { figures }));
      const words = `${start} ${last}: one of ${texts.join(", ")}`;
      expect(
        texts.some((text) => shown.includes(text)),
        words,
      ).toBe(true);
    };
    for (const { bed } of workup.cut.beds) {
      expectShown("weight on bit, ", "force", 3, bed.name);
      expectShown("torque at the bit, ", "torque", 3, bed.name);
      expectShown("advance per revolution, ", "advance", 3, bed.name);
      expectShown("mechanical specific energy, ", "strength", 3, bed.name);
      expectShown("side force as a share of the weight, ", "share", 3, bed.name);
      expectShown("weight on bit by rule of thumb, ", "force", 3, bed.name);
      expectShown("rotary speed by rule of thumb, ", "rotary speed", 3, bed.name);
    }
    for (const { joint, bed, feedForce } of workup.string?.joints ?? []) {
      expectShown(`hanging weight, joint ${joint}`, "force", 3, bed);
      const feed = workings.find((one: Working) => one.name === `feed force, joint ${joint}, ${bed}`);
      expect(feed?.value, `feed at joint ${joint} in ${bed}`).toBe(feedForce);
      expectShown(`feed gauge, joint ${joint}`, "pressure", 3, bed);
    }
    for (const start of ["port pressure drop", "pump pressure", "pressure drop, pipe"]) expectShown(start, "pressure");
    expectShown("port speed", "speed");
    expectShown(`uphole speed, ${workup.flow.circuit?.slowestAnnulus.name}`, "uphole speed");
    // Low and high of a range share the unit behind them.
    for (const start of ["flow asked for cooling", "slip speed, "]) {
      const [{ value }] = workings.filter((one: Working) => one.name.startsWith(start));
      const kind = start.startsWith("flow") ? "flow" : "uphole speed";
      expect(shown).toContain(` ${formatQuantity(kind, value, "field", { figures: 3 }).split(" ")[0]} `);
    }
    expectShown("least depth of the casing shoe", "depth", 4);
  });

  it("says no to the gravel, what to use there, and how deep to case", () => {
    const at = workup.advice.fits.findIndex(({ bed }) => /gravel/.test(bed.name));
    const gravel = workup.advice.fits[at];
    const below = workup.advice.fits[at + 1];
    expect(gravel.verdict).toBe("unfit");
    expect(gravel.insteadUse.length).toBeGreaterThan(1);
    const shown = flat(field.out);
    for (const { tool } of gravel.insteadUse) expect(shown).toContain(tool);
    expect(shown).toContain(`${gravel.bed.name}: unfit.`);
    // The shoe goes some feet into the bed below, which can carry it.
    const { depth = 0, seatBed } = workup.advice.casing;
    expect(depth).toBeGreaterThan(gravel.bed.bottom);
    expect(depth).toBeLessThan(below.bed.bottom);
    expect(seatBed).toBe(below.bed.name);
    expect(inquiry.bitHole.from).toBeGreaterThanOrEqual(depth);
    expect(field.sheets["card.txt"]).toContain(`CASE TO ${formatQuantity("depth", depth, "field")} BEFORE`);
    expect(workup.cut.beds.map(({ bed }) => bed.name)).not.toContain(gravel.bed.name);
  });

  it("lists what it assumed, and nothing that the traveler says", () => {
    const document = JSON.parse(readFileSync(traveler, "utf8"));
    const shown = flat(field.out);
    expect(workup.assumed.length).toBeGreaterThan(0);
    // Prices, on which nothing of this page rests, are counted in one line; check and rank name each.
    const prices = workup.assumed.filter(({ field: path }) => path.startsWith("prices."));
    if (prices.length > 0) expect(shown).toContain(`- prices: ${prices.length} usual prices and times`);
    for (const { field: path, text, why } of workup.assumed) {
      if (!path.startsWith("prices.")) expect(shown).toContain(flat(`- ${path}: ${text}. ${why}`));
      const said = path
        .split(/[.[\]]+/)
        .filter((step) => step !== "")
        .reduce<unknown>((node, step) => (node as Record<string, unknown> | undefined)?.[step], document);
      expect(said, path).toBeUndefined();
    }
  });

  it("lays the same bit whatever units are printed, and prints metric where metric is asked for", () => {
    expect(metric.workup.bit.layout).toEqual(workup.bit.layout);
    expect(metric.workup.cut.beds.map(({ weight }) => weight)).toEqual(workup.cut.beds.map(({ weight }) => weight));
    expect(metric.workup.string?.joints).toEqual(workup.string?.joints);
    // What was assumed is told in the words of the traveler's own lists.
    const [results] = metric.out.split("\nAssumed, because");
    expect(/\d (psi|lbf|ft\/h|ft\/min|gpm|ft-lbf)\b.*/.exec(results)?.[0]).toBeUndefined();
    expect(results).toMatch(/\d kN\b/);
    expect(metric.sheets["card.txt"]).toContain("metric units");
    expect(metric.sheets["card.txt"]).not.toMatch(/\b(psi|lbf|gpm)\b/);
  });

  it("comes to the same job when the traveler is typed in metric", () => {
    const typed = JSON.stringify(inMetric(JSON.parse(readFileSync(traveler, "utf8"))));
    expect(/"\d[\d ./]* (ft|in|lbf|psi|gpm|ppg|lb\/ft)"/.exec(typed)?.[0]).toBeUndefined();
    const file = folder.file(`${name}.metric.json`, typed);
    const again = workedUp(file, join(folder.path, name, "typed"), "--units", "metric").workup;
    expect(again.bit.layout.cutters.length).toBe(workup.bit.layout.cutters.length);
    again.bit.layout.cutters.forEach((cutter, at) => {
      const other = workup.bit.layout.cutters[at];
      for (const part of ["radius", "azimuth", "height", "profileAngle", "backRake", "sideRake"] as const) {
        expect(Math.abs(cutter[part] - other[part]), `cutter ${at + 1} ${part}`).toBeLessThan(1e-6);
      }
    });
    again.cut.beds.forEach((bed, at) => {
      expectClose(bed.weight, workup.cut.beds[at].weight, 1e-4);
      expectClose(bed.drilling.rate, workup.cut.beds[at].drilling.rate, 1e-4);
    });
  });

  it("prints with --json the very text of workup.json, and comes out the same every time", () => {
    const { status, out, err } = bitwright("work", traveler, "--json");
    expect([status, err]).toEqual([0, ""]);
    expect(out === field.sheets["workup.json"]).toBe(true);
    expect(parseTraveler(readFileSync(traveler, "utf8")).ok).toBe(true);
  });
});
