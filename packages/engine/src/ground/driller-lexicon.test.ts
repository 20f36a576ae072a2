import { expect, it } from "vitest";
import { lexiconEntry, lexiconRows } from "./driller-lexicon.ts";
import { rockIds } from "./rock-table.ts";

it("holds each spelling once, in lower case", () => {
  const spellings = lexiconRows.flatMap(([, row]) => row.split("|"));
  expect(spellings.filter((spelling, at) => spellings.indexOf(spelling) !== at)).toEqual([]);
  expect(spellings.filter((spelling) => spelling !== spelling.toLowerCase().trim())).toEqual([]);
});

it("names rocks of the table only", () => {
  const named = lexiconRows.flatMap(([entry]) => {
    if (entry.does === "tinge") return [entry.rockId];
    return entry.does === "name" ? [entry.rockId, entry.soft, entry.hard] : [];
  });
  expect(named.filter((id) => id !== undefined && !rockIds.includes(id))).toEqual([]);
});

it("has a word for every rock of the table", () => {
  const named = new Set(
    lexiconRows.flatMap(([entry]) => (entry.does === "name" ? [entry.rockId, entry.soft, entry.hard] : [])),
  );
  expect(rockIds.filter((id) => !named.has(id))).toEqual([]);
});

it("finds plurals by their singular, but leaves short forms whole", () => {
  expect(lexiconEntry("shales")).toBe(lexiconEntry("shale"));
  expect(lexiconEntry("clays")).toBe(lexiconEntry("clay"));
  expect(lexiconEntry("ss")).toBe(lexiconEntry("sandstone"));
  expect(lexiconEntry("beds")).toBe(lexiconEntry("bed"));
  expect(lexiconEntry("shs")).toBeUndefined();
});
