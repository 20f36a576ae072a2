import jsqr from "jsqr";
import { describe, expect, it } from "vitest";
import { xmlTree } from "../../../../tests/support/xml-tree.ts";
import { qrSvg } from "./qr-svg.ts";

const DOTS = 4;

/** The drawing as a picture: every square of its path filled with dots. */
function picture(svg: string): { pixels: Uint8ClampedArray; side: number } {
  const side = Number(/width="(\d+)"/.exec(svg)?.[1]) * DOTS;
  const pixels = new Uint8ClampedArray(4 * side * side).fill(255);
  for (const [, x, y] of svg.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) {
    for (let row = 0; row < DOTS; row++) {
      const at = 4 * ((Number(y) * DOTS + row) * side + Number(x) * DOTS);
      for (let dot = 0; dot < DOTS; dot++) pixels.fill(0, at + 4 * dot, at + 4 * dot + 3);
    }
  }
  return { pixels, side };
}

/** What an independent reader finds in a code, as text in UTF-8. */
function read(svg: string): string | undefined {
  const { pixels, side } = picture(svg);
  const found = (jsqr as unknown as typeof jsqr.default)(pixels, side, side);
  return found ? new TextDecoder().decode(new Uint8Array(found.binaryData)) : undefined;
}

describe("qrSvg", () => {
  it.each([
    "http://192.168.1.20:4173/api/travelers/ridge/sheets/card.html?units=field",
    "a",
    "Œuf & <b> Жук 漢字",
    "x".repeat(180),
  ])("is read back by another reader: %s", (text) => {
    const svg = qrSvg(text);
    xmlTree(svg);
    expect(read(svg)).toBe(text);
  });

  it("is of version 9 where it holds 180 bytes, and of version 10 with one more", () => {
    // ISO/IEC 18004: 4 V + 17 squares a side, 180 bytes in version 9 at correction M; four squares of quiet all around.
    const sides = [180, 181].map((bytes) => Number(/width="(\d+)"/.exec(qrSvg("x".repeat(bytes)))?.[1]));
    expect(sides).toEqual([4 * 9 + 17 + 8, 4 * 10 + 17 + 8]);
  });

  it("still reads with a thumb of mud on it", () => {
    const text = "https://example.org/card/ridge-road";
    // A blot of five by five squares in the middle of the data, all white.
    const inBlot = (at: string) => Number(at) >= 16 && Number(at) < 21;
    const muddy = qrSvg(text).replace(/M(\d+) (\d+)h1v1h-1z/g, (square, x, y) =>
      inBlot(x) && inBlot(y) ? "" : square,
    );
    expect(muddy).not.toBe(qrSvg(text));
    expect(read(muddy)).toBe(text);
  });

  it("refuses a text that is empty or too long, with the length and the limit", () => {
    expect(() => qrSvg("")).toThrow("must not be empty");
    expect(() => qrSvg("é".repeat(100), 180)).toThrow("at most 180 bytes long, got 200");
  });
});
