import type { CardContent } from "@bitwright/engine";
import { bedLines } from "./bed-lines.ts";
import { wholeFigure } from "./card-figures.ts";
import { CARD, cutTo, firstSentences, heading, oneLine, paragraph } from "./card-lines.ts";
import type { CardPaper } from "./card-paper.ts";
import { breakInWords, casingOrder, gearWords, notHereWords, toldOnce, whoWords } from "./card-words.ts";
import { jointLines } from "./joint-lines.ts";

/** How much is said where room is short. */
interface Fullness {
  /** Joints at most [-]. */
  readonly joints: number;
  /** Remarks on each bed at most [-]. */
  readonly remarks: number;
  /** Warnings at most [-]. */
  readonly warnings: number;
  readonly causes: boolean;
  /** Sentences of each caution: as many as this, more where they are short [-]. */
  readonly sentences: number;
  /** Stop signs and marks run on in paragraphs, and the reason for the casing is left to the summary. */
  readonly tight?: true;
  /** The bit in one line, and no word of fuel. */
  readonly bare?: true;
}

const EVERY = Number.POSITIVE_INFINITY;

// From all there is to the least a card may say: every bed, stop sign and caution stays to the last, and every joint long.
const STEPS: readonly Fullness[] = [
  { joints: EVERY, remarks: 3, warnings: 12, causes: true, sentences: 9 },
  { joints: EVERY, remarks: 2, warnings: 8, causes: true, sentences: 9 },
  { joints: EVERY, remarks: 1, warnings: 6, causes: false, sentences: 9 },
  { joints: EVERY, remarks: 1, warnings: 6, causes: false, sentences: 2 },
  { joints: EVERY, remarks: 1, warnings: 5, causes: false, sentences: 2 },
  { joints: EVERY, remarks: 0, warnings: 4, causes: false, sentences: 1 },
  { joints: EVERY, remarks: 0, warnings: 3, causes: false, sentences: 1 },
  { joints: EVERY, remarks: 0, warnings: 2, causes: false, sentences: 1 },
  { joints: EVERY, remarks: 0, warnings: 2, causes: false, sentences: 1, tight: true },
  { joints: EVERY, remarks: 0, warnings: 1, causes: false, sentences: 1, tight: true },
  ...[EVERY, 40, 36, 32, 28, 26, 24, 22, 20, 18, 16, 14, 12, 10, 8, 6].map(
    (joints) => ({ joints, remarks: 0, warnings: 1, causes: false, sentences: 1, tight: true, bare: true }) as const,
  ),
];

/**
 * The driller's card as plain text, 80 columns wide and on one page of 66 lines. Where there is more to say than the page
 * holds, less is said of causes, remarks and at last of joints, and the card points to the summary; only a column of so many
 * beds that they alone fill the page runs over it.
 */
export function cardText(content: CardContent, paper: CardPaper): string {
  let lines: string[] = [];
  for (const fullness of STEPS) {
    lines = cardLines(content, paper, fullness);
    if (lines.length <= CARD.lines) break;
  }
  return `${lines.join("\n")}\n`;
}

function cardLines(content: CardContent, paper: CardPaper, fullness: Fullness): string[] {
  const { units } = paper;
  const start = breakInWords(content, units);
  return [
    ...head(content, paper, fullness).slice(fullness.tight ? 1 : 0),
    ...told("! ", notHereWords(content)),
    ...told("! ", casingOrder(content, units, !fullness.tight)).slice(0, 3),
    heading("HOW TO RUN IT, BED BY BED"),
    ...bedLines(content, paper, fullness),
    ...jointLines(content, units, fullness.joints),
    ...told("", gearWords(content, units, !fullness.bare)),
    ...(start === undefined ? [] : [heading("BREAK-IN"), ...paragraph("", start)]),
    heading("STOP AND LOOK WHEN"),
    ...signs(content, fullness),
    ...warnings(content, fullness.warnings),
    ...cautions(content, fullness.sentences),
    ...foot(content, paper),
  ];
}

function told(lead: string, words: string | undefined): string[] {
  return words === undefined ? [] : paragraph(lead, words);
}

function head(content: CardContent, paper: CardPaper, { bare }: Fullness): string[] {
  const { job, bit, hole } = content;
  const who = whoWords(content, paper);
  return [
    "=".repeat(CARD.columns),
    cutTo(`DRILLER'S CARD   ${oneLine(job)}`, CARD.columns),
    ...(who === "" ? [] : [cutTo(`For ${who}`, CARD.columns)]),
    ...paragraph(`Hole ${wholeFigure(hole, paper.units)}   Bit: `, bit).slice(0, bare ? 1 : 2),
    "=".repeat(CARD.columns),
  ];
}

function signs({ stopSigns }: CardContent, { causes, tight }: Fullness): string[] {
  const said = stopSigns.map(({ sign, likely, act }) => `${sign.toUpperCase()}: ${causes ? `${likely}; ` : ""}${act}`);
  return tight ? paragraph("", said.map((one) => `${one}.`).join(" ")) : said.flatMap((one) => paragraph("* ", one));
}

function warnings({ warnings: told }: CardContent, most: number): string[] {
  const all = toldOnce(told);
  if (all.length === 0 || most === 0) return [];
  const more = all.length - most;
  return [
    heading(more > 0 ? `WATCH; and ${more} more on the summary` : "WATCH"),
    ...all.slice(0, most).flatMap((text) => paragraph("* ", text)),
  ];
}

/** A caution said in fewer characters than this goes on with its next sentence. */
const SHORT_CAUTION = 60;

/** All cautions run on in one paragraph, each led by its topic; the last say stays with code and licence. */
function cautions({ cautions: all }: CardContent, sentences: number): string[] {
  if (all.length === 0) return [];
  const texts = all.map(
    ({ topic, text }) => `${topic.toUpperCase()}: ${firstSentences(text, sentences, SHORT_CAUTION)}`,
  );
  const deferrals = [...new Set(all.map(({ deferral }) => deferral))];
  return [heading("SAFETY"), ...paragraph("", [...texts, ...deferrals].join(" "))];
}

function foot({ standing }: CardContent, { program, units }: CardPaper): string[] {
  return [
    "=".repeat(CARD.columns),
    ...paragraph("", standing),
    cutTo(`${oneLine(program)}, ${units} units, card 1 of 1.   Read and signed: ________________`, CARD.columns),
  ];
}
