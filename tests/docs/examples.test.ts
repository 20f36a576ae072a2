import * as engine from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { publicSurface } from "./public-surface.ts";

/** `expression // → expected` with an optional `(± 2 %)`. */
const EXAMPLE = /^(?<expression>.+?)\s*\/\/ → (?<expected>.+?)(?:\s*\(± (?<percent>[\d.]+) %\))?$/;
const USUAL_TOLERANCE = 1e-3;

const names = Object.keys(engine);
const values = Object.values(engine);

function evaluate(expression: string): unknown {
  return new Function(...names, `"use strict"; return (${expression});`)(...values);
}

const examples = publicSurface("engine").items.flatMap((item) =>
  (item.tags.get("example") ?? []).flatMap((text) =>
    text
      .split("\n")
      .map((line) => line.trim())
      .filter((line) => line !== "")
      .map((line) => ({ of: `${item.file}: ${item.name}`, line })),
  ),
);

describe("every example in a doc comment runs and gives what it says", () => {
  it.each(examples)("$of: $line", ({ line }) => {
    const match = EXAMPLE.exec(line);
    expect(match, "an example reads: expression // → expected").not.toBeNull();
    const { expression = "", expected = "", percent } = match?.groups ?? {};
    const got = evaluate(expression);
    const wanted = evaluate(expected);
    if (typeof wanted === "number") {
      const tolerance = percent ? Number(percent) / 100 : USUAL_TOLERANCE;
      expect(typeof got).toBe("number");
      expect(Math.abs((got as number) - wanted)).toBeLessThanOrEqual(Math.max(tolerance * Math.abs(wanted), 1e-12));
    } else {
      expect(JSON.stringify(got)).toBe(JSON.stringify(wanted));
    }
  });
});
