import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import * as engine from "@bitwright/engine";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { markdownTables } from "./markdown.ts";
import { commentText, publicSurface } from "./public-surface.ts";

const page = readFileSync(fileURLToPath(new URL("../../docs/nomenclature.md", import.meta.url)), "utf8");
const ANY_UNIT = "any";

const codeNames = (cell: string) => [...cell.matchAll(/`([^`]+)`/g)].map(([, name]) => name);
const unitsOf = (cell: string) => cell.split(", ").map(plainUnit);
/** `N m`, `N·m` and `N·m` are one. */
function plainUnit(unit: string): string {
  return unit.trim().replace(/[\s·`]+/g, " ");
}

/** Whole names → the SI units that the page allows them. */
const reserved = new Map<string, readonly string[]>();
/** Measures that a longer name ends in → their SI units. */
const measures = new Map<string, readonly string[]>();
for (const { head, rows } of markdownTables(page)) {
  const unitAt = head.indexOf("SI unit");
  const into = head[0] === "measure" ? measures : head[0] === "name" ? reserved : undefined;
  for (const row of rows) {
    const names = codeNames(row[0]);
    const units = unitsOf(row[unitAt]);
    const paired = units.length === names.length;
    for (const [at, name] of names.entries()) into?.set(name, paired ? [units[at]] : units);
  }
}
const [, wordList = ""] = /Words that say of what:\n\n(.+?)\.\n/s.exec(page) ?? [];
const qualifiers = new Set(wordList.split(/,\s+/));

/** The words of a name: `noseRadiusShare` is nose, radius, share. */
const wordsOf = (name: string) => name.split(/(?=[A-Z])/).map((word) => word.toLowerCase());

/** The units that the page allows a name; undefined where the page does not know it. */
function allowedUnits(name: string): readonly string[] | undefined {
  const whole = reserved.get(name);
  if (whole) return whole;
  // A list of a thing is named for it in the plural.
  if (name.endsWith("s") && allowedUnits(name.slice(0, -1))) return allowedUnits(name.slice(0, -1));
  const words = wordsOf(name);
  if (words.includes("scaled")) return isKnown(words) ? ["-"] : undefined;
  const [last] = words.splice(-1);
  const units = measures.get(last.charAt(0).toUpperCase() + last.slice(1));
  return words.length > 0 && isKnown(words) ? units : undefined;
}

const isKnown = (words: readonly string[]) =>
  words.every((word) => qualifiers.has(word) || isMeasure(word) || reserved.has(word));

const isMeasure = (word: string) => measures.has(word.charAt(0).toUpperCase() + word.slice(1));

interface NumberProperty {
  readonly name: string;
  readonly of: string;
  /** What stands in brackets in its comment. */
  readonly units: readonly string[];
}

function numberProperties(): NumberProperty[] {
  const { checker, items } = publicSurface("engine");
  const isNumber = (type: ts.Type) =>
    /^(readonly )?(number|Band)(\[\])?$|^(Readonly)?Float(64|32)Array\b/.test(
      checker.typeToString(checker.getNonNullableType(type)),
    );
  const found: NumberProperty[] = [];
  for (const { node, name: of } of items) {
    if (!ts.isInterfaceDeclaration(node) && !ts.isTypeAliasDeclaration(node)) continue;
    const visit = (child: ts.Node) => {
      if (ts.isPropertySignature(child) && isNumber(checker.getTypeAtLocation(child))) {
        const units = [...commentText(child).matchAll(/\[([^\]]+)\]/g)].map(([, unit]) => plainUnit(unit));
        found.push({ name: child.name.getText(), of, units });
      }
      ts.forEachChild(child, visit);
    };
    visit(node);
  }
  return found;
}

const properties = numberProperties();

describe("docs/nomenclature.md", () => {
  it("has been read, and the engine too", () => {
    expect(reserved.size).toBeGreaterThan(100);
    expect(measures.size).toBeGreaterThan(20);
    expect(properties.length).toBeGreaterThan(300);
  });

  it("reserves the name of every number in the engine's public types, whole or as words of the page", () => {
    const unknown = properties.filter(({ name }) => allowedUnits(name) === undefined);
    expect(
      [...new Set(unknown.map(({ name, of }) => `${of}.${name}`))],
      "reserve them in docs/nomenclature.md",
    ).toEqual([]);
  });

  it("gives each of them the unit that the code gives it", () => {
    const wrong = properties.flatMap(({ name, of, units }) => {
      const allowed = allowedUnits(name) ?? [];
      if (allowed.includes(ANY_UNIT)) return [];
      return units
        .filter((unit) => !allowed.includes(unit))
        .map((unit) => `${of}.${name} in ${unit}, the page says ${allowed.join(", ")}`);
    });
    expect(wrong).toEqual([]);
  });

  it("reserves no name that nothing uses", () => {
    const used = new Set([...properties.map(({ name }) => name), ...Object.keys(engine)]);
    expect([...reserved.keys()].filter((name) => !used.has(name))).toEqual([]);
    const words = new Set([...used].flatMap(wordsOf));
    expect([...qualifiers].filter((word) => !words.has(word))).toEqual([]);
  });
});
