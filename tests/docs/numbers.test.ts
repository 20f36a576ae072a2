import ts from "typescript";
import { describe, expect, it } from "vitest";
import { commentText, type PublicItem, publicSurface } from "./public-surface.ts";

const { checker, items } = publicSurface("engine");

/** Rooms of plain bookkeeping: what they export is not a relation of the trade and needs no source. */
const PLAIN_ROOMS = ["quantity/", "geometry/"];
const UNIT_IN_BRACKETS = /\[[^\]]+\]/;
const SOURCE_FORM = /^\([abcd]\) \S/;

const label = (item: PublicItem) => `${item.file}: ${item.name}`;
const functions = items.filter((item) => ts.isFunctionDeclaration(item.node));

function isNumberLike(type: ts.Type): boolean {
  const shown = checker.typeToString(checker.getNonNullableType(type));
  return /^(readonly )?(number|Band)(\[\])?$/.test(shown) || /^(Readonly)?(Float64Array|Float32Array)\b/.test(shown);
}

function returnsNumber(item: PublicItem): boolean {
  const signature = checker.getSignatureFromDeclaration(item.node as ts.FunctionDeclaration);
  return signature !== undefined && checker.typeToString(checker.getReturnTypeOfSignature(signature)) === "number";
}

describe("every number in public carries its unit and its source", () => {
  it("has found the engine's surface", () => {
    expect(functions.length).toBeGreaterThan(10);
  });

  it("puts a unit in brackets on every number of a public shape", () => {
    const bare: string[] = [];
    for (const item of items) {
      if (!ts.isInterfaceDeclaration(item.node) && !ts.isTypeAliasDeclaration(item.node)) continue;
      const visit = (node: ts.Node) => {
        if (ts.isPropertySignature(node) && isNumberLike(checker.getTypeAtLocation(node))) {
          if (!UNIT_IN_BRACKETS.test(commentText(node))) bare.push(`${label(item)}.${node.name.getText()}`);
        }
        ts.forEachChild(node, visit);
      };
      visit(item.node);
    }
    expect(bare).toEqual([]);
  });

  it("gives every exported constant a unit and a source", () => {
    const bare = items
      .filter((item) => ts.isVariableDeclaration(item.node) && isNumberLike(checker.getTypeAtLocation(item.node)))
      .filter((item) => !UNIT_IN_BRACKETS.test(item.text) || !item.tags.has("source"));
    expect(bare.map(label)).toEqual([]);
  });

  it("gives every quantity function its returned unit, source and example", () => {
    const wanting = functions.filter(returnsNumber).flatMap((item) => {
      const missing = [
        UNIT_IN_BRACKETS.test((item.tags.get("returns") ?? []).join(" ")) ? "" : "@returns with [unit]",
        item.tags.has("source") ? "" : "@source",
        item.tags.has("example") ? "" : "@example",
      ].filter(Boolean);
      return missing.length ? [`${label(item)} lacks ${missing.join(", ")}`] : [];
    });
    expect(wanting).toEqual([]);
  });

  it("gives every function of a physics room a source", () => {
    const wanting = functions
      .filter((item) => !PLAIN_ROOMS.some((room) => item.file.startsWith(room)))
      .filter((item) => !item.tags.has("source"));
    expect(wanting.map(label)).toEqual([]);
  });

  it("writes every source with its kind", () => {
    const malformed = items.flatMap((item) =>
      (item.tags.get("source") ?? [])
        .filter((text) => !SOURCE_FORM.test(text))
        .map((text) => `${label(item)}: ${text}`),
    );
    expect(malformed).toEqual([]);
  });

  it("says in words what every exported item is", () => {
    expect(items.filter((item) => item.text.trim() === "").map(label)).toEqual([]);
  });
});
