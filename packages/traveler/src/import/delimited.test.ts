import { describe, expect, it } from "vitest";
import { type DelimitedTable, readDelimited } from "./delimited.ts";

function tableOf(text: string, options = {}): DelimitedTable {
  const table = readDelimited(text, options);
  if (table.refused) throw new Error(table.reason);
  return table;
}

describe("readDelimited", () => {
  it("finds separator, heads and units", () => {
    const table = tableOf("Depth(ft),ROP (ft/h),Remarks\n10,50,clay\n11,45,clay\n");
    expect(table.separator).toBe(",");
    expect(table.columns).toEqual([
      { header: "Depth(ft)", name: "Depth", unit: "ft" },
      { header: "ROP (ft/h)", name: "ROP", unit: "ft/h" },
      { header: "Remarks", name: "Remarks" },
    ]);
    expect(table.rows).toEqual([
      ["10", "50", "clay"],
      ["11", "45", "clay"],
    ]);
    expect(table.rowLines).toEqual([2, 3]);
    expect(table.droppedRows).toEqual([]);
  });

  it.each([
    ["semicolon", "depth (m);rate (m/h)\n10,5;12,25\n11,5;13\n", ";", ","],
    ["tab", "depth (m)\trate (m/h)\n10.5\t12.25\n", "\t", "."],
    ["upright stroke", "depth (m)|rate (m/h)\n10.5|12.25\n", "|", "."],
  ])("tells the decimal mark of cells parted by %s", (_, text, separator, decimalMark) => {
    expect(tableOf(text)).toMatchObject({ separator, decimalMark });
  });

  it("keeps the line of each row over quoted line ends, and marks inside quotes", () => {
    const table = tableOf('from,to,description\r\n0,4,"clay,\r\nsandy ""fat"""\r\n4,9,gravel\r\n');
    expect(table.rows[0]?.[2]).toBe('clay,\nsandy "fat"');
    expect(table.rowLines).toEqual([2, 4]);
  });

  it("names every row it leaves out, with its line and why", () => {
    const table = tableOf("# made by a recorder\na,b\n1,2\n\n3\n4,5,6\n7,8,\n");
    expect(table.rows).toEqual([
      ["1", "2"],
      ["7", "8"],
    ]);
    expect(table.droppedRows).toEqual([
      { line: 4, why: "blank" },
      { line: 5, why: "1 cell where the head names 2" },
      { line: 6, why: "3 cells where the head names 2" },
    ]);
    const counted = table.report.faults.reduce((sum, fault) => sum + fault.rows, 0);
    expect(counted).toBe(table.droppedRows.length);
    expect(table.report.lines).toContain("2 rows read, 3 left out.");
  });

  it("passes a title and takes units from the line below the heads", () => {
    const table = tableOf("Well 7\nDepth,Rate,Weight\nft,ft/h,klbf\n10,50,4\n");
    expect(table.headerLine).toBe(2);
    expect(table.columns.map((column) => column.unit)).toEqual(["ft", "ft/h", "klbf"]);
    expect(table.rows).toEqual([["10", "50", "4"]]);
    expect(table.notes).toEqual(["Units were taken from line 3.", "1 line above the heads not used."]);
  });

  it("numbers a head that stands twice", () => {
    const table = tableOf("a,a,b\n1,2,3\n");
    expect(table.columns.map((column) => column.header)).toEqual(["a", "a (2)", "b"]);
  });

  it("does as it is told", () => {
    const table = tableOf("x;y\nalso;heads\n1;2\n", { separator: ";", headerLine: 2 });
    expect(table.columns.map((column) => column.name)).toEqual(["also", "heads"]);
  });

  it.each([
    ["", /empty/],
    ["depth\n1\n2\n", /no separator/],
    ["1,2\n3,4\n", /no row of column heads/],
    ["a,b\n", /no rows/],
  ])("refuses %j", (text, reason) => {
    const table = readDelimited(text);
    expect(table.refused && table.reason).toMatch(reason);
  });
});
