import { type CardContent, FEED_DEAD_BAND } from "@bitwright/engine";
import type { UnitSystem } from "@bitwright/traveler";
import { bedLines } from "./bed-lines.ts";
import { bareFigure, cardUnit, wholeFigure } from "./card-figures.ts";
import { CARD, cellOf, cutTo, firstSentences, heading, oneLine, paragraph } from "./card-lines.ts";
import type { CardPaper } from "./card-paper.ts";
import { feedRows } from "./feed-rows.ts";

/** How much is said where room is short. */
interface Fullness {
  /** Feed depths at most [-]. */
  readonly feeds: number;
  /** Remarks on each bed at most [-]. */
  readonly remarks: number;
  /** Warnings at most [-]. */
  readonly warnings: number;
  readonly causes: boolean;
  /** Sentences of each caution: as many as this, more where they are short [-]. */
  readonly sentences: number;
}

// From all there is to the least a card may say: every bed, stop sign and caution stays to the last.
const STEPS: readonly Fullness[] = [
  { feeds: 24, remarks: 3, warnings: 12, causes: true, sentences: 9 },
  { feeds: 16, remarks: 2, warnings: 8, causes: true, sentences: 9 },
  { feeds: 12, remarks: 1, warnings: 6, causes: false, sentences: 9 },
  { feeds: 10, remarks: 1, warnings: 6, causes: false, sentences: 2 },
  { feeds: 8, remarks: 1, warnings: 5, causes: false, sentences: 2 },
  { feeds: 8, remarks: 0, warnings: 4, causes: false, sentences: 1 },
  { feeds: 6, remarks: 0, warnings: 3, causes: false, sentences: 1 },
  { feeds: 6, remarks: 0, warnings: 2, causes: false, sentences: 1 },
  { feeds: 6, remarks: 0, warnings: 1, causes: false, sentences: 1 },
];

/**
 * The driller's card as plain text, 80 columns wide and on one page of 66 lines. Where there is more to say than the page
 * holds, less is said of causes, remarks and feed depths, and the card points to the summary; only a column of so many
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
  return [
    ...head(content, paper),
    ...notHere(content),
    ...casing(content, units),
    heading("HOW TO RUN IT, BED BY BED"),
    ...bedLines(content, paper, fullness.remarks),
    ...feed(content, units, fullness.feeds),
    ...breakIn(content, units),
    heading("STOP AND LOOK WHEN"),
    ...content.stopSigns.flatMap(({ sign, likely, act }) =>
      paragraph("* ", `${sign.toUpperCase()}: ${fullness.causes ? `${likely}; ` : ""}${act}`),
    ),
    ...warnings(content, fullness.warnings),
    ...cautions(content, fullness.sentences),
    ...foot(content, paper),
  ];
}

function head({ job, customer, bit, hole }: CardContent, { units, shop, date }: CardPaper): string[] {
  const who = [customer, shop, date].filter((text) => text !== undefined && text !== "").join(", ");
  return [
    "=".repeat(CARD.columns),
    cutTo(`DRILLER'S CARD   ${oneLine(job)}`, CARD.columns),
    ...(who === "" ? [] : [cutTo(`For ${oneLine(who)}`, CARD.columns)]),
    ...paragraph(`Hole ${wholeFigure(hole, units)}   Bit: `, bit).slice(0, 2),
    "=".repeat(CARD.columns),
  ];
}

function notHere({ rows }: CardContent): string[] {
  if (rows.some(({ drilled }) => drilled)) return [];
  return paragraph("! ", "DO NOT RUN THIS BIT IN THIS HOLE. No bed of it is ground for a PDC bit.");
}

function casing({ casing: shoe, casingWords }: CardContent, units: UnitSystem): string[] {
  if (!shoe) return [];
  return paragraph("! ", `CASE TO ${wholeFigure(shoe, units)} BEFORE THIS BIT GOES IN. ${casingWords[0] ?? ""}`).slice(
    0,
    3,
  );
}

/** Two columns of depths, read down the left one first. */
function feed(content: CardContent, units: UnitSystem, most: number): string[] {
  const rows = feedRows(content, most);
  if (rows.length === 0) return [];
  const gauge = rows.some((row) => row.gauge);
  const cell = (cells: readonly string[]) =>
    `${cellOf(cells[0], 7, "right")} ${cellOf(cells[1], 11, "left")} ${cellOf(cells[2], 9, "right")}${gauge ? ` ${cellOf(cells[3], 9, "right")}` : ""}`;
  const printed = rows.map(({ depth, act, force, gauge: reading }) =>
    cell([
      bareFigure(depth, units),
      act.toUpperCase(),
      act === "let it hang" ? "" : bareFigure(force, units),
      bareFigure(reading, units),
    ]),
  );
  const head_ = cell([
    cardUnit("depth", units),
    "do",
    cardUnit("force", units),
    `gauge ${cardUnit("pressure", units)}`,
  ]);
  const half = Math.ceil(printed.length / 2);
  const beside = (left: string, right: string | undefined) =>
    right === undefined ? left : `${cellOf(left, 41, "left")}${right}`;
  return [
    heading("FEED BY DEPTH: WHAT THE RIG DOES SO THAT THE BIT CARRIES ITS WEIGHT"),
    beside(head_, printed.length > 1 ? head_ : undefined),
    ...printed.slice(0, half).map((left, k) => beside(left, printed[half + k]).trimEnd()),
    ...(gauge ? [] : ["No gauge readings: the rig's force for each unit of feed pressure was not given."]),
  ];
}

function breakIn({ breakIn: start }: CardContent, units: UnitSystem): string[] {
  if (!start) return [];
  // In ground too soft to set a weight the steps alone say how to begin.
  const weight =
    (start.weight.to ?? start.weight.value) < FEED_DEAD_BAND ? "" : `${wholeFigure(start.weight, units)}, `;
  const figures = `First ${wholeFigure(start.length, units)}: ${weight}${wholeFigure(start.rotarySpeed, units)}.`;
  return [heading("BREAK-IN"), ...paragraph("", `${figures} ${start.steps.join(" ")}`)];
}

function warnings({ warnings: told }: CardContent, most: number): string[] {
  const all = toldOnce(told);
  if (all.length === 0 || most === 0) return [];
  const more = all.length - most;
  return [
    heading("WATCH"),
    ...all.slice(0, most).flatMap((text) => paragraph("* ", text)),
    ...(more > 0 ? [`  and ${more} more on the summary.`] : []),
  ];
}

/** Warnings that differ only in the place in front of them, told once with all their places. */
function toldOnce(warnings: readonly string[]): string[] {
  const places = new Map<string, string[]>();
  for (const warning of warnings) {
    const at = warning.indexOf(": ");
    const message = warning.slice(at + 2);
    places.set(message, [...(places.get(message) ?? []), warning.slice(0, Math.max(at, 0))]);
  }
  return [...places].map(([message, where]) => `${where.join("; ")}: ${message}`);
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
