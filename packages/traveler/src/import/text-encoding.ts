/**
 * Bytes of a field file into text. Loggers' files come in plain ASCII, in UTF-8 with or without its mark, in the
 * Western code page of older desktop machines and now and then in UTF-16; none of them says which.
 */

export type TextEncoding = "ASCII" | "UTF-8" | "UTF-16 little-endian" | "UTF-16 big-endian" | "code page 1252";

export interface DecodedText {
  readonly text: string;
  readonly encoding: TextEncoding;
  /** Whether a byte order mark said so, or it was judged from the bytes. */
  readonly marked: boolean;
}

/** Characters of code page 1252 from 0x80 to 0x9F; the five that it leaves open become the replacement character. */
const CP1252_HIGH = "€\ufffd‚ƒ„…†‡ˆ‰Š‹Œ\ufffdŽ\ufffd\ufffd‘’“”•–—˜™š›œ\ufffdžŸ";

/** The text in `bytes`: by its byte order mark, else UTF-16 by its zero bytes, else UTF-8 if valid, else code page 1252. */
export function decodedText(bytes: Uint8Array): DecodedText {
  const [b0, b1, b2] = bytes;
  if (b0 === 0xef && b1 === 0xbb && b2 === 0xbf) {
    const text = utf8(bytes.subarray(3));
    return text === undefined
      ? { text: codePage1252(bytes.subarray(3)), encoding: "code page 1252", marked: false }
      : { text, encoding: "UTF-8", marked: true };
  }
  if (b0 === 0xff && b1 === 0xfe) {
    return { text: utf16(bytes.subarray(2), "little"), encoding: "UTF-16 little-endian", marked: true };
  }
  if (b0 === 0xfe && b1 === 0xff) {
    return { text: utf16(bytes.subarray(2), "big"), encoding: "UTF-16 big-endian", marked: true };
  }
  const order = unmarkedUtf16(bytes);
  if (order) {
    const encoding = order === "little" ? "UTF-16 little-endian" : "UTF-16 big-endian";
    return { text: utf16(bytes, order), encoding, marked: false };
  }
  if (bytes.every((byte) => byte < 0x80)) return { text: latin(bytes), encoding: "ASCII", marked: false };
  const text = utf8(bytes);
  return text === undefined
    ? { text: codePage1252(bytes), encoding: "code page 1252", marked: false }
    : { text, encoding: "UTF-8", marked: false };
}

/** Every second byte zero over the head of the file: plain letters in UTF-16. */
function unmarkedUtf16(bytes: Uint8Array): "little" | "big" | undefined {
  const head = bytes.subarray(0, 512);
  const pairs = Math.floor(head.length / 2);
  if (pairs < 4) return undefined;
  let evenZeros = 0;
  let oddZeros = 0;
  for (let pair = 0; pair < pairs; pair++) {
    if (head[2 * pair] === 0) evenZeros++;
    if (head[2 * pair + 1] === 0) oddZeros++;
  }
  if (oddZeros > 0.6 * pairs && evenZeros < 0.1 * pairs) return "little";
  if (evenZeros > 0.6 * pairs && oddZeros < 0.1 * pairs) return "big";
  return undefined;
}

/** Long arrays of character codes overflow the stack of one call, so the text is put together in pieces. */
const PIECE = 4096;

function fromCodes(codes: Uint8Array | Uint16Array): string {
  const pieces: string[] = [];
  for (let at = 0; at < codes.length; at += PIECE) pieces.push(String.fromCharCode(...codes.subarray(at, at + PIECE)));
  return pieces.join("");
}

const latin = (bytes: Uint8Array): string => fromCodes(bytes);

function codePage1252(bytes: Uint8Array): string {
  return latin(bytes).replace(/[\x80-\x9f]/g, (mark) => CP1252_HIGH.charAt(mark.charCodeAt(0) - 0x80));
}

function utf16(bytes: Uint8Array, order: "little" | "big"): string {
  const units = new Uint16Array(Math.floor(bytes.length / 2));
  const [low, high] = order === "little" ? [0, 1] : [1, 0];
  for (let at = 0; at < units.length; at++) {
    units[at] = (bytes[2 * at + low] ?? 0) | ((bytes[2 * at + high] ?? 0) << 8);
  }
  return fromCodes(units);
}

/** Shortest code point that needs so many bytes: a longer form of a shorter one is no valid UTF-8. */
const LEAST_OF_LENGTH = [0, 0, 0x80, 0x800, 0x10000];

function utf8(bytes: Uint8Array): string | undefined {
  const units = new Uint16Array(bytes.length);
  let filled = 0;
  for (let at = 0; at < bytes.length; ) {
    const lead = bytes[at] ?? 0;
    const length = lead < 0x80 ? 1 : lead >> 5 === 0b110 ? 2 : lead >> 4 === 0b1110 ? 3 : lead >> 3 === 0b11110 ? 4 : 0;
    if (length === 0 || at + length > bytes.length) return undefined;
    let code = length === 1 ? lead : lead & (0x7f >> length);
    for (let next = 1; next < length; next++) {
      const byte = bytes[at + next] ?? 0;
      if (byte >> 6 !== 0b10) return undefined;
      code = (code << 6) | (byte & 0x3f);
    }
    if (code < (LEAST_OF_LENGTH[length] ?? 0) || code > 0x10ffff || (code >= 0xd800 && code <= 0xdfff))
      return undefined;
    if (code < 0x10000) {
      units[filled++] = code;
    } else {
      units[filled++] = 0xd800 + ((code - 0x10000) >> 10);
      units[filled++] = 0xdc00 + ((code - 0x10000) & 0x3ff);
    }
    at += length;
  }
  return fromCodes(units.subarray(0, filled));
}

/** The text of a file given as bytes or already as text, without a byte order mark and with plain line ends. */
export function plainText(given: string | Uint8Array): DecodedText {
  const decoded =
    typeof given === "string" ? ({ text: given, encoding: "UTF-8", marked: false } as const) : decodedText(given);
  return { ...decoded, text: decoded.text.replace(/^\ufeff/, "").replace(/\r\n?/g, "\n") };
}
