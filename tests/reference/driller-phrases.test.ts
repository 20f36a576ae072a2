/**
 * Drillers' phrases read as ground: phrases typed in here, and the share of agreement with two open sets of classified
 * logs, measured where a copy of them is at hand. The lexicon was written with these logs in view, so the share tells how
 * well it covers such logs, not how it would do on the logs of another country.
 */
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { classifyGround } from "@bitwright/engine";
import { describe, expect, it } from "vitest";

describe("phrases as drillers write them", () => {
  it.each([
    ["brown sandy clay w/ gravel", "clay", ["sand", "gravel"]],
    ["BROWN CLAY", "clay", []],
    ["blue shale, hard", "shale", []],
    ["broken lime", "limestone", []],
    ["dk gry sh w/ ls stringers", "shale", ["limestone"]],
    ["lt brn ss, med hd, wb", "hard-sandstone", []],
    ["well mixed sands and minor gravel in grey clay", "sand", ["gravel", "clay"]],
    ["gray bedrock & some quartz", undefined, ["quartzite"]],
    ["sand & gravel, water-bearing", "sand", ["gravel"]],
    ["gvl w/ bldrs", "gravel", ["boulders"]],
    ["chert gravel", "gravel", ["chert"]],
    ["cherty limestone", "limestone", ["chert"]],
    ["glacial till, boulders", "till", ["boulders"]],
    ["clay till", "till", ["clay"]],
    ["red sandy shale", "shale", ["sand"]],
    ["red & grey mudstone", "mudstone", []],
    ["decomposed granite", "granite", []],
    ["trap rock", "basalt", []],
    ["soft white chalk with flints", "soft-limestone", ["chert"]],
    ["gumbo", "clay", []],
    ["sandstone/shale interbedded", "sandstone", ["shale"]],
    ["coal seam", "coal", []],
    ["clay with coal seams", "clay", ["coal"]],
    ["lignitic clay", "clay", ["coal"]],
    ["hardpan", "till", []],
    ["top soil", "topsoil", []],
    ["fill - sandy gravel", "gravel", ["fill", "sand"]],
    ["quartz veins in slate", "slate", ["quartzite"]],
    ["dolostone, vuggy", "dolomite", []],
    ["gyp beds in red bed", "mudstone", ["gypsum"]],
    ["no recovery", undefined, []],
    ["", undefined, []],
  ] as const)("%s", (phrase, rockId, secondary) => {
    const read = classifyGround(phrase);
    expect(read.rockId).toBe(rockId);
    expect([...read.secondary].sort()).toEqual([...secondary].sort());
  });

  it.each([
    ["brown sandy clay w/ gravel", ["impact"]],
    ["clay, few boulders", ["impact"]],
    ["lime with chert nodules", ["impact", "abrasion", "hard-stringers"]],
    ["dk gry sh w/ ls stringers", ["hard-stringers"]],
    ["broken lime", ["caving", "lost-circulation"]],
    ["cavernous limestone, lost circulation", ["lost-circulation"]],
    ["sticky blue clay", ["sticky"]],
    ["quicksand", ["caving"]],
    ["fill", ["impact", "caving"]],
    ["brown clay", []],
    ["shale, no gravel", []],
  ] as const)("%s adds its hazards", (phrase, hazards) => {
    expect([...classifyGround(phrase).hazards].sort()).toEqual([...hazards].sort());
  });

  it.each([
    ["brown clay", "clear"],
    ["chert gravel", "clear"],
    ["shale gravel", "guess"],
    ["shales/dacite", "guess"],
    ["bluestone", "guess"],
    ["black daycite", "guess"],
    ["possibly granite", "guess"],
    ["sandy", "guess"],
    ["rock", "unknown"],
    ["as above, less shale", "unknown"],
  ] as const)("%s is %s", (phrase, confidence) => {
    expect(classifyGround(phrase).confidence).toBe(confidence);
  });
});

const waterBores = (name: string) =>
  fileURLToPath(new URL(`../../../shared/data/water-bores/${name}`, import.meta.url));
const ACT = waterBores("act_classified_logs.csv");
const BC = waterBores("bc_lithology_descriptions.csv");
const absent = (path: string) => (existsSync(path) ? "" : " (skipped: the open log files are not beside this folder)");

/** Rows of a comma-separated file with quoted fields and no line breaks in them, by the names of its first line. */
function rowsOf(path: string): Readonly<Record<string, string>>[] {
  const [header = [], ...rows] = readFileSync(path, "utf8")
    .split(/\r?\n/)
    .filter((line) => line !== "")
    .map((line) =>
      [...`,${line}`.matchAll(/,\s*(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
        ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? "",
      ),
    );
  return rows.map((row) => Object.fromEntries(header.map((column, at) => [column, (row[at] ?? "").trim()])));
}

/** Classes of the ACT file that say a rock, and the rocks of the table that are one. `rock` says none. */
const ACT_CLASSES: Readonly<Record<string, readonly string[]>> = {
  shale: ["shale"],
  clay: ["clay"],
  granite: ["granite"],
  soil: ["topsoil"],
  dacite: ["dacite"],
  porphyry: ["dacite"],
  ignimbrite: ["dacite"],
  siltstone: ["siltstone"],
  mudstone: ["mudstone"],
  slate: ["slate"],
  sandstone: ["sandstone", "friable-sandstone", "hard-sandstone"],
  limestone: ["limestone", "soft-limestone"],
  gravel: ["gravel"],
  sand: ["sand"],
};

/**
 * Words of ACT rows whose class we judged to be the doubtful one, each with our reading; not to be chased by tuning.
 * Only the words that tell, so that no row of the file is copied here.
 */
const ACT_DOUBTFUL: readonly (readonly [string, string])[] = [
  ["as above", "the words point to the bed before, which the row does not hold"],
  ["no shale", "the log denies the class it was given"],
  ["no clay", "the log denies the class it was given"],
  ["shale gravel", "gravel of shale or shale and gravel: two beds with the comma left out"],
  ["sandstone gravel", "the same of sandstone"],
  ["granite boulders", "boulders are what the bit meets"],
  ["gravels and sand", "two materials on one footing, the class takes the second"],
  ["silts and clay", "the same"],
  ["silts and sand", "the same"],
  ["porphery granite", "the same"],
  ["shales/slates siltstone", "three on one footing, the class takes the last"],
  ["clay stone", "one word or two"],
  ["sand stones", "one word or two"],
];

/** BC classes that say a material, and what counts as the same; `Bedrock` and mixed names of states say none. */
const BC_CLASSES: Readonly<Record<string, readonly string[]>> = {
  Clay: ["clay"],
  Silt: ["silt"],
  Sand: ["sand"],
  Gravel: ["gravel", "boulders"],
  "Gravel (Dirty)": ["gravel"],
  "Sand and Gravel (Clean)": ["sand", "gravel"],
  "Sand and Gravel (Dirty)": ["sand", "gravel"],
  "Sand and Fines": ["sand", "silt"],
  "Sandy or Gravelly Silt": ["silt"],
  Organics: ["peat"],
};

interface Tally {
  readonly rows: number;
  readonly agreed: number;
  readonly clear: number;
  readonly clearAgreed: number;
  readonly differing: readonly string[];
}

function agreement(
  rows: readonly { readonly phrase: string; readonly accepted: readonly string[] | undefined }[],
): Tally {
  const read = rows.flatMap(({ phrase, accepted }) => {
    if (!accepted) return [];
    const { rockId, confidence } = classifyGround(phrase);
    return [{ phrase, agrees: accepted.includes(rockId ?? ""), clear: confidence === "clear" }];
  });
  const clear = read.filter((row) => row.clear);
  return {
    rows: read.length,
    agreed: read.filter((row) => row.agrees).length,
    clear: clear.length,
    clearAgreed: clear.filter((row) => row.agrees).length,
    differing: read.filter((row) => !row.agrees).map((row) => row.phrase.toLowerCase()),
  };
}

describe("open classified logs", () => {
  it.skipIf(!existsSync(ACT))(
    `agree on 98 % of the mapped ACT rows, 99 % where the reading is clear${absent(ACT)}`,
    () => {
      const tally = agreement(
        rowsOf(ACT).map((row) => ({ phrase: row.Description ?? "", accepted: ACT_CLASSES[row.Lithology_1 ?? ""] })),
      );
      expect(tally.rows).toBeGreaterThan(3000);
      expect(tally.agreed / tally.rows).toBeGreaterThanOrEqual(0.98);
      expect(tally.clearAgreed / tally.clear).toBeGreaterThanOrEqual(0.99);
      expect(tally.clear / tally.rows).toBeGreaterThan(0.95);
      const doubtful = tally.differing.filter((phrase) => ACT_DOUBTFUL.some(([words]) => phrase.includes(words)));
      // The rest are ours to answer for: mostly long descriptions where the class was taken from a later sentence.
      expect(tally.differing.length - doubtful.length).toBeLessThanOrEqual(25);
    },
  );

  it.skipIf(!existsSync(ACT))(
    `bring the impact hazard for every ACT row that says gravel or boulders${absent(ACT)}`,
    () => {
      const stony = rowsOf(ACT)
        .map((row) => row.Description ?? "")
        .filter((phrase) => /gravel|boulder|cobble/i.test(phrase));
      expect(stony.length).toBeGreaterThan(100);
      expect(stony.filter((phrase) => !classifyGround(phrase).hazards.includes("impact"))).toEqual([]);
    },
  );

  it.skipIf(!existsSync(BC))(`agree on nine in ten of the BC phrases whose class says a material${absent(BC)}`, () => {
    const rows = rowsOf(BC);
    const tally = agreement(rows.map((row) => ({ phrase: row.desc ?? "", accepted: BC_CLASSES[row.cat ?? ""] })));
    expect(tally.rows).toBeGreaterThanOrEqual(30);
    expect(tally.agreed / tally.rows).toBeGreaterThanOrEqual(0.9);
  });

  it.skipIf(!existsSync(BC))(`leave bedrock without a name where the BC phrase has none${absent(BC)}`, () => {
    const bare = rowsOf(BC).filter((row) => /bedrock/i.test(row.cat ?? "") && !/granite/.test(row.desc ?? ""));
    expect(bare.length).toBeGreaterThanOrEqual(5);
    expect(bare.filter((row) => classifyGround(row.desc ?? "").rockId !== undefined)).toEqual([]);
  });
});
