import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readJson } from "./read-json.ts";

function fault(text: string): string {
  const read = readJson(text);
  return read.ok ? "none" : `${read.line}:${read.column} ${read.fault}`;
}

describe("readJson", () => {
  it("reads sound text, with or without a byte order mark", () => {
    expect(readJson('\uFEFF{"a": [1, true, null, "x"]}')).toEqual({ ok: true, value: { a: [1, true, null, "x"] } });
  });

  it.each([
    ["", "1:1 the file is empty"],
    ["  \n ", "1:1 the file is empty"],
    ['{"a": 1\n "b": 2}', '2:2 a comma or } is missing before "'],
    ['{"a": 1,}', "1:9 a comma stands before }, with no field behind it"],
    ["[1, 2,]", "1:7 a value is missing before ]"],
    ["[1 2]", "1:4 a comma or ] is missing before 2"],
    ['{"a" 1}', "1:6 a colon is missing before 1"],
    ["{a: 1}", "1:2 a field name in double quotes is missing before a"],
    ["{'a': 1}", "1:2 a field name in double quotes is missing before 'a'"],
    ['{"a": NaN}', "1:7 NaN is no number to work with"],
    ['{"a": 6 1/8 in}', "1:9 a comma or } is missing before 1/8"],
    ['{"a": 6in}', "1:7 6in is no value: give a text in double quotes, a number, true, false, a list or a group"],
    ['{"a": "3\' 6""}', '1:13 a comma or } is missing before "'],
    ['{"a": "x', "1:7 a text is not closed by a double quote on its line, or holds a bare backslash"],
    ['{"a": {"b": 1}', "1:15 the text ends before the } that closes it"],
    ['{"a"', "1:5 the text ends before the } that closes it"],
    ["{} {}", "1:4 the document has ended, but { follows"],
    ['{"a": }', "1:7 a value is missing before }"],
    ["[,]", "1:2 a value is missing before the comma"],
    ["hello", "1:1 hello is no value: give a text in double quotes, a number, true, false, a list or a group"],
  ])("says of %j where and what is wrong", (text, expected) => {
    expect(fault(text)).toBe(expected);
  });

  it("agrees with the machine on what is sound, and always has a place and words where it is not", () => {
    const sound = fc.json();
    fc.assert(
      fc.property(sound, fc.nat(), fc.constantFrom("", ",", "}", '"', "x", "]", ":"), (json, at, mark) => {
        const cut = at % (json.length + 1);
        const text = json.slice(0, cut) + mark + json.slice(cut + (mark === "" ? 1 : 0));
        const read = readJson(text);
        let parses = true;
        try {
          JSON.parse(text);
        } catch {
          parses = false;
        }
        expect(read.ok).toBe(parses);
        if (!read.ok) {
          expect(read.fault.length).toBeGreaterThan(5);
          expect(read.line).toBeGreaterThanOrEqual(1);
        }
      }),
    );
  });
});
