import { describe, expect, it } from "vitest";
import { foot, inch } from "../../../../tests/support/field-units.ts";
import { readDelimited } from "./delimited.ts";
import { bedsFromDrillingRecord, type DrillingBedsOptions } from "./drilling-beds.ts";
import { drillingRecord } from "./drilling-record.ts";
import type { GroundImport } from "./ground-section.ts";

/** An invented hole: 60 ft of soft ground, 50 ft of ground three times as hard, a fixed ripple in the rate. */
function hole(soft: number, hard: number): string {
  const rows = Array.from({ length: 110 }, (_, at) => {
    const rate = (at < 60 ? soft : hard) * (1 + 0.05 * Math.sin(at * at));
    return `${20 + at},${rate.toFixed(2)},5,90`;
  });
  return `Depth (ft),ROP (ft/h),WOB (klbf),RPM\n${rows.join("\n")}\n`;
}

function bedsOf(text: string, options: Partial<DrillingBedsOptions> = {}): GroundImport {
  const table = readDelimited(text);
  if (table.refused) throw new Error(table.reason);
  const record = drillingRecord(table);
  if (record.refused) throw new Error(record.reason);
  const beds = bedsFromDrillingRecord(record, { bitDiameter: 6 * inch, rocks: [], ...options });
  if (beds.refused) throw new Error(beds.reason);
  return beds;
}

describe("bedsFromDrillingRecord", () => {
  it("parts the hole where it drills harder, in the file's own unit", () => {
    const { ground, report } = bedsOf(hole(90, 30), { rocks: [{ from: 0, phrase: "shale" }] });
    expect(ground.beds.map(({ top, bottom, phrase }) => [top, bottom, phrase])).toEqual([
      ["0 ft", "20 ft", "shale"],
      ["20 ft", "80 ft", "shale"],
      ["80 ft", "129 ft", "shale"],
    ]);
    // S = W/(a d), d[in/rev] = ROP/(5 rpm): 5000/(3 × 0.2) = 8,330 psi where 90 ft/h, three times that where 30 ft/h.
    const { notes: soft = "" } = ground.beds[1] ?? {};
    const { notes: hard = "" } = ground.beds[2] ?? {};
    const psiIn = (note: string) => Number(/strength ([\d,]+) psi/.exec(note)?.[1]?.replace(",", ""));
    expect(Math.abs(psiIn(soft) / 8333 - 1)).toBeLessThan(0.02);
    expect(Math.abs(psiIn(hard) / 25000 - 1)).toBeLessThan(0.02);
    expect(soft).toContain("is not the rock's strength");
    expect(ground.beds.every((bed) => bed.strength === undefined)).toBe(true);
    expect(report.faults).toEqual(
      [
        expect.objectContaining({ code: "rotarySpeed-dead" }),
        expect.objectContaining({ code: "weight-dead" }),
      ].reverse(),
    );
  });

  it("parts it too where the user names another rock, at the user's own depth", () => {
    const { ground } = bedsOf(hole(60, 60), {
      rocks: [
        { from: 0, phrase: "clay" },
        { from: 50.5 * foot, phrase: "limestone" },
      ],
    });
    expect(ground.beds.map(({ top, phrase }) => [top, phrase])).toEqual([
      ["0 ft", "clay"],
      ["20 ft", "clay"],
      ["50.5 ft", "limestone"],
    ]);
  });

  it("leaves a bed without a rock where none was named, and reports it with words that name none", () => {
    const { ground, report } = bedsOf(hole(90, 30), { rocks: [{ from: 80 * foot, phrase: "the usual" }] });
    expect(ground.beds.map((bed) => bed.phrase)).toEqual([undefined, "the usual"]);
    expect(report.faults.map((fault) => fault.code)).toEqual(
      expect.arrayContaining(["bed-without-rock", "phrase-names-no-rock"]),
    );
  });

  it("gives a strength only on request, and never one beyond any rock", () => {
    const asked = bedsOf(hole(90, 30), { useAsStrength: true });
    expect(asked.ground.beds[0]?.strength?.mid).toMatch(/^8,\d{3} psi$/);
    expect(asked.report.faults.map((fault) => fault.code)).toContain("apparent-strength-used");
    const beyond = bedsOf(hole(5, 2), { useAsStrength: true });
    expect(beyond.ground.beds.map((bed) => bed.strength)).toEqual([undefined, undefined]);
    expect(beyond.report.faults.map((fault) => fault.code)).toContain("apparent-strength-beyond-rock");
  });

  it("makes no more beds than asked and none thinner than asked", () => {
    expect(bedsOf(hole(90, 30), { mostBeds: 1 }).ground.beds).toHaveLength(1);
    expect(bedsOf(hole(90, 30), { minimumThickness: 60 * foot }).ground.beds).toHaveLength(1);
  });

  it("refuses a record that gives no drilling strength, and throws on a bit without a diameter", () => {
    const table = readDelimited("Depth (ft),ROP (ft/h)\n1,2\n2,2\n");
    if (table.refused) throw new Error(table.reason);
    const record = drillingRecord(table);
    if (record.refused) throw new Error(record.reason);
    const beds = bedsFromDrillingRecord(record, { bitDiameter: 0.15, rocks: [] });
    expect(beds.refused && beds.reason).toMatch(/needs depth, rate, weight on bit and rotary speed/);
    expect(() => bedsFromDrillingRecord(record, { bitDiameter: 0, rocks: [] })).toThrow(/bitDiameter/);
  });
});
