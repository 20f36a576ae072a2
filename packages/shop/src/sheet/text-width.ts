const NARROW = /[ijlI.,:;'|!()[\] ·]/;
const WIDE_FROM = 0x2e80;

/**
 * About how wide a text sets in a plain sans-serif face [same unit as `size`]. The widths are those of a roomy face, so
 * that a text fitted by them also fits in a tighter one.
 */
export function textWidth(text: string, size: number): number {
  let em = 0;
  for (const mark of text) {
    if ((mark.codePointAt(0) ?? 0) >= WIDE_FROM) em += 1.05;
    else if (NARROW.test(mark)) em += 0.36;
    else if (/[mwMW%@—]/.test(mark)) em += 0.97;
    else if (/[A-Z]/.test(mark)) em += 0.72;
    else em += 0.63;
  }
  return em * size;
}

/** The text broken into at most `lines` lines of a width, at blanks where it can; what is too long ends in an ellipsis. */
export function linesWithin(text: string, size: number, width: number, lines: number): string[] {
  const done: string[] = [];
  let rest = text.trim().replace(/\s+/g, " ");
  while (rest !== "" && done.length < lines) {
    const last = done.length === lines - 1;
    const line = startWithin(rest, size, width);
    if (line === rest || !last) {
      done.push(line.trim());
      rest = rest.slice(line.length).trim();
    } else {
      done.push(`${startWithin(rest, size, width - textWidth("…", size)).trim()}…`);
      rest = "";
    }
  }
  return done;
}

/** As much of the text as fits, up to a blank where there is one; always at least one character. */
function startWithin(text: string, size: number, width: number): string {
  if (textWidth(text, size) <= width) return text;
  const marks = [...text];
  let count = marks.length;
  while (count > 1 && textWidth(marks.slice(0, count).join(""), size) > width) count--;
  const cut = marks.slice(0, count).join("");
  const blank = cut.lastIndexOf(" ");
  return blank > 0 ? cut.slice(0, blank + 1) : cut;
}
