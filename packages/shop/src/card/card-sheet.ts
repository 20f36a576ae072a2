import type { CardContent, CardRow } from "@bitwright/engine";
import { bedCells, bedHeads, GROUND } from "./bed-cells.ts";
import { bedLegend, blowingWords, byRateWords, insteadWords } from "./bed-words.ts";
import { cardUnit, wholeFigure } from "./card-figures.ts";
import { cutTo, firstSentences, oneLine } from "./card-lines.ts";
import type { CardPaper } from "./card-paper.ts";
import { breakInWords, casingOrder, gearWords, NO_GAUGE, notHereWords, toldOnce, whoWords } from "./card-words.ts";
import { feedRows } from "./feed-rows.ts";
import { jointCells, jointHeads } from "./joint-cells.ts";
import { leftOutWords } from "./left-out-words.ts";
import { SHORT_CAUTION, type SheetStep } from "./sheet-step.ts";

/** One bed of the printed card. */
interface SheetBed {
  readonly from: string;
  readonly to: string;
  readonly ground: string;
  /** Whether it is to be drilled with care. */
  readonly care: boolean;
  /** What to use instead, on a bed that is not for the bit; it then has no figures. */
  readonly instead?: string;
  readonly figures: readonly string[];
  readonly remarks: readonly string[];
}

/** The printed card as texts in their places: everything is worded here, and the typesetter only sets it. */
export interface CardSheet {
  readonly paper: "a4" | "us-letter";
  /** Size of the type [pt]. */
  readonly size: number;
  readonly job: string;
  readonly who: string;
  readonly hole: string;
  readonly bit: string;
  readonly alerts: readonly string[];
  readonly beds: {
    readonly heads: readonly string[];
    readonly units: readonly string[];
    readonly rows: readonly SheetBed[];
    readonly legend: string;
  };
  readonly joints: {
    readonly title: string;
    readonly heads: readonly string[];
    readonly rows: readonly (readonly string[])[];
    readonly note: string;
  };
  readonly gear: string;
  readonly start: string;
  readonly signs: readonly { readonly sign: string; readonly act: string }[];
  readonly watch: readonly string[];
  readonly safety: readonly { readonly topic: string; readonly text: string }[];
  readonly deferral: string;
  /** What did not fit; empty where all is said. */
  readonly leftOut: string;
  readonly standing: string;
  readonly program: string;
}

/** Lengths beyond which what a person typed is cut [characters]. */
const LENGTHS = { job: 90, who: 120, bit: 180, ground: 70, remark: 160, warning: 300 } as const;
/** Longer words than this may break anywhere [characters]. */
const LONG_WORD = 18;

/** The printed card of a job at one step of size and fullness. */
export function cardSheet(content: CardContent, paper: CardPaper, step: SheetStep): CardSheet {
  const { units } = paper;
  const rows = content.rows.slice(0, step.beds);
  const missing = content.rows.slice(rows.length);
  const warned = toldOnce(content.warnings);
  return {
    paper: units === "metric" ? "a4" : "us-letter",
    size: step.size,
    job: typed(content.job, LENGTHS.job),
    who: typed(whoWords(content, paper), LENGTHS.who),
    hole: wholeFigure(content.hole, units),
    bit: typed(content.bit, LENGTHS.bit),
    alerts: [
      notHereWords(content),
      casingOrder(content, units, step.remarks > 0),
      missing.length === 0
        ? undefined
        : `BELOW ${wholeFigure(missing[0].from, units)} THIS CARD SAYS NOTHING: ${missing.length} more beds do not fit. Read the phone page.`,
    ].filter((words) => words !== undefined),
    beds: bedsOf(content, rows, paper, step),
    joints: jointsOf(content, paper, step),
    gear: gearWords(content, units, true) ?? "",
    start: breakInWords(content, units) ?? "",
    signs: content.stopSigns.map(({ sign, likely, act }) => ({
      sign: sign.toUpperCase(),
      act: step.causes ? `${likely}; ${act}` : act,
    })),
    watch: warned.slice(0, step.warnings).map((text) => typed(text, LENGTHS.warning)),
    safety: content.cautions.map(({ topic, text }) => ({
      topic: topic.toUpperCase(),
      text: firstSentences(text, step.sentences, SHORT_CAUTION),
    })),
    deferral: [...new Set(content.cautions.map(({ deferral }) => deferral))].join(" "),
    leftOut: leftOutWords(content, step),
    standing: content.standing,
    program: `${oneLine(paper.program)}, ${units} units`,
  };
}

function bedsOf(content: CardContent, rows: readonly CardRow[], paper: CardPaper, step: SheetStep): CardSheet["beds"] {
  const { units, blownWith } = paper;
  const pumped = blownWith === undefined;
  const [heads, under] = bedHeads(units, pumped);
  // A column without a head says nothing on this job.
  const kept = (cells: readonly string[]) => cells.filter((_, k) => heads[k] !== "");
  const legend = [
    ...bedLegend(content, paper, step.remarks === 0),
    ...byRateWords(content),
    ...(blownWith ? [blowingWords(blownWith, units)] : []),
  ];
  return {
    heads: kept(heads),
    units: kept(under),
    rows: rows.map((row) => {
      const [from, to] = bedCells(row, units, pumped);
      return {
        from,
        to,
        ground: typed(row.ground, LENGTHS.ground),
        care: row.drilled && row.verdict !== "fit",
        ...(row.drilled ? {} : { instead: typed(insteadWords(row), LENGTHS.remark) }),
        figures: row.drilled ? kept(bedCells(row, units, pumped)).slice(GROUND + 1) : [],
        remarks: row.drilled ? row.remarks.slice(0, step.remarks).map((text) => typed(text, LENGTHS.remark)) : [],
      };
    }),
    legend: legend.join(" "),
  };
}

function jointsOf(content: CardContent, { units }: CardPaper, step: SheetStep): CardSheet["joints"] {
  const joints = feedRows(content, step.joints);
  const gauge = joints.some((joint) => joint.gauge);
  const reading = gauge ? `; GAUGE, ${cardUnit("pressure", units)}` : "";
  return {
    title: `JOINT BY JOINT: ${cardUnit("force", units)} WANTED, GIVEN BY THE STRING, DONE BY THE RIG${reading}`,
    heads: jointHeads(units, gauge),
    rows: joints.map((joint) => jointCells(joint, units, gauge)),
    note: joints.length > 0 && !gauge ? NO_GAUGE : "",
  };
}

/** What a person typed: on one line, cut where it is very long, its long words free to break. */
function typed(text: string, length: number): string {
  return cutTo(oneLine(text), length).replace(/\S+/gu, (word) => {
    const marks = [...word];
    if (marks.length <= LONG_WORD) return word;
    return marks.map((mark, k) => (k > 0 && k % (LONG_WORD / 2) === 0 ? `\u200b${mark}` : mark)).join("");
  });
}
