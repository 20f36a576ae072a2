import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { GroundImport } from "./ground-section.ts";
import { bedsFromLithologyTable, type LithologyBedsOptions } from "./lithology-beds.ts";

function bedsOf(text: string, options: LithologyBedsOptions = {}): GroundImport {
  const beds = bedsFromLithologyTable(text, options);
  if (beds.refused) throw new Error(beds.reason);
  return beds;
}

const refusalOf = (text: string, options: LithologyBedsOptions = {}) => {
  const beds = bedsFromLithologyTable(text, options);
  return beds.refused ? beds.reason : "";
};

const column = ({ ground }: GroundImport) => ground.beds.map(({ top, bottom, phrase }) => `${top} ${bottom} ${phrase}`);

describe("bedsFromLithologyTable", () => {
  it("reads intervals whatever the heads are called, and sorts them", () => {
    const texts = [
      "from (ft),to (ft),description\n12,40,grey shale\n0,12,clay\n",
      "TopDepth_ft;BottomDepth_ft;Lithology\n12;40;grey shale\n0;12;clay\n",
      "Depth From,Depth To,Driller's log\nft,ft,\n12,40,grey shale\n0,12,clay\n",
    ];
    for (const text of texts) {
      const beds = bedsOf(text);
      expect(column(beds)).toEqual(["0 ft 12 ft clay", "12 ft 40 ft grey shale"]);
      expect(beds.report.faults).toMatchObject([{ code: "intervals-unsorted", rows: 1 }]);
    }
  });

  it("asks for the unit where the heads do not say it, and for the bore where there are several", () => {
    const text = "BoreID,FromDepth,ToDepth,Description\nA,0,5,clay\nB,0,9,sand\n";
    expect(refusalOf(text)).toMatch(/feet or metres/);
    expect(refusalOf(text, { unit: "m" })).toMatch(/2 bores; say which: A, B/);
    expect(refusalOf(text, { unit: "m", bore: "C" })).toMatch(/no bore "C"/);
    expect(refusalOf(text, { unit: "psi" })).toMatch(/"psi" is no unit of depth/);
    expect(refusalOf("a,b\n1,2\n", { unit: "m" })).toMatch(/no column was found for the top/);
    expect(column(bedsOf(text, { unit: "m", bore: "B" }))).toEqual(["0 m 9 m sand"]);
  });

  it("makes neighbours of the same words one bed", () => {
    const beds = bedsOf("from,to,description\n0,5,Brown Clay\n5,9,brown  clay\n9,20,limestone\n", { unit: "ft" });
    expect(column(beds)).toEqual(["0 ft 9 ft Brown Clay", "9 ft 20 ft limestone"]);
  });

  it("leaves a gap as a bed that needs a rock", () => {
    const beds = bedsOf("from,to,description\n2,5,clay\n8,9,sand\n", { unit: "m" });
    expect(column(beds)).toEqual(["0 m 2 m not described", "2 m 5 m clay", "5 m 8 m not described", "8 m 9 m sand"]);
    expect(beds.report.faults).toMatchObject([
      { code: "intervals-gap", rows: 2 },
      { code: "phrase-names-no-rock", rows: 2 },
    ]);
  });

  it("settles an overlap: plain words first, then the one that begins deeper, then the first", () => {
    const plain = bedsOf("from,to,description\n0,10,as before\n0,10,limestone\n", { unit: "m" });
    expect(column(plain)).toEqual(["0 m 10 m limestone"]);
    expect(plain.ground.beds[0]?.notes).toContain('"as before"');
    const deeper = bedsOf("from,to,description\n0,10,shale\n6,12,limestone\n", { unit: "m" });
    expect(column(deeper)).toEqual(["0 m 6 m shale", "6 m 12 m limestone"]);
    expect(deeper.report.faults).toMatchObject([{ code: "intervals-overlap", rows: 1 }]);
    const first = bedsOf("from,to,description\n0,10,brown clay\n0,10,grey clay\n", { unit: "m" });
    expect(column(first)).toEqual(["0 m 10 m brown clay"]);
  });

  it("joins silenced words to the phrase where they name a hazard", () => {
    const beds = bedsOf("from,to,description\n0,10,clay\n0,10,with gravel\n0,10,light brown\n", { unit: "m" });
    expect(column(beds)).toEqual(["0 m 10 m clay with gravel"]);
    expect(beds.ground.beds[0]?.notes).toBe('Also described as: "light brown".');
  });

  it("names rows it cannot place, with their lines", () => {
    const text = "from,to,description\n0,5,clay\nx,7,sand\n9,6,sand\n5,5,sand\n5,9,\n";
    const beds = bedsOf(text, { unit: "m" });
    expect(beds.report.faults).toMatchObject([
      { code: "interval-without-depth", rows: 1, lines: [3] },
      { code: "interval-turned", rows: 1, lines: [4] },
      { code: "interval-without-thickness", rows: 1, lines: [5] },
      { code: "interval-without-words", rows: 1, lines: [6] },
      { code: "phrase-names-no-rock", rows: 1 },
    ]);
    expect(column(beds)).toEqual(["0 m 5 m clay", "5 m 9 m not described"]);
  });

  it("covers the hole from the surface to the deepest row without gap or overlap, whatever the rows", () => {
    const interval = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 20 }));
    const words = fc.constantFrom("clay", "sand", "limestone", "as above", "gravel");
    fc.assert(
      fc.property(fc.array(fc.tuple(interval, words), { minLength: 1, maxLength: 12 }), (rows) => {
        const lines = rows.map(([[from, thick], phrase]) => `${from},${from + thick},${phrase}`);
        const { ground } = bedsOf(`from,to,description\n${lines.join("\n")}\n`, { unit: "m" });
        const deepest = Math.max(...rows.map(([[from, thick]]) => from + thick));
        expect(ground.beds[0]?.top).toBe("0 m");
        expect(ground.beds.at(-1)?.bottom).toBe(`${deepest} m`);
        expect(ground.beds.slice(1).map((bed) => bed.top)).toEqual(ground.beds.slice(0, -1).map((bed) => bed.bottom));
      }),
    );
  });
});
