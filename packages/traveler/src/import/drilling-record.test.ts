import { describe, expect, it } from "vitest";
import { foot, footPound, gpm, inch, poundForce, psi, rpm } from "../../../../tests/support/field-units.ts";
import { readDelimited } from "./delimited.ts";
import { type DrillingRecord, type DrillingRecordOptions, drillingRecord } from "./drilling-record.ts";
import { readLas } from "./las.ts";

function recordOf(text: string, options: DrillingRecordOptions = {}): DrillingRecord {
  const table = readDelimited(text);
  if (table.refused) throw new Error(table.reason);
  const record = drillingRecord(table, options);
  if (record.refused) throw new Error(record.reason);
  return record;
}

function refusalOf(text: string, options: DrillingRecordOptions = {}): string {
  const table = readDelimited(text);
  if (table.refused) throw new Error(table.reason);
  const record = drillingRecord(table, options);
  if (!record.refused) throw new Error("the record was read");
  return record.reason;
}

const fault = (record: DrillingRecord, code: string) => record.report.faults.find((one) => one.code === code);

const HEAD = "Depth(ft),ROP (ft/h),WOB (klbf),Rotary Speed (rpm),Torque (ft-lbf),Flow In (gal/min),Pump Press (psi)";
const ROW = "100,60,6,90,500,150,200";

describe("drillingRecord", () => {
  it("reads channels by their names, in SI", () => {
    const record = recordOf(`${HEAD}\n${ROW}\n101,60,6,90,500,150,200\n`);
    const first = (values: Float64Array | undefined) => values?.[0] ?? Number.NaN;
    expect(first(record.depth)).toBeCloseTo(100 * foot, 10);
    expect(first(record.rate)).toBeCloseTo(foot / 60, 12);
    expect(first(record.weight)).toBeCloseTo(6000 * poundForce, 6);
    expect(first(record.rotarySpeed)).toBeCloseTo(90 * rpm, 12);
    expect(first(record.torque)).toBeCloseTo(500 * footPound, 8);
    expect(first(record.flow)).toBeCloseTo(150 * gpm, 12);
    expect(first(record.pumpPressure)).toBeCloseTo(200 * psi, 6);
    expect(record.report.faults).toEqual([]);
    expect(record.setAside).toEqual([undefined, undefined]);
  });

  it("takes the weight of a mass on a weight channel", () => {
    const record = recordOf("Depth (m),WOB (kg)\n10,1000\n11,1000\n");
    expect(record.weight?.[0]).toBeCloseTo(9806.65, 6);
  });

  it("prefers the column in a unit of the right kind and of the depth's own system, and names the others", () => {
    const record = recordOf("Depth(ft),WOB (kg),WOB (k-lbs),ROP(1 m),ROP(1 ft)\n10,900,2,3,10\n");
    const taken = Object.fromEntries(record.channels.map(({ channel, header }) => [channel, header]));
    expect(taken).toEqual({ depth: "Depth(ft)", weight: "WOB (k-lbs)", rate: "ROP(1 ft)" });
    expect(record.report.lines.join("\n")).toContain('also in "WOB (kg)", not used');
  });

  it("assumes feet an hour with feet and says so; the user's word wins", () => {
    const text = "Depth(ft),ROP\n10,60\n";
    const assumed = recordOf(text);
    expect(assumed.rate?.[0]).toBeCloseTo(foot / 60, 12);
    expect(fault(assumed, "rate-unit-assumed")).toMatchObject({ rows: 1, effect: expect.stringContaining("ft/h") });
    const said = recordOf(text, { units: { rate: "m/h" } });
    expect(said.rate?.[0]).toBeCloseTo(60 / 3600, 12);
    expect(fault(said, "rate-unit-assumed")).toBeUndefined();
  });

  it("uses no weight without a unit", () => {
    const record = recordOf("Depth(ft),WOB\n10,6\n");
    expect(record.weight).toBeUndefined();
    expect(fault(record, "weight-unit-missing")?.rows).toBe(1);
    expect(record.setAside).toEqual(["rate-missing"]);
  });

  it("takes columns the user names", () => {
    const text = "TVD (ft),Way (ft),Push (lbf)\n9,10,2000\n";
    expect(refusalOf(text)).toMatch(/no depth column was found; the columns are TVD \(ft\), Way \(ft\), Push/);
    const record = recordOf(text, { columns: { depth: "way", weight: "Push (lbf)" } });
    expect(record.depth[0]).toBeCloseTo(10 * foot, 10);
    expect(record.weight?.[0]).toBeCloseTo(2000 * poundForce, 6);
    expect(refusalOf(text, { columns: { depth: "Depth" } })).toMatch(/no column "Depth" for depth/);
    expect(refusalOf("Depth,ROP\n1,2\n")).toMatch(/say whether it is feet or metres/);
    expect(refusalOf("Depth (ft),WOB\n1,2\n", { units: { weight: "psi" } })).toMatch(/"psi" is no unit of weight/);
  });

  it("counts rows that are no good for a strength, each with its line, and drops none", () => {
    const rows = [
      "100,60,6,90,500,150,200",
      "101,60,0,90,500,150,200",
      "102,60,6,0,500,150,200",
      "103,0,6,90,500,150,200",
      "102.5,60,6,90,500,150,200",
      "104,60,6,90,500,0,200",
      "104,60,6,90,500,150,200",
      "105,,6,90,500,150,200",
      "106,x,6,90,500,150,200",
      "107,-999.25,6,90,500,150,200",
      "120,60,-1,90,500,150,200",
    ];
    const record = recordOf(`${HEAD}\n${rows.join("\n")}\n`);
    expect(record.depth.length).toBe(rows.length);
    expect(record.setAside).toEqual([
      undefined,
      "weight-zero",
      "rotary-speed-zero",
      "rate-zero",
      undefined,
      undefined,
      "depth-repeats",
      "rate-missing",
      "rate-missing",
      "rate-missing",
      "weight-negative",
    ]);
    const counts = Object.fromEntries(
      record.report.faults.map(({ code, rows: count, lines }) => [code, [count, lines]]),
    );
    expect(counts).toEqual({
      "rate-no-number": [1, [10]],
      "rate-null": [1, [11]],
      "depth-runs-backward": [1, [6]],
      "depth-repeats": [1, [8]],
      "depth-jumps": [1, [12]],
      "weight-zero": [1, [3]],
      "weight-negative": [1, [12]],
      "rotary-speed-zero": [1, [4]],
      "rate-zero": [1, [5]],
      "rate-missing": [3, [9, 10, 11]],
      "flow-zero": [1, [7]],
    });
  });

  it("calls a rate over five times the median around it a spike", () => {
    const rows = Array.from(
      { length: 60 },
      (_, at) => `${100 + at},${at === 30 ? 301 : at === 40 ? 299 : 60},6,90,1,1,1`,
    );
    const record = recordOf(`${HEAD}\n${rows.join("\n")}\n`);
    expect(fault(record, "rate-spike")).toMatchObject({ rows: 1, lines: [32] });
  });

  it("names a dead channel and a stuck one", () => {
    const rows = Array.from({ length: 80 }, (_, at) => `${100 + at},${60 + at},6,${at < 55 ? 90 : 90 + at},1,1,1`);
    const record = recordOf(`${HEAD}\n${rows.join("\n")}\n`);
    expect(fault(record, "weight-dead")?.rows).toBe(80);
    expect(fault(record, "rotarySpeed-stuck")?.rows).toBe(55);
    expect(fault(record, "rate-dead")).toBeUndefined();
  });

  it("names mixed systems of units, and two columns of one channel that do not agree", () => {
    const mixed = recordOf("Depth(m),ROP (ft/h)\n10,60\n");
    expect(fault(mixed, "units-mixed")).toBeDefined();
    const twice = recordOf("Depth(ft),Depth(m)\n1000,304.8\n2000,700\n");
    expect(fault(twice, "depth-columns-differ")).toMatchObject({ rows: 1, lines: [3] });
  });
});

describe("torque of a record", () => {
  const text = (unit: string, torque: number) =>
    `Depth(ft),WOB (lbf),Torque (${unit})\n10,6000,${torque}\n11,6000,100\n12,0,100\n`;

  it("keeps a pressure as a pressure, without a torque", () => {
    const record = recordOf(text("psi", 900));
    expect(record.torque).toBeUndefined();
    expect(record.torquePressure?.[0]).toBeCloseTo(900 * psi, 6);
    expect(fault(record, "torque-is-pressure")).toMatchObject({
      rows: 3,
      effect: expect.stringContaining("no specific energy"),
    });
  });

  it("turns a pressure into torque with the user's factor", () => {
    const torquePerPressure = (2 * footPound) / psi;
    const record = recordOf(text("psi", 900), { torquePerPressure });
    expect(record.torque?.[0]).toBeCloseTo(1800 * footPound, 6);
  });

  it("uses no torque in amperes or without a unit", () => {
    for (const head of ["TQ (AMPS)", "TQ"]) {
      const record = recordOf(`Depth(ft),${head}\n10,100\n`);
      expect(record.torque).toBeUndefined();
      expect(fault(record, "torque-unit")?.rows).toBe(1);
    }
  });

  // Friction number 3T/(2 W a): 6,000 lbf on a 6 in bit reads 2 at 2 × 2 × 6000 × 0.25 ft / 3 = 2,000 ft-lbf.
  it("takes out a torque that reads a friction number over 2, with the rows that can be held against a weight", () => {
    const limit = recordOf(text("ft-lbf", 1990), { bitDiameter: 6 * inch });
    expect(fault(limit, "torque-not-of-the-bit")).toBeUndefined();
    const over = recordOf(text("ft-lbf", 2010), { bitDiameter: 6 * inch });
    expect(fault(over, "torque-not-of-the-bit")).toMatchObject({ rows: 1, lines: [2] });
    expect(over.torque?.[0]).toBeNaN();
    expect(over.torque?.[1]).toBeCloseTo(100 * footPound, 8);
  });

  it("leaves the whole channel out where most rows read over 2", () => {
    const most = "Depth(ft),WOB (lbf),Torque (ft-lbf)\n10,6000,9000\n11,6000,9000\n12,6000,100\n";
    const record = recordOf(most, { bitDiameter: 6 * inch });
    expect(record.torque).toBeUndefined();
    expect(fault(record, "torque-not-of-the-bit")?.rows).toBe(2);
  });
});

describe("drillingRecord from a LAS file", () => {
  it("takes the drilling set of version 3, in its units", () => {
    const las = readLas(
      [
        "~Version\nVERS. 3.0 : V\nWRAP. NO : W\nDLM. COMMA : D\n~Well\nNULL. -999.25 : N\n",
        "~Log_Definition\nDEPT.M : D\nGR.GAPI : G\n~Log_Data | Log_Definition\n1,2\n",
        "~Drilling_Definition\nDEPT.ft : D\nROP.ft/hr : R\nWOB.klb : W\nRPM.RPM : N\nGPM.gal/min : F\n",
        "~Drilling_Data | Drilling_Definition\n322,24,3,59,879\n323,37.5,2,69,861\n",
      ].join(""),
    );
    if (las.refused) throw new Error(las.reason);
    const record = drillingRecord(las);
    if (record.refused) throw new Error(record.reason);
    expect(record.depth[1]).toBeCloseTo(323 * foot, 10);
    expect(record.weight?.[0]).toBeCloseTo(3000 * poundForce, 6);
    expect(record.flow?.[0]).toBeCloseTo(879 * gpm, 12);
    expect(record.rotarySpeed?.[1]).toBeCloseTo(69 * rpm, 12);
  });
});
