// Every character that XML 1.0 does not allow: control characters, lone halves of a pair, the two non-characters.
const NOT_XML = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu;
const ENTITY: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text as it may stand in XML, in content and between double quotes: what a person typed never becomes markup. */
export function xmlText(text: string): string {
  return text
    .replace(NOT_XML, "\u{FFFD}")
    .replace(/[&<>"]/g, (mark) => ENTITY[mark] ?? mark)
    .replace(/[\t\n\r]/g, " ");
}
