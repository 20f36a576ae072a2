import { type Band, commonPractice, type Finding, gravestFirst, type Source } from "../quantity/index.ts";
import type { BreakIn } from "./break-in.ts";
import { type CardFeed, type CardFeedInput, cardFeed } from "./card-feed.ts";
import { type CardFigure, cardDepth } from "./card-figure.ts";
import {
  type CardFuel,
  type CardFuelInput,
  type CardMakeUp,
  type CardMakeUpInput,
  cardFuel,
  cardMakeUp,
} from "./card-gear.ts";
import type { CasingPoint } from "./casing-point.ts";
import type { BedFit } from "./fit-of-bed.ts";
import { AGREEING_RATIO, type RunningPoint } from "./running-point.ts";
import type { SafetyCaution } from "./safety-cautions.ts";
import type { StopSign } from "./stop-signs.ts";
import { VERDICT_WORDS } from "./verdict.ts";

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
  /** How hard to make the bit up, where a list says so. */
  readonly makeUp?: CardMakeUpInput;
  readonly fuel?: CardFuelInput;
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
  readonly makeUp?: CardMakeUp;
  readonly fuel?: CardFuel;
  readonly breakIn?: CardBreakIn;
  readonly stopSigns: readonly StopSign[];
  readonly cautions: readonly SafetyCaution[];
  readonly warnings: readonly string[];
  /** What the card is and is not. */
  readonly standing: string;
  readonly sources: readonly Source[];
}

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
    ...(input.makeUp ? { makeUp: cardMakeUp(input.makeUp) } : {}),
    ...(input.fuel ? { fuel: cardFuel(input.fuel) } : {}),
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
  const place = {
    ground: bed.name,
    from: cardDepth(bed.top),
    to: cardDepth(bed.bottom),
    verdict: VERDICT_WORDS[verdict],
  };
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

function cardBreakIn({ length, weight, rotarySpeed, steps }: BreakIn): CardBreakIn {
  return {
    length: { kind: "length", value: length },
    weight: { kind: "force", value: weight.low, to: weight.high },
    rotarySpeed: { kind: "rotary speed", value: rotarySpeed.low, to: rotarySpeed.high },
    steps,
  };
}
