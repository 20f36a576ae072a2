import { type CatalogSize, CUTTER_CATALOG } from "@bitwright/engine";
import type { OwnCutter } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";

/** The cutters a traveler may name by code. */
export interface KnownCutters {
  readonly codes: readonly string[];
  find(code: string): CatalogSize | undefined;
}

const codeKey = (text: string) => text.trim().toUpperCase();

/** The cutters of the shop's own list and of the catalog; of two with one code the shop's own counts. */
export function knownCutters(own: readonly OwnCutter[]): KnownCutters {
  const all: readonly CatalogSize[] = [...CUTTER_CATALOG, ...own];
  const byCode = new Map(all.map((cutter) => [codeKey(cutter.code), cutter]));
  return { codes: [...new Set(all.map(({ code }) => code))], find: (code) => byCode.get(codeKey(code)) };
}

type GivenOwnCutter = NonNullable<NonNullable<ReadTraveler["lists"]>["cutters"]>[number];

/** The shop's own cutters in SI. */
export function resolveOwnCutters(given: readonly GivenOwnCutter[]): OwnCutter[] {
  return given.map(({ code, faceDiameter, length, tableThickness }) => ({
    code,
    faceDiameter: faceDiameter.si,
    length: length.si,
    ...(tableThickness ? { tableThickness: tableThickness.si } : {}),
  }));
}
