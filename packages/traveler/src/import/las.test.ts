import { describe, expect, it } from "vitest";
import { readLas } from "./las.ts";
import { type LasFile, lasCurve } from "./las-file.ts";

const WELL = `~Well
STRT.FT 100.0 : START
STOP.FT 101.0 : STOP
STEP.FT 0.5 : STEP
NULL. -999.25 : NULL
COMP. QUILLBACK DRILLING : COMPANY
WELL. LOOP 4 : WELL
FLD . NONE : FIELD
LOC . NORTH LOT : LOCATION
STAT. NONE : STATE
SRVC. NONE : SERVICE
DATE. 2026 03 01 : DATE
API . 1 : NUMBER
`;
const VERSION = "~Version\nVERS. 2.0 : VERSION\nWRAP. NO : WRAP\n";
const CURVES = "~Curve\nDEPT.FT : DEPTH\nROP.FT/HR : RATE\nWOB.KLBF : WEIGHT\n";
const DATA = "~A\n100.0 40 2\n100.5 -999.25 2.5\n101.0 35 3\n";

function fileOf(text: string): LasFile {
  const las = readLas(text);
  if (las.refused) throw new Error(las.reason);
  return las;
}

const codesOf = (text: string) => readLas(text).report.faults.map((fault) => fault.code);

describe("readLas", () => {
  it("reads a sound file without a fault", () => {
    const las = fileOf(VERSION + WELL + CURVES + DATA);
    expect(las.report.faults).toEqual([]);
    expect(las).toMatchObject({ version: "2.0", wrapped: false, delimiter: "space", nullValue: -999.25 });
    expect([...(lasCurve(las.curves, "rop")?.values ?? [])]).toEqual([40, Number.NaN, 35]);
    expect(las.sets[0]?.rowLines).toEqual([22, 23, 24]);
  });

  it("reads the same from any line end", () => {
    const plain = fileOf(VERSION + WELL + CURVES + DATA);
    const text = VERSION + WELL + CURVES + DATA;
    for (const end of ["\r\n", "\r"]) expect(fileOf(text.replaceAll("\n", end)).curves).toEqual(plain.curves);
  });

  it.each([
    ["an unknown version", VERSION.replace("2.0", "4.0") + WELL + CURVES + DATA, /version is "4.0"/, 2],
    ["no version at all", `~Version\nWRAP. NO : WRAP\n${WELL}${CURVES}${DATA}`, /does not say the version/, 1],
    ["no well section", VERSION + CURVES + DATA, /no well/, undefined],
    ["no curves", VERSION + WELL + DATA, /no curve/, undefined],
    ["no data", VERSION + WELL + CURVES, /no data/, undefined],
    ["two logs in one file", VERSION + WELL + CURVES + DATA + DATA, /more than one data/, 25],
    ["a row too short", VERSION + WELL + CURVES + DATA.replace("100.5 -999.25 2.5", "100.5 40"), /2 values/, 23],
    ["a wrapped row too long", `${VERSION.replace("NO", "YES") + WELL + CURVES}~A\n100\n1 2 3\n`, /holds more/, 23],
    ["an unknown delimiter", `${VERSION.replace("2.0", "3.0")}DLM. DASH : D\n${WELL}${CURVES}${DATA}`, /DASH/, 4],
  ])("refuses %s, with the line", (_, text, reason, line) => {
    const las = readLas(text);
    expect(las.refused && las.reason).toMatch(reason);
    expect(las.refused && las.line).toBe(line);
  });

  it("leaves a cut last row out and says so", () => {
    const las = fileOf(`${VERSION}${WELL}${CURVES}${DATA}101.5 3`);
    expect(las.curves[0]?.values.length).toBe(3);
    expect(las.report.faults).toMatchObject([{ code: "last-row-short", rows: 1, lines: [25] }]);
  });

  it("parts numbers that run together before a minus sign", () => {
    const las = fileOf(VERSION + WELL + CURVES + DATA.replace("100.5 -999.25 2.5", "100.5-999.25 2.5"));
    expect(las.curves[0]?.values[1]).toBe(100.5);
    expect(las.curves[1]?.values[1]).toBeNaN();
    expect(las.report.faults).toMatchObject([{ code: "numbers-run-together", lines: [23] }]);
  });

  it("names words among numbers by their curve and line", () => {
    const las = fileOf(VERSION + WELL + CURVES + DATA.replace("101.0 35", "101.0 fast"));
    expect(las.report.faults).toMatchObject([{ code: "text-among-numbers-ROP", rows: 1, lines: [24] }]);
  });

  it("holds what the header says of the index against the rows", () => {
    const text = (well: string, data: string) => codesOf(VERSION + well + CURVES + data);
    expect(text(WELL.replace("STRT.FT 100.0", "STRT.FT 99.5"), DATA)).toEqual(["start-differs"]);
    expect(text(WELL.replace("STEP.FT 0.5", "STEP.FT 0.3"), DATA)).toEqual(["not-whole-steps", "step-differs"]);
    expect(text(WELL.replace("STEP.FT 0.5", "STEP.FT 0"), DATA)).toEqual([]);
    expect(text(WELL.replace("STEP.FT", "STEP.M"), DATA)).toEqual(["index-units-differ"]);
    expect(text(WELL, DATA.replace("100.5 ", "100.0 "))).toEqual(["index-repeats", "step-differs"]);
    expect(text(WELL, DATA.replace("100.5 ", "102.0 "))).toEqual(["step-differs", "index-runs-back"]);
  });

  it("reads the sets of version 3 with commas, quotes and empty cells", () => {
    const las = fileOf(
      [
        "~Version\nVERS. 3.0 : V\nWRAP. NO : W\nDLM. COMMA : D\n",
        WELL,
        "~Tops_Definition\nTOP.FT : Top {F}\nNAME. : Name {S} | TOPS[1]\n",
        '~Tops_Data | Tops_Definition\n100.25,"Lime, grey"\n',
        "~Log_Definition\nDEPT.FT : Depth {F}\nGR.GAPI : Gamma {F}\n~Log_Data | Log_Definition\n100.0,\n100.5,55\n101,60\n",
      ].join(""),
    );
    expect(las.sets.map((set) => set.name)).toEqual(["tops", "log"]);
    expect(las.sets[0]?.curves[1]).toMatchObject({ texts: ["Lime, grey"], format: "S", description: "Name" });
    expect([...(lasCurve(las.curves, "GR")?.values ?? [])]).toEqual([Number.NaN, 55, 60]);
  });
});
