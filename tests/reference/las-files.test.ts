import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { type LasFile, lasCurve, lasItem, readLas } from "../../packages/traveler/src/import/index.ts";
import { isLasIndexMnemonic, isWholeNumberOfSteps } from "../../packages/traveler/src/import/las-checks.ts";
import { lasLine } from "../../packages/traveler/src/import/las-line.ts";

/**
 * The log format of the Canadian Well Logging Society. The line, step and index checks restate its LAS 2.0 text of
 * January 2014 (INDEX: February 2017); the files are a public collection of odd ones, read where they are at hand.
 */

describe("header line: first dot, first space after it, last colon (CWLS LAS 2.0)", () => {
  it.each([
    [" STRT.M  635.0 : START", "STRT", "M", "635.0", "START"],
    [
      "TIML.hh:mm 23:15 23-JAN-2001:   Time Logger At Bottom",
      "TIML",
      "hh:mm",
      "23:15 23-JAN-2001",
      "Time Logger At Bottom",
    ],
    ["DEPT.M:1 DEPTH", "DEPT", "M", "", "1 DEPTH"],
    ["UWI . 1001: X", "UWI", "", "1001", "X"],
    ["COMP.   A: B CO.  : COMPANY", "COMP", "", "A: B CO.", "COMPANY"],
    // The last colon takes a part of the description with it: read by the rule, and named as a fault of the file.
    ["WELL.  Lot 7 : well name: first", "WELL", "", "Lot 7 : well name", "first"],
  ])("%s", (text, mnemonic, unit, data, description) => {
    expect(lasLine(text)).toEqual({ mnemonic, unit, data, description });
  });

  it.each([
    ["STRT M 635 : START", "no dot"],
    ["STEP.M 0.1524", "no colon after dot"],
  ])("%s: %s", (text, error) => {
    expect(lasLine(text)).toMatchObject({ error });
  });
});

describe("index", () => {
  it("counts steps by decimal arithmetic: 637 is no whole number of 0.1524, 1660 is one of -0.125", () => {
    expect(["1670", "1660"].map((limit) => isWholeNumberOfSteps(limit, "-0.125"))).toEqual([true, true]);
    expect(["635", "637"].map((limit) => isWholeNumberOfSteps(limit, "0.1524")).every(Boolean)).toBe(false);
    // 609.6 / 0.1524 leaves a remainder in binary.
    expect(609.6 % 0.1524).not.toBe(0);
    expect(isWholeNumberOfSteps("609.6", "0.1524")).toBe(true);
  });

  it("knows the index names of the standard", () => {
    const names = ["DEPT", "DEPTH", "TIME", "INDEX", "ETIM"];
    expect(names.map(isLasIndexMnemonic)).toEqual([true, true, true, true, false]);
  });
});

/** What a file of the collection is: read with these faults by code and count, or refused with words like these. */
type Expected =
  | { readonly version: string; readonly curves: number; readonly rows: number; readonly faults: readonly string[] }
  | { readonly refused: RegExp; readonly line?: number };

const read = (version: string, curves: number, rows: number, ...faults: string[]): Expected => ({
  version,
  curves,
  rows,
  faults,
});

/** The usual sample states a stop that its rows do not reach. */
const STOP = "stop-differs";

const EXPECTED: Readonly<Record<string, Expected>> = {
  // Plain files.
  "1.2_sample.las": read("1.2", 8, 3),
  "1.2_sample_inf_api_leading_zero.las": read("1.2", 8, 3, STOP),
  "1.2_sample_minimal.las": read("1.2", 8, 2, STOP),
  "2.0_sample_2.0.las": read("2.0", 8, 3),
  "2.0_sample_2.0_empty_other_section.las": read("2.0", 8, 3, STOP),
  "2.0_sample_2.0_inf_uwi.las": read("2.0", 8, 3, STOP),
  "2.0_sample_2.0_minimal.las": read("2.0", 8, 2, STOP),
  "2.0_sample_2.0_wrong_stop_value.las": read("2.0", 8, 3, STOP),
  "mnemonic_good.las": read("1.2", 8, 3, STOP),
  "multi_channel.las": read("2.0", 15, 5, "well-items-missing"),
  "multi_channel_out_of_order.las": read("2.0", 15, 5, "well-items-missing"),
  "sample_null.las": read("1.2", 8, 3, STOP),
  "sample_str_in_data.las": read("1.2", 4, 3),
  "sample_write_sect_widths_20_narrow.las": read("2.0", 8, 3),
  "single_step_20.las": read("2.0", 8, 1),
  "autodepthindex_FEET.las": read("1.2", 2, 101),
  "autodepthindex_M.las": read("1.2", 2, 101),
  "autodepthindex_M_lower.las": read("1.2", 2, 101),
  "6038187_v1.2_short.las": read("2.0", 9, 121, "start-differs", STOP),
  "standards_1.2_sample_curve_api.las": read("1.2", 8, 3, STOP),
  "standards_2.0_sample_2.0_based.las": read("2.0", 3, 6, "index-mnemonic", STOP),

  // Wrapped rows.
  "1001178549.las": read("2.0", 27, 5),
  "standards_1.2_sample_wrapped.las": read("1.2", 36, 5, STOP),
  "standards_2.0_sample_2.0_wrapped.las": read("2.0", 36, 2, STOP),
  "missing_wrap.las": read("1.2", 8, 3, "wrap-not-stated", STOP),

  // Letters and line ends.
  "2.0_sample_2.0_universal_newline.las": read("2.0", 8, 3, STOP),
  "encodings_cp1252.las": read("1.2", 8, 3, "letters-beyond-ascii", STOP),
  "encodings_utf16be.las": read("1.2", 8, 3, "letters-beyond-ascii 6", STOP),
  "encodings_utf16le.las": read("1.2", 8, 3, "letters-beyond-ascii 6", STOP),
  "encodings_utf8.las": read("1.2", 8, 3, "letters-beyond-ascii 6", STOP),

  // Header faults.
  "colon_pick_end.las": read("2.0", 8, 3, STOP, "colon-before-the-last"),
  "duplicate_step.las": read("1.2", 8, 3, "well-item-twice-STEP", STOP),
  "mnemonic_duplicate.las": read("1.2", 8, 3, "mnemonic-repeats", STOP),
  "mnemonic_missing.las": read("1.2", 8, 3, "curve-without-name", STOP),
  "non-standard-header-sections.las": read("1.2", 8, 3, STOP),
  "sample_2.1.las": read("2.1", 8, 3, "unknown-version"),
  "sample_bracketed_units.las": read("1.2", 8, 3, STOP),
  "sample_issue105_a.las": read("1.2", 5, 3, "mnemonic-repeats 2"),
  "sample_issue105_c.las": read("1.2", 9, 3, "mnemonic-repeats", STOP),
  "sparse_curves.las": read("1.2", 8, 3, "header-line-without-colon 8", STOP),
  "alog.las": read(
    "1.2",
    9,
    24,
    "header-line-without-dot 22",
    "header-line-without-colon",
    "well-items-missing",
    "index-repeats 23",
  ),

  // Data faults.
  "comma_decimal_mark.las": read("1.2", 8, 3, "comma-decimal", STOP),
  "excess_curves.las": read("2.0", 4, 2, "fewer-columns-than-curves"),
  "index_null.las": read("2.0", 4, 3, "start-differs", STOP),
  "lasio_issue_271.las": read(
    "2.0",
    3,
    5,
    "delimiter-before-3",
    "well-items-missing",
    "header-line-without-colon",
    "text-curve-ZONE",
    "index-mnemonic",
    STOP,
  ),
  "missing_null.las": read("1.2", 8, 3, "null-missing", "common-null-taken 2", STOP),
  "sample_write_sect_widths.las": read("1.2", 8, 3, "null-missing", STOP),
  "null_policy_(null).las": read("1.2", 8, 3, "word-for-null", STOP),
  "null_policy_9999.las": read("1.2", 8, 3, STOP),
  "null_policy_dashes.las": read("1.2", 8, 3, "word-for-null 2", STOP),
  "null_policy_runon.las": read("1.2", 7, 5, "numbers-run-together 3", "index-units-differ 3", "start-differs", STOP),

  // Version 3. The names of the first group tell what another reader made of them; by the grammar they are sound.
  "3.0_Curve-Param_Error_#10_(SS).LAS": phaseLog(36, 145, "letters-beyond-ascii 2", "blank-line-in-header 5"),
  "3.0_Curve-Param_Error_#14_(SS).LAS": phaseLog(36, 145, "letters-beyond-ascii 2", "blank-line-in-header 5"),
  "3.0_Curve-Param_Error_#16_(SS).LAS": phaseLog(35, 145, "blank-line-in-header 5"),
  "3.0_Curve-Param_Error_#6_(SS).LAS": phaseLog(36, 129, "letters-beyond-ascii 2", "blank-line-in-header 5"),
  "3.0_Curve-Param_Error_#12_(SS).LAS": read(
    "3.0",
    57,
    113,
    "blank-line-in-header 6",
    "well-item-no-number-STRT",
    "well-item-no-number-STOP",
    "blank-line-in-data 2",
    "index-units-differ",
  ),
  "3.0_Curve-Param_Error_#2_(MS).LAS": read(
    "3.0",
    4,
    10,
    "letters-beyond-ascii 2",
    "blank-line-in-header 10",
    "index-mnemonic",
    "index-units-differ 2",
    "not-whole-steps 2",
    "start-differs",
    STOP,
    "index-repeats 9",
  ),
  "3.0_Curve-Param_Error_#4_(MS).LAS": read(
    "3.0",
    4,
    8,
    "colon-before-the-last 6",
    "blank-line-in-header 12",
    "well-items-missing",
    "index-mnemonic",
    "index-units-differ 2",
    "start-differs",
    STOP,
    "index-repeats 7",
  ),
  "3.0_Curve-Param_Error_#8_(SS).las": read(
    "3.0",
    10,
    201,
    "blank-line-in-header 4",
    "well-items-missing",
    "not-whole-steps",
    STOP,
  ),
  "3.0_Curve-Param_Unknown_#1(SS).las": read(
    "3.0",
    16,
    101,
    "letters-beyond-ascii 2",
    "colon-before-the-last 2",
    "well-item-no-number-STOP",
    "index-mnemonic",
    "index-runs-back 30",
  ),
  "3.0_Good_File_(SS).las": read("3.0", 6, 161, STOP),
  "3.0_Reshape_Error_#2_(SS).las": read("3.0", 23, 93, "text-curve-Recording_date", STOP),
  "3.0_0-d_Array_#2_(MS).las": read("3.0", 5, 44, "set-repeats 6", "index-repeats"),
  "3.0_las-30a-revised-2010.las": manySets("letters-beyond-ascii 2"),
  "3.0_sample_3.0_tab_dlm.las": manySets(),
  "standards_3.0_sample_las3.0_spec.las": read(
    "3.0",
    15,
    3,
    "blank-line-in-header 14",
    "set-repeats",
    "text-curve-DDES",
    "mnemonic-repeats",
    "colon-before-the-last 5",
    STOP,
  ),

  // Refused.
  "LICENSE.txt": { refused: /no LAS file/ },
  "barebones.las": { refused: /no version section/, line: 2 },
  "blank_line.las": { refused: /no data rows/ },
  "data_characters_numeric.las": { refused: /index TIME is text/, line: 41 },
  "issue83.las": { refused: /curves defined are 6 .* 4 columns/, line: 27 },
};

function phaseLog(curves: number, rows: number, ...faults: string[]): Expected {
  const start = ["well-item-no-number-STRT", "well-item-no-number-STOP", "index-units-differ"];
  return read("3.0", curves, rows, ...faults, ...start);
}

function manySets(...faults: string[]): Expected {
  return read("3.0", 15, 3, ...faults, "blank-line-in-header 14", "set-repeats", "text-curve-DDES", "mnemonic-repeats");
}

const folder = fileURLToPath(new URL("../../../shared/data/las/", import.meta.url));
const atHand = existsSync(folder);
const bytesOf = (name: string) => new Uint8Array(readFileSync(folder + name));

function fileOf(name: string): LasFile {
  const las = readLas(bytesOf(name));
  if (las.refused) throw new Error(`${name} was refused: ${las.reason}`);
  return las;
}

const readingsOf = (las: LasFile, name: string): number[] => [...(lasCurve(las.curves, name)?.values ?? [])];

describe.skipIf(!atHand)("open collection of log files (skipped: ../shared/data/las is not here)", () => {
  it.each(Object.entries(EXPECTED))("%s", (name, expected) => {
    const las = readLas(bytesOf(name));
    if ("refused" in expected) {
      expect(las.refused && las.reason).toMatch(expected.refused);
      expect(las.refused && las.line).toBe(expected.line);
      return;
    }
    if (las.refused) throw new Error(las.reason);
    const faults = las.report.faults.map((fault) => (fault.rows > 1 ? `${fault.code} ${fault.rows}` : fault.code));
    expect({ version: las.version, curves: las.curves.length, rows: las.curves[0]?.values.length, faults }).toEqual(
      expected,
    );
  });

  it("has no file that the table leaves out", () => {
    expect(readdirSync(folder).filter((name) => !(name in EXPECTED))).toEqual([]);
  });

  it("counts as many rows as a plain count of the lines below the data title, in every unwrapped file of one log", () => {
    const counted = Object.keys(EXPECTED).filter((name) => {
      const las = readLas(bytesOf(name));
      if (las.refused || las.wrapped || las.sets.length > 1 || las.encoding.startsWith("UTF-16")) return false;
      const lines = readFileSync(folder + name, "latin1").split(/\r\n?|\n/);
      const title = lines.findIndex((line) => /^~(A|.*\|)/i.test(line));
      const rows = lines.slice(title + 1).filter((line) => line.trim() !== "").length;
      expect(las.curves[0]?.values.length, name).toBe(rows);
      return true;
    });
    expect(counted.length).toBeGreaterThan(40);
  });

  it("keeps a depth that equals the null value, and takes the null elsewhere", () => {
    const las = fileOf("index_null.las");
    expect(readingsOf(las, "DEPT")).toEqual([999, 999.25, 999.5]);
    expect(readingsOf(las, "DT")).toEqual([Number.NaN, 123.45, 123.45]);
    expect(readingsOf(las, "NPHI")).toEqual([110.2, 110.2, Number.NaN]);
  });

  it("takes only the stated null: 9999 between 9998 and 10000 is a reading", () => {
    const las = fileOf("null_policy_9999.las");
    expect(readingsOf(las, "DT")).toEqual([9998, 9999, 10000]);
    expect(readingsOf(las, "ILM")).toEqual([110.2, 110.2, 110.2]);
    expect(readingsOf(las, "SFLA")).toEqual([123.45, 123.45, Number.NaN]);
  });

  it("reads a dash alone as no reading, and before a number as its sign", () => {
    const las = fileOf("null_policy_dashes.las");
    expect(readingsOf(las, "RHOB")).toEqual([Number.NaN, -2550, Number.NaN]);
  });

  it("parts numbers that run together at the column edges", () => {
    const las = fileOf("null_policy_runon.las");
    expect(readingsOf(las, "C04")).toEqual([9.207, 7.02, 7.33, 7.345, 7.682]);
    expect(readingsOf(las, "C05")).toEqual([4648.011, 101130.188, -19508.961, 116238.453, 4182.679]);
  });

  it("reads a comma as the decimal mark where it stands in one number", () => {
    expect(readingsOf(fileOf("comma_decimal_mark.las"), "SFLU")).toEqual([123.45, 123.42, 123.45]);
  });

  it("takes the names of the data title where fewer columns stand than curves are defined", () => {
    const las = fileOf("excess_curves.las");
    expect(las.curves.map((curve) => curve.name)).toEqual(["DEPTH", "TVD", "VS", "Gamma"]);
    expect(readingsOf(las, "Gamma")).toEqual([57.011, 57.011]);
  });

  it("reads the same text from four encodings", () => {
    const names = ["encodings_utf8.las", "encodings_utf16le.las", "encodings_utf16be.las"].map(fileOf);
    for (const las of names) expect(las.curves[2]?.name).toBe("ºᶟᵌᴬń");
    expect(fileOf("encodings_cp1252.las").encoding).toBe("code page 1252");
  });

  it("puts values behind the colon in version 1.2 and before it in 2.0", () => {
    expect(lasItem(fileOf("1.2_sample.las").well, "FLD")).toMatchObject({ data: "EDAM", description: "FIELD" });
    expect(lasItem(fileOf("2.0_sample_2.0.las").well, "FLD")).toMatchObject({ data: "WILDCAT", description: "FIELD" });
    expect(lasItem(fileOf("1.2_sample.las").well, "STRT")).toMatchObject({ data: "1670.000000", unit: "M" });
  });

  it("puts wrapped rows together", () => {
    const las = fileOf("1001178549.las");
    expect(readingsOf(las, "DEPT")).toEqual([1783.5, 1783.75, 1784, 1784.25, 1784.5]);
    expect(readingsOf(las, "ACTC")).toEqual([55.1, 54.3555, 54.4444, 55.3111, 56.3222]);
  });

  it.each(["3.0_las-30a-revised-2010.las", "3.0_sample_3.0_tab_dlm.las", "standards_3.0_sample_las3.0_spec.las"])(
    "reads the drilling set beside the log in %s",
    (name) => {
      const las = fileOf(name);
      const drilling = las.sets.find((set) => set.name === "drilling");
      expect(drilling?.curves.map((curve) => curve.values[0])).toEqual([
        322.02, 1.02, 0, 24, 3, 59, 111, 1199, 179, 879, 8.73, 39,
      ]);
      expect(las.curves.at(8)?.values[0]).toBe(1.45e12);
      expect(lasCurve(las.curves, "CDES")?.texts?.[0]).toBe("DOLOMITE WI/VUGS");
    },
  );

  it("keeps words in quotes together", () => {
    expect(lasCurve(fileOf("lasio_issue_271.las").curves, "ZONE")?.texts).toEqual([
      "pick_alpha",
      "pick_beta",
      "pick gamma",
      "pick delta",
      "pick_epsilon",
    ]);
  });
});
