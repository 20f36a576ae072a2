import type { CardContent, CardFigure, CardRow } from "@bitwright/engine";
import type { UnitSystem } from "@bitwright/traveler";
import { bareFigure, cardUnit, wholeFigure } from "./card-figures.ts";
import { CARD, cellOf, cutTo, firstSentences, heading, oneLine, paragraph } from "./card-lines.ts";
import { feedRows } from "./feed-rows.ts";

/** What the card says of itself besides its content. */
export interface CardPaper {
  readonly units: UnitSystem;
  readonly shop?: string;
  readonly date?: string;
  /** Name and version of the program that wrote it. */
  readonly program: string;
}

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
    ...casing(content, units),
    heading("HOW TO RUN IT, BED BY BED"),
    ...beds(content, units, fullness.remarks),
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

function casing({ casing: shoe, casingWords }: CardContent, units: UnitSystem): string[] {
  if (!shoe) return [];
  return paragraph("! ", `CASE TO ${wholeFigure(shoe, units)} BEFORE THIS BIT GOES IN. ${casingWords[0] ?? ""}`).slice(
    0,
    3,
  );
}

const GROUND_COLUMNS = 21;
/** Columns of the table of beds: width and side. */
const BED_COLUMNS = [
  [6, "right"],
  [6, "right"],
  [GROUND_COLUMNS, "left"],
  [15, "right"],
  [6, "right"],
  [7, "right"],
  [9, "right"],
] as const;

function bedLine(cells: readonly string[]): string {
  return cells
    .map((cell, k) => cellOf(cell, BED_COLUMNS[k][0], BED_COLUMNS[k][1]))
    .join(" ")
    .trimEnd();
}

function beds({ rows }: CardContent, units: UnitSystem, remarks: number): string[] {
  const length = cardUnit("depth", units);
  return [
    bedLine(["FROM", "TO", "GROUND", "WEIGHT ON BIT", "TURN", "FLOW", "EXPECT"]),
    bedLine([
      length,
      length,
      "",
      `${cardUnit("force", units)}, with pipe`,
      "rpm",
      cardUnit("flow", units),
      cardUnit("rate", units),
    ]),
    ...rows.flatMap((row) => [
      ...bedRow(row, units),
      ...row.remarks.slice(0, row.drilled ? remarks : 0).flatMap(remark),
    ]),
    ...thumb(rows, units),
  ];
}

function bedRow(row: CardRow, units: UnitSystem): string[] {
  const depths = [bareFigure(row.from, units), bareFigure(row.to, units)];
  const ground = oneLine(row.ground);
  if (!row.drilled) {
    const why = oneLine(row.remarks[0] ?? "").replace(/^Not with this bit\.\s*/, "");
    return paragraph(bedLine([...depths, ""]).padEnd(14), `${ground}: NOT THIS BIT. ${why}`);
  }
  const [first, ...more] = paragraph("", row.verdict === "fit" ? ground : `! ${ground}`, GROUND_COLUMNS);
  const figures = [row.weight, row.rotarySpeed, row.flow, row.rate].map((figure) => bareFigure(figure, units));
  return [bedLine([...depths, first, ...figures]), ...more.map((line) => bedLine(["", "", line]))];
}

function remark(text: string): string[] {
  return paragraph(`${" ".repeat(14)}- `, text);
}

/** The rule of thumb beside the computed figures, as a range over the beds. */
function thumb(rows: readonly CardRow[], units: UnitSystem): string[] {
  const over = (figures: readonly (CardFigure | undefined)[]) => {
    const known = figures.filter((figure) => figure !== undefined);
    if (known.length === 0) return "";
    const values = known.flatMap(({ value, to }) => [value, to ?? value]);
    return wholeFigure({ kind: known[0].kind, value: Math.min(...values), to: Math.max(...values) }, units);
  };
  const weight = over(rows.map(({ practiceWeight }) => practiceWeight));
  const speed = over(rows.map(({ practiceSpeed }) => practiceSpeed));
  const care = rows.some(({ drilled, verdict }) => drilled && verdict !== "fit");
  return [
    ...(weight && speed ? [`Rule of thumb (common practice): ${weight} at ${speed}.`] : []),
    ...(care ? ["! fit with care: stay at the low end, watch the signs below."] : []),
  ];
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
  const figures = `First ${wholeFigure(start.length, units)}: ${wholeFigure(start.weight, units)}, ${wholeFigure(start.rotarySpeed, units)}.`;
  return [heading("BREAK-IN"), ...paragraph("", `${figures} ${start.steps.join(" ")}`)];
}

function warnings({ warnings: all }: CardContent, most: number): string[] {
  if (all.length === 0 || most === 0) return [];
  const more = all.length - most;
  return [
    heading("WATCH"),
    ...all.slice(0, most).flatMap((text) => paragraph("* ", text)),
    ...(more > 0 ? [`  and ${more} more on the summary.`] : []),
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
