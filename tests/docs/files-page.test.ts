import { readFileSync } from "node:fs";
import { readLayoutFile } from "@bitwright/traveler";
import { afterAll, describe, expect, it } from "vitest";
import { bitwright, projectFile, temporaryFolder } from "../support/command.ts";
import { fencedBlocks, type MarkdownTable, markdownTables } from "./markdown.ts";

/** The field tables of docs/guide/files.md are those of the program: no field more, none less, the same ranges. */
const page = readFileSync(projectFile("docs/guide/files.md"), "utf8");
const folder = temporaryFolder();
afterAll(folder.remove);
const files = Object.fromEntries(
  fencedBlocks(page).flatMap(({ marks, text }) => (marks.file ? [[marks.file, folder.file(marks.file, text)]] : [])),
);
const [layoutTable, engageTable, rockTable, drillTable] = markdownTables(page);

const fieldsIn = ({ rows }: MarkdownTable) =>
  rows.flatMap(([cell]) => [...cell.matchAll(/`([^`]+)`/g)].map(([, name]) => name)).sort();

function fieldsOf(value: Record<string, unknown>, path = ""): string[] {
  return Object.entries(value)
    .flatMap(([name, field]) => {
      const first: unknown = Array.isArray(field) ? field[0] : undefined;
      return typeof first === "object" && !Array.isArray(first)
        ? fieldsOf(first as Record<string, unknown>, `${path}${name}[].`)
        : [`${path}${name}`];
    })
    .sort();
}

const printed = (...words: string[]) => JSON.parse(bitwright(...words, "--json").out) as Record<string, unknown>;

/** `-4π to 4π`, `0.01 to 2` as numbers. */
const rangeIn = (cell: string) =>
  cell.split(" to ").map((end) => {
    const [, factor, pi, over] = /^(-?[\d.]*)(π?)(?:\/(\d+))?$/.exec(end) ?? [];
    if (factor === undefined) return Number.NaN;
    const size = factor === "" || factor === "-" ? `${factor}1` : factor;
    return (Number(size) * (pi ? Math.PI : 1)) / Number(over ?? 1);
  });

describe("docs/guide/files.md", () => {
  it("names the fields that a layout may have", () => {
    const layout = JSON.parse(bitwright("layout", projectFile("examples/loop-hole.traveler.json")).out);
    expect(fieldsIn(layoutTable)).toEqual(["holeDiameter", ...Object.keys(layout.cutters[0])].sort());
  });

  it.each(layoutTable.rows.filter(([name]) => name !== "`wornHeight`"))(
    "gives the range of %s",
    (cell, _, __, range) => {
      const name = cell.replaceAll("`", "");
      const layout = JSON.parse(readFileSync(files["layout.json"], "utf8"));
      const wrong =
        name === "holeDiameter"
          ? { ...layout, [name]: 1e9 }
          : { ...layout, cutters: [{ ...layout.cutters[0], [name]: 1e9 }] };
      const read = readLayoutFile(wrong);
      const [, least, most] = /from (\S+) to (\S+)$/.exec(read.ok ? "" : read.problems[0].message) ?? [];
      expect(rangeIn(range).map((end) => end.toFixed(6))).toEqual([least, most].map((end) => Number(end).toFixed(6)));
    },
  );

  it("names the fields of a rock", () => {
    expect(fieldsIn(rockTable)).toEqual(Object.keys(JSON.parse(readFileSync(files["rock.json"], "utf8"))).sort());
  });

  it("names every field that engage prints", () => {
    expect(fieldsIn(engageTable)).toEqual(fieldsOf(printed("engage", files["layout.json"], "--advance", "2mm")));
  });

  it("names every field that drill prints, and tells true which of them add up", () => {
    const words = ["drill", files["layout.json"], "--rock", files["rock.json"], "--weight", "12kN", "--rpm", "90"];
    const state = printed(...words);
    expect(fieldsIn(drillTable)).toEqual(fieldsOf(state));
    const cutters = state.cutters as Record<string, number>[];
    const sum = (name: string) => cutters.reduce((total, cutter) => total + cutter[name], 0);
    expect(sum("axial") / (state.weight as number)).toBeCloseTo(1, 6);
    expect(sum("torque") / (state.torque as number)).toBeCloseTo(1, 6);
  });
});
