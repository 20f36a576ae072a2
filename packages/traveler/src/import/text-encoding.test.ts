import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodedText, plainText } from "./text-encoding.ts";

const bytes = (...values: number[]) => Uint8Array.from(values);
const utf8 = (text: string) => new Uint8Array(Buffer.from(text, "utf8"));
const utf16 = (text: string) => new Uint8Array(Buffer.from(text, "utf16le"));

describe("decodedText", () => {
  it("reads plain ASCII", () => {
    expect(decodedText(utf8("DEPT.M"))).toEqual({ text: "DEPT.M", encoding: "ASCII", marked: false });
  });

  it("reads any text back from UTF-8, marked or not", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const whole = `é${text}`;
        expect(decodedText(utf8(whole)).text).toBe(whole);
        expect(decodedText(utf8(`\ufeff${whole}`))).toEqual({ text: whole, encoding: "UTF-8", marked: true });
      }),
    );
  });

  it("reads UTF-16 by its mark or by its zero bytes, in both orders", () => {
    const text = "~VERSION\nVERS. 2.0 : µs per ft";
    const little = utf16(text);
    const big = Uint8Array.from(little, (_, at) => little[at ^ 1] ?? 0);
    expect(decodedText(little)).toEqual({ text, encoding: "UTF-16 little-endian", marked: false });
    expect(decodedText(big)).toEqual({ text, encoding: "UTF-16 big-endian", marked: false });
    expect(decodedText(Uint8Array.from([0xff, 0xfe, ...little]))).toMatchObject({ text, marked: true });
    expect(decodedText(Uint8Array.from([0xfe, 0xff, ...big]))).toMatchObject({ text, marked: true });
  });

  it("falls back to code page 1252 where the bytes are no UTF-8", () => {
    expect(decodedText(bytes(0x31, 0x32, 0xb0, 0x96, 0x80))).toEqual({
      text: "12°–€",
      encoding: "code page 1252",
      marked: false,
    });
  });

  it.each([
    ["a longer form than needed", [0xc0, 0x80]],
    ["half a surrogate pair", [0xed, 0xa0, 0x80]],
    ["a character cut short", [0x41, 0xe2, 0x82]],
  ])("takes %s for no UTF-8", (_, values) => {
    expect(decodedText(bytes(...values)).encoding).toBe("code page 1252");
  });
});

describe("plainText", () => {
  it("makes every line end a plain one and drops the mark", () => {
    expect(plainText("\ufeffa\r\nb\rc\nd").text).toBe("a\nb\nc\nd");
  });
});
