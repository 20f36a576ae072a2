import { type Band, commonPractice, type Finding, gravestFirst, type Source } from "../quantity/index.ts";
import type { BreakIn } from "./break-in.ts";
import type { CasingPoint } from "./casing-point.ts";
import type { BedFit } from "./fit-of-bed.ts";
import { AGREEING_RATIO, type RunningPoint } from "./running-point.ts";
import type { SafetyCaution } from "./safety-cautions.ts";
import type { StopSign } from "./stop-signs.ts";
import { VERDICT_WORDS } from "./verdict.ts";

/** What kind of quantity a figure of the card is; decides the unit it is printed in. */
export type CardFigureKind = "depth" | "diameter" | "flow" | "force" | "length" | "pressure" | "rate" | "rotary speed";

/** A figure of the card, or a range of it. */
export interface CardFigure {
  readonly kind: CardFigureKind;
  /** The figure, or the low end of its range [SI unit of the kind]. */
  readonly value: number;
  /** The high end where it is a range [SI unit of the kind]. */
  readonly to?: number;
}

/** What the rig has to do with its feed at one depth. */
export interface CardFeedInput {
  /** Depth it holds for [m]. */
  readonly depth: number;
  /** Push of the rig on the string; negative where it holds back [N]. */
  readonly feedForce: number;
  /** Reading of the feed gauge for it, where the rig's gauge factor is known [Pa]. */
  readonly gaugeReading?: number;
}

/** The feed at one depth as the card prints it. */
export interface CardFeed {
  readonly depth: CardFigure;
  readonly act: "hold back" | "let it hang" | "pull down";
  readonly force: CardFigure;
  readonly gauge?: CardFigure;
}

/** What is known of one bed when the card is written. */
export interface CardBedInput {
  readonly fit: BedFit;
  /** How to run the bit there; absent in ground that is not for the bit. */
  readonly run?: RunningPoint;
  /** Rate to expect over the bands of the ground [m/s]. */
  readonly rate?: Band;
  /** Rate at which the chips of this bed fill the return as far as they may [m/s]. */
  readonly rateCeiling?: number;
  /** Feed at depths within the bed, from the top down. */
  readonly feed?: readonly CardFeedInput[];
}

/** What the card is made from. */
export interface CardContentInput {
  /** Name of the job or well. */
  readonly job: string;
  readonly customer: string;
  /** The bit in one line, in the words of the shop. */
  readonly bit: string;
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  /** Flow to run [m³/s]. */
  readonly flow: number;
  /** From the top down. */
  readonly beds: readonly CardBedInput[];
  readonly casing: CasingPoint;
  /** How to start the bit; absent on a job where no bed is for it. */
  readonly breakIn?: BreakIn;
  readonly stopSigns: readonly StopSign[];
  readonly cautions: readonly SafetyCaution[];
  /** Findings of the whole job; stops and cautions among them go on the card. */
  readonly findings: readonly Finding[];
}

/** One bed on the card. */
export interface CardRow {
  readonly ground: string;
  readonly from: CardFigure;
  readonly to: CardFigure;
  /** `fit`, `fit with care` or `unfit`. */
  readonly verdict: string;
  /** Whether the bit of the card drills this bed. */
  readonly drilled: boolean;
  /** From the weight to start with to the weight not to pass: the computed one, at most a quarter over the rule of thumb. */
  readonly weight?: CardFigure;
  readonly rotarySpeed?: CardFigure;
  readonly flow?: CardFigure;
  readonly rate?: CardFigure;
  /** The rate that the flow cleans. */
  readonly rateCeiling?: CardFigure;
  readonly practiceWeight?: CardFigure;
  readonly practiceSpeed?: CardFigure;
  readonly feed: readonly CardFeed[];
  readonly remarks: readonly string[];
}

/** How to start the bit, as the card prints it. */
export interface CardBreakIn {
  readonly length: CardFigure;
  readonly weight: CardFigure;
  readonly rotarySpeed: CardFigure;
  readonly steps: readonly string[];
}

/** The driller's card as content: figures in SI with their kinds, texts in plain words. Another package sets it. */
export interface CardContent {
  readonly job: string;
  readonly customer: string;
  readonly bit: string;
  readonly hole: CardFigure;
  /** Least depth of the casing shoe before the bit goes in. */
  readonly casing?: CardFigure;
  readonly casingWords: readonly string[];
  readonly rows: readonly CardRow[];
  readonly breakIn?: CardBreakIn;
  readonly stopSigns: readonly StopSign[];
  readonly cautions: readonly SafetyCaution[];
  readonly warnings: readonly string[];
  /** What the card is and is not. */
  readonly standing: string;
  readonly sources: readonly Source[];
}

/**
 * Push on the string under which the rig neither pushes nor holds back worth a word [N].
 *
 * @source (c) common practice, no source: about 100 lbf, under what a feed gauge shows
 */
export const FEED_DEAD_BAND = 445;

const STANDING =
  "An estimate from the ground as it was logged, never a permission. The driller's judgement and the gauges rule.";

/**
 * The content of the driller's card: each bed with how to run it, break-in, stop signs and cautions.
 *
 * @source (c) common practice, no source, for what a card holds; each figure keeps the source of its own working
 */
export function cardContent(input: CardContentInput): CardContent {
  const { job, customer, bit, holeDiameter, beds, casing, breakIn, stopSigns, cautions, findings } = input;
  const warned = gravestFirst(findings).filter(({ severity }) => severity !== "note");
  return {
    job,
    customer,
    bit,
    hole: { kind: "diameter", value: holeDiameter },
    ...(casing.depth === undefined ? {} : { casing: { kind: "depth", value: casing.depth } as const }),
    casingWords: casing.reasons.map(({ sentence }) => sentence),
    rows: beds.map((bed) => cardRow(bed, input)),
    ...(breakIn ? { breakIn: cardBreakIn(breakIn) } : {}),
    stopSigns,
    cautions,
    warnings: [...new Set(warned.map(({ where, message }) => `${where}: ${message}`))],
    standing: STANDING,
    sources: [commonPractice()],
  };
}

function cardRow({ fit, run, rate, rateCeiling, feed }: CardBedInput, { casing, flow }: CardContentInput): CardRow {
  const { bed, verdict, cautions } = fit;
  const place = { ground: bed.name, from: depth(bed.top), to: depth(bed.bottom), verdict: VERDICT_WORDS[verdict] };
  const drilled =
    verdict !== "unfit" && casing.bitIntervals.some(({ top, bottom }) => bed.top < bottom && bed.bottom > top);
  if (!drilled) {
    const others = fit.insteadUse.map(({ tool }) => tool).join(", ");
    const with_ = others === "" ? "another tool" : others;
    return { ...place, drilled, feed: [], remarks: [`Not with this bit. Use: ${with_}.`] };
  }
  return {
    ...place,
    drilled,
    ...(run ? figuresOf(run) : {}),
    flow: { kind: "flow", value: flow },
    ...(rate ? { rate: { kind: "rate", value: rate.low, to: rate.high } as const } : {}),
    ...(rateCeiling === undefined ? {} : { rateCeiling: { kind: "rate", value: rateCeiling } as const }),
    feed: (feed ?? []).map(cardFeed),
    remarks: [...cautions],
  };
}

function figuresOf(run: RunningPoint): Pick<CardRow, "practiceSpeed" | "practiceWeight" | "rotarySpeed" | "weight"> {
  const { startWeight, computed, practice } = run;
  // The driller is never sent further past the rule of thumb than the rule itself is coarse, whatever the model allows.
  const weightCeiling = Math.min(run.weightCeiling, AGREEING_RATIO * practice.weight);
  return {
    weight: { kind: "force", value: startWeight, ...(weightCeiling > startWeight ? { to: weightCeiling } : {}) },
    rotarySpeed: { kind: "rotary speed", value: computed.rotarySpeed },
    practiceWeight: { kind: "force", value: practice.weight },
    practiceSpeed: { kind: "rotary speed", value: practice.rotarySpeed },
  };
}

function cardFeed({ depth: at, feedForce, gaugeReading }: CardFeedInput): CardFeed {
  const still = Math.abs(feedForce) < FEED_DEAD_BAND;
  return {
    depth: depth(at),
    act: still ? "let it hang" : feedForce > 0 ? "pull down" : "hold back",
    force: { kind: "force", value: Math.abs(feedForce) },
    ...(gaugeReading === undefined ? {} : { gauge: { kind: "pressure", value: gaugeReading } as const }),
  };
}

function cardBreakIn({ length, weight, rotarySpeed, steps }: BreakIn): CardBreakIn {
  return {
    length: { kind: "length", value: length },
    weight: { kind: "force", value: weight.low, to: weight.high },
    rotarySpeed: { kind: "rotary speed", value: rotarySpeed.low, to: rotarySpeed.high },
    steps,
  };
}

function depth(value: number): CardFigure {
  return { kind: "depth", value };
}
