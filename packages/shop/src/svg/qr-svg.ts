import qrcode from "qrcode-generator";

/** White squares that a reader needs around the code [-]. */
const QUIET = 4;
/** Bytes that the largest code holds at correction M [-]: ISO/IEC 18004, version 40. */
const MOST_BYTES = 2331;

/**
 * A QR code of a text as an SVG drawing, one unit to a square: black on white, with its quiet border. At correction M it
 * still reads with about 15 % of its data spoilt, as by a thumb of mud.
 *
 * @param mostBytes - longest text taken, in UTF-8 [bytes]
 * @throws where the text is empty or longer than that
 */
export function qrSvg(text: string, mostBytes: number = MOST_BYTES): string {
  const bytes = new TextEncoder().encode(text);
  if (bytes.length === 0) throw new Error("the text of a QR code must not be empty");
  if (bytes.length > mostBytes) {
    throw new Error(`the text of a QR code must be at most ${mostBytes} bytes long, got ${bytes.length}`);
  }
  const code = qrcode(0, "M");
  // One character for each byte: the code then holds UTF-8, whatever letters the text has.
  code.addData(String.fromCharCode(...bytes), "Byte");
  code.make();
  const squares = code.getModuleCount();
  const side = squares + 2 * QUIET;
  let dark = "";
  for (let row = 0; row < squares; row++) {
    for (let column = 0; column < squares; column++) {
      if (code.isDark(row, column)) dark += `M${column + QUIET} ${row + QUIET}h1v1h-1z`;
    }
  }
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" width="${side}" height="${side}" shape-rendering="crispEdges" role="img" aria-label="QR code"><rect width="${side}" height="${side}" fill="#fff"/><path d="${dark}" fill="#000"/></svg>`;
}
