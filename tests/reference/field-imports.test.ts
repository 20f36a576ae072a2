import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { groundSchema } from "../../packages/traveler/src/document/schema/ground.ts";
import {
  bedsFromDrillingRecord,
  bedsFromLithologyTable,
  type DelimitedTable,
  type DrillingRecord,
  drillingRecord,
  type GroundImport,
  intervalOrder,
  readDelimited,
  readLas,
  readLithologyTable,
  reportText,
} from "../../packages/traveler/src/import/index.ts";
import { expectClose } from "../support/close-to.ts";
import { foot, inch, poundForce, psi } from "../support/field-units.ts";

/**
 * Real field files turned into ground. The counts are held against plain scans of the same file, written here without
 * the reader. Files of open data, read where they are at hand:
 * - drilling record of a geothermal research well, one row to the foot (US DOE Geothermal Data Repository);
 * - described intervals of 1,036 water bores.
 */
const shared = (name: string) => fileURLToPath(new URL(`../../../shared/data/${name}`, import.meta.url));
const RECORD = shared("forge-58-32/well_58-32_dual_units.csv");
const BORES = shared("water-bores/act_classified_logs.csv");

whereAtHand(RECORD, "drilling record of a research well", () => {
  const text = readFileSync(RECORD, "utf8");
  const lines = text.trimEnd().split("\n");
  const rows = lines.slice(1).map((line) => line.split(",").map(Number));
  const heads = (lines[0] ?? "").trim().split(",");
  const column = (head: string): number[] => rows.map((row) => row[heads.indexOf(head)] ?? Number.NaN);
  const depth = column("Depth(ft)");
  const rate = column("ROP(1 ft)");
  const weight = column("weight on bit (k-lbs)");
  const speed = column("Rotary Speed (rpm)");
  const flow = column("Flow In (gal/min)");

  const table: DelimitedTable = unrefused(readDelimited(text));
  const record: DrillingRecord = unrefused(drillingRecord(table));
  const fault = (code: string) => record.report.faults.find((one) => one.code === code);
  const middle = (values: number[]) => {
    const sorted = values.slice().sort((a, b) => a - b);
    const half = Math.floor(sorted.length / 2);
    return sorted.length % 2 === 1 ? (sorted[half] ?? 0) : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2;
  };
  const isSpike = (at: number) => {
    const around = rate.slice(Math.max(0, at - 25), at + 26).filter((one) => one > 0);
    return (rate[at] ?? 0) > 0 && (rate[at] ?? 0) > 5 * middle(around);
  };
  const isRepeated = (at: number) => depth.indexOf(depth[at] ?? 0) < at;

  it("reads every row, with the unit of each column", () => {
    expect(rows).toHaveLength(7311);
    expect(table.rows).toHaveLength(7311);
    expect(table.droppedRows).toEqual([]);
    expect(table.separator).toBe(",");
    expect(table.columns).toHaveLength(27);
    const unit = (head: string) => table.columns.find((one) => one.header === head)?.unit;
    expect(unit("weight on bit (k-lbs)")).toBe("k-lbs");
    expect(unit("Flow In(liters/min)")).toBe("liters/min");
    expect(unit("Flow Out %")).toBe("%");
    expect(unit("ROP(1 ft)")).toBeUndefined();
  });

  it("runs from 85 to 7,536 ft in SI", () => {
    expectClose(Math.min(...record.depth), 85.18 * foot, 1e-12);
    expectClose(Math.max(...record.depth), 7536.25 * foot, 1e-12);
    expectClose(record.weight?.[6] ?? 0, 760 * poundForce, 1e-12);
    expectClose(record.pumpPressure?.[0] ?? 0, 463.72 * psi, 1e-12);
  });

  it.each([
    ["depth-runs-backward", 2, () => depth.filter((value, at) => value < (depth[at - 1] ?? 0))],
    ["depth-repeats", 31, () => depth.filter((_, at) => isRepeated(at))],
    ["weight-zero", 198, () => weight.filter((value) => value === 0)],
    ["rotary-speed-zero", 380, () => speed.filter((value) => value <= 0)],
    ["rate-zero", 5, () => rate.filter((value) => value <= 0)],
    ["rate-spike", 7, () => rate.filter((_, at) => isSpike(at))],
    ["flow-zero", 69, () => flow.filter((value) => value <= 0)],
  ])("counts %s: %i rows, as a plain scan does", (code, count, scan) => {
    expect(scan()).toHaveLength(count);
    expect(fault(code)?.rows).toBe(count);
  });

  it("says where the depth goes back", () => {
    const at = depth.findIndex((value, place) => value < (depth[place - 1] ?? 0));
    expect([depth[at - 1], depth[at], depth[at + 1]]).toEqual([5241.16, 5240.15, 5239.14]);
    expect(fault("depth-runs-backward")?.lines).toEqual([at + 2, at + 3]);
  });

  it("finds the largest spike, 2,978 ft/h", () => {
    const at = rate.indexOf(Math.max(...rate));
    expect(Math.round(rate[at] ?? 0)).toBe(2978);
    expect(fault("rate-spike")?.lines).toContain(at + 2);
  });

  it("takes the torque for the pressure it is, and gives no torque", () => {
    expect(record.torque).toBeUndefined();
    expectClose(record.torquePressure?.[0] ?? 0, 8.93 * psi, 1e-12);
    expect(fault("torque-is-pressure")).toMatchObject({ rows: 7311 });
    expect(fault("torque-is-pressure")?.effect).toContain("no specific energy");
  });

  it("says that the rate has no unit", () => {
    expect(fault("rate-unit-assumed")?.effect).toContain("ft/h");
    expect(record.channels.find((one) => one.channel === "rate")).toMatchObject({ unit: "ft/h", unitFrom: "assumed" });
  });

  it("sets no row aside without a fault, and keeps all in the record", () => {
    expect(record.depth).toHaveLength(7311);
    const good = rows.filter(
      (_, at) =>
        (weight[at] ?? 0) > 0 && (speed[at] ?? 0) > 0 && (rate[at] ?? 0) > 0 && !isSpike(at) && !isRepeated(at),
    );
    expect(record.setAside.filter((code) => code === undefined)).toHaveLength(good.length);
    for (const code of new Set(record.setAside)) if (code !== undefined) expect(fault(code)).toBeDefined();
  });

  const started = performance.now();
  const beds: GroundImport = unrefused(
    bedsFromDrillingRecord(record, {
      bitDiameter: 8.75 * inch,
      rocks: [
        { from: 0, phrase: "gravel" },
        { from: 3200 * foot, phrase: "granite" },
      ],
    }),
  );
  const took = performance.now() - started;
  const spans = beds.ground.beds.map((bed) => ({ ...bed, from: parseFloat(bed.top), to: parseFloat(bed.bottom) }));

  it("makes beds without gaps from the surface to the end, gravel above 3,200 ft and granite below", () => {
    expect(spans[0]).toMatchObject({ top: "0 ft", bottom: "85.18 ft", phrase: "gravel" });
    expect(spans.at(-1)).toMatchObject({ bottom: "7536.25 ft", phrase: "granite" });
    expect(spans.slice(1).map((bed) => bed.top)).toEqual(spans.slice(0, -1).map((bed) => bed.bottom));
    expect(spans.map((bed) => bed.phrase)).toEqual(spans.map((bed) => (bed.from < 3200 ? "gravel" : "granite")));
    expect(spans.some((bed) => bed.top === "3200 ft")).toBe(true);
    expect(spans.length).toBeGreaterThan(3);
    expect(spans.length).toBeLessThanOrEqual(13);
    expect(took).toBeLessThan(2000);
  });

  it("is the same every time", () => {
    const options = { bitDiameter: 8.75 * inch, rocks: [], minimumThickness: 15, mostBeds: 20 };
    expect(bedsFromDrillingRecord(record, options)).toEqual(bedsFromDrillingRecord(record, options));
  });

  it("notes beside each bed the median of S = W/(a d), worked here in field units", () => {
    for (const bed of spans.slice(1)) {
      const strengths = rows.flatMap((_, at) => {
        const place = depth[at] ?? 0;
        const inside = place >= bed.from && (place < bed.to || bed.to === 7536.25);
        if (!inside || record.setAside[at] !== undefined) return [];
        // Inches a turn: d = rate/(5 rpm).
        return [((weight[at] ?? 0) * 1000) / (4.375 * ((rate[at] ?? 0) / (5 * (speed[at] ?? 1))))];
      });
      const noted = /strength ([\d,]+) psi \(.* of ([\d,]+) rows\)/.exec(bed.notes ?? "");
      const [, strength = "", count = ""] = noted ?? [];
      expect(Number(count.replace(",", ""))).toBe(strengths.length);
      expectClose(Number(strength.replace(",", "")), middle(strengths), 0.005);
    }
  });

  it("gives a ground section that the traveler takes", () => {
    const read = groundSchema.safeParse(JSON.parse(JSON.stringify(beds.ground)));
    expect(read.success).toBe(true);
  });
});

whereAtHand(BORES, "described intervals of water bores", () => {
  const bytes = new Uint8Array(readFileSync(BORES));
  const table = unrefused(readLithologyTable(bytes, { unit: "m" }));

  it("reads 3,607 intervals of 1,036 bores and leaves none out", () => {
    expect(table.bores.size).toBe(1036);
    expect([...table.bores.values()].reduce((sum, rows) => sum + rows.length, 0)).toBe(3607);
    expect(table.report.faults).toEqual([]);
  });

  it("counts 584 unsorted bores, 177 overlaps and 7 gaps, as measured on the file before", () => {
    const orders = [...table.bores.values()].map(intervalOrder);
    expect(orders.filter((order) => order.unsorted > 0)).toHaveLength(584);
    expect(orders.reduce((sum, order) => sum + order.overlaps, 0)).toBe(177);
    expect(orders.reduce((sum, order) => sum + order.gaps, 0)).toBe(7);
  });

  it("asks for the bore, and for the unit that the heads do not say", () => {
    const noUnit = bedsFromLithologyTable(bytes);
    expect(noUnit.refused && noUnit.reason).toMatch(/feet or metres/);
    const noBore = bedsFromLithologyTable(bytes, { unit: "m" });
    expect(noBore.refused && noBore.reason).toMatch(/1036 bores; say which/);
  });

  it("makes beds of one bore, its gap named and left without a rock", () => {
    const { ground, report } = unrefused(bedsFromLithologyTable(bytes, { unit: "m", bore: "80000001" }));
    expect(ground.beds.map(({ top, bottom }) => [top, bottom])).toEqual([
      ["0 m", "4 m"],
      ["4 m", "34 m"],
      ["34 m", "36 m"],
      ["36 m", "48 m"],
      ["48 m", "60 m"],
    ]);
    expect(ground.beds[3]).toMatchObject({ phrase: "not described" });
    expect(ground.beds[3]?.rock).toBeUndefined();
    expect(report.faults.map((fault) => fault.code)).toEqual(["intervals-gap", "phrase-names-no-rock"]);
    expect(reportText(report).join("\n")).toContain("36 m to 48 m");
  });

  it("makes a whole column of every bore that the traveler takes, from the surface down without gap or overlap", () => {
    for (const [bore, rows] of table.bores) {
      const deepest = Math.max(...rows.map((row) => row.to));
      // One bore at a time from its own rows, so that the whole table is not read a thousand times.
      const own = rows.map((row) => `${row.from}\t${row.to}\t${row.description.replace(/"/g, "'")}`);
      const { ground } = unrefused(bedsFromLithologyTable(`from (m)\tto (m)\tdescription\n${own.join("\n")}\n`));
      expect(ground.beds[0]?.top, bore).toBe("0 m");
      expectClose(parseFloat(ground.beds.at(-1)?.bottom ?? ""), deepest, 1e-9);
      expect(
        ground.beds.slice(1).map((bed) => bed.top),
        bore,
      ).toEqual(ground.beds.slice(0, -1).map((bed) => bed.bottom));
      expect(groundSchema.safeParse(JSON.parse(JSON.stringify(ground))).success, bore).toBe(true);
    }
  });
});

describe("a drilling record in a LAS file (invented)", () => {
  it("goes the same way as a table", () => {
    const rows = Array.from({ length: 60 }, (_, at) => `${50 + at} ${at < 30 ? 90 : 30} 4.5 90`);
    const las = unrefused(
      readLas(
        [
          "~V\nVERS. 2.0 : V\nWRAP. NO : W\n~W\nSTRT.FT 50 : S\nSTOP.FT 109 : S\nSTEP.FT 1 : S\nNULL. -999.25 : N\n",
          "COMP. QUILLBACK DRILLING : C\n~C\nDEPT.FT : D\nROP.FT/HR : R\nWOB.KLBF : W\nRPM.RPM : N\n~A\n",
          `${rows.join("\n")}\n`,
        ].join(""),
      ),
    );
    const record = unrefused(drillingRecord(las));
    const rocks = [{ from: 0, phrase: "shale" }];
    const { ground } = unrefused(bedsFromDrillingRecord(record, { bitDiameter: 6.125 * inch, rocks }));
    expect(ground.beds.map(({ top, bottom }) => [top, bottom])).toEqual([
      ["0 ft", "50 ft"],
      ["50 ft", "80 ft"],
      ["80 ft", "109 ft"],
    ]);
    expect(groundSchema.safeParse(ground).success).toBe(true);
  });
});

/** Tests that read a shared file; one skipped test that says so where it is not at hand. */
function whereAtHand(path: string, name: string, tests: () => void): void {
  if (existsSync(path)) describe(name, tests);
  else it.skip(`${name}: skipped, ../shared/data is not here`, () => {});
}

/** What was read; a refusal fails the test with its reason. */
function unrefused<R extends { refused: boolean }>(result: R): Exclude<R, { refused: true }> {
  if (result.refused) throw new Error(JSON.stringify(result));
  return result as Exclude<R, { refused: true }>;
}
