/** Width and height of the card in characters and lines: one page of plain text. */
export const CARD = { columns: 80, lines: 66 } as const;

/** A text in one line: what a person typed may hold line breaks and tabs. */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\s]+/gu, " ").trim();
}

/** A text on so many columns, cut with an ellipsis where it is longer. */
export function cutTo(text: string, columns: number): string {
  const marks = [...text];
  return marks.length <= columns ? text : `${marks.slice(0, columns - 3).join("")}...`;
}

/** The text in a cell of fixed width, at the left or the right of it. */
export function cellOf(text: string, columns: number, side: "left" | "right"): string {
  const cut = cutTo(text, columns);
  const room = " ".repeat(Math.max(0, columns - [...cut].length));
  return side === "left" ? cut + room : room + cut;
}

/** Words broken into lines; the first begins with `lead`, the others are set in as far. */
export function paragraph(lead: string, text: string, columns: number = CARD.columns): string[] {
  const indent = " ".repeat([...lead].length);
  const lines: string[] = [];
  let line = lead;
  let empty = true;
  for (const word of oneLine(text).split(" ")) {
    const next = empty ? line + word : `${line} ${word}`;
    if ([...next].length > columns && !empty) {
      lines.push(line.trimEnd());
      line = indent + word;
    } else {
      line = next;
    }
    empty = false;
  }
  return [...lines, line.trimEnd()].map((one) => cutTo(one, columns));
}

/** A heading over the width of the card. */
export function heading(text: string): string {
  return `--- ${text} ${"-".repeat(Math.max(3, CARD.columns - text.length - 5))}`;
}

/** The first sentences of a text: so many, and on until they say at least `least` characters. */
export function firstSentences(text: string, count: number, least: number): string {
  const sentences = text.split(/(?<=[.!?])\s+(?=\p{Lu})/u);
  let said = "";
  for (const [k, sentence] of sentences.entries()) {
    if (k >= count && said.length >= least) break;
    said = said === "" ? sentence : `${said} ${sentence}`;
  }
  return said;
}
