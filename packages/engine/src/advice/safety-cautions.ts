import { commonPractice, readIn, recalledFrom, type Source } from "../quantity/index.ts";
import { type AdvisedFluid, isGasFluid } from "./drilling-fluid.ts";
import type { BedFit } from "./fit-of-bed.ts";

/** What a caution speaks of. */
export type CautionTopic =
  | "rotating string"
  | "overhead lines"
  | "buried services"
  | "silica dust"
  | "pressure"
  | "lifting"
  | "permits and sealing"
  | "flowing water and gas"
  | "people"
  | "brazing"
  | "braze heat"
  | "grinding dust"
  | "acid and presses";

/** One caution, with the words that leave the last say to code and licence. */
export interface SafetyCaution {
  readonly topic: CautionTopic;
  readonly place: "rig" | "shop";
  readonly text: string;
  readonly deferral: string;
  readonly source: Source;
}

/** What the cautions are picked by. */
export interface SafetyCautionsInput {
  /** Fits of the beds of the whole hole. */
  readonly fits: readonly BedFit[];
  readonly fluid: AdvisedFluid;
  /** Whether the well may flow by itself, or gas is known nearby. */
  readonly mayFlow: boolean;
  /** Whether the sheet goes to the rig, the shop, or both. */
  readonly places: readonly ("rig" | "shop")[];
}

/** Stands beside every caution. */
export const CAUTION_DEFERRAL = "Follow local code and licensed practice.";

interface CautionRow {
  readonly topic: CautionTopic;
  readonly place: "rig" | "shop";
  readonly text: string;
  readonly source?: Source;
  readonly when?: (input: SafetyCautionsInput) => boolean;
}

const SILICA = readIn("29 CFR 1926.1153 and 1910.1053: limit 50 µg/m³, action level 25 µg/m³");

const ROWS: readonly CautionRow[] = [
  {
    topic: "rotating string",
    place: "rig",
    text: "Nothing loose on sleeves or hair, guards in place, rotation stopped and locked before a hand goes near string or tongs. Never break a bit out by hand with the rotary in reverse.",
  },
  {
    topic: "overhead lines",
    place: "rig",
    text: "Look up before the mast goes up. Keep at least 10 ft (3 m) from lines to 50 kV and more from higher ones; mast down before the rig moves.",
    source: recalledFrom("29 CFR 1926.1408"),
  },
  {
    topic: "buried services",
    place: "rig",
    text: "Have cables, gas and water lines located and marked before the first foot.",
  },
  {
    topic: "silica dust",
    place: "rig",
    text: "This ground holds quartz, and drilling on gas raises its dust. Wet it or collect it, stand upwind, wear the mask that a measurement calls for.",
    source: SILICA,
    when: (input) => isGasFluid(input.fluid) && holdsQuartz(input.fits),
  },
  {
    topic: "silica dust",
    place: "rig",
    text: "This ground holds quartz. Fluid keeps the dust down while drilling; keep dried cuttings wet when they are moved or swept.",
    source: SILICA,
    when: (input) => !isGasFluid(input.fluid) && holdsQuartz(input.fits),
  },
  {
    topic: "pressure",
    place: "rig",
    text: "Tie hoses with whip checks, bleed the line before it is opened, and keep hands and faces away from the ports in a flow test.",
  },
  {
    topic: "lifting",
    place: "rig",
    text: "Lift the bit with a rated plug and tackle, nobody under it: these bits weigh about 30 to 150 lb (14 to 68 kg).",
    source: commonPractice("a bit of these sizes weighs 30 to 150 lb"),
  },
  {
    topic: "permits and sealing",
    place: "rig",
    text: "Permits, the licensed driller, casing depth, grout seal and the closing of a failed bore are set by law. Nothing on this sheet is a permission.",
  },
  {
    topic: "flowing water and gas",
    place: "rig",
    text: "Water or gas may come up this hole by itself. Agree the plan, the heavier fluid and the way out before that bed is opened. Control of a flowing well is beyond this sheet.",
    when: ({ mayFlow, fits }) => mayFlow || fits.some(({ bed }) => bed.hazards.includes("gas")),
  },
  {
    topic: "people",
    place: "rig",
    text: "Hearing protection by the rig and compressor, fuel away from heat, shade and water in heat, and nobody works alone.",
  },
  {
    topic: "brazing",
    place: "shop",
    text: "Use filler without cadmium. Old joints may hold cadmium or zinc: take it that they do, and draw the fume away. Flux holds fluorides. Never quench a hot bit.",
    source: recalledFrom("29 CFR 1910.1027 for cadmium"),
  },
  {
    topic: "braze heat",
    place: "shop",
    text: "Diamond in a cutter is harmed from about 700 °C. Measure the heat at the joint and keep it off the diamond.",
  },
  {
    topic: "grinding dust",
    place: "shop",
    text: "Dust of diamond, carbide and cobalt harms lungs and skin: grind wet or under extraction.",
  },
  {
    topic: "acid and presses",
    place: "shop",
    text: "Leaching acids and diamond presses belong to specialist plants. Buy leached cutters; do not leach them here.",
  },
  {
    topic: "lifting",
    place: "shop",
    text: "Lift bits with a rated plug and tackle, and chock them before work starts.",
  },
];

/**
 * The usual cautions of the trade for this job, each beside words that leave the last say to local code and licensed
 * practice.
 *
 * @source (c) common practice, no source; rules of law where a caution names one
 */
export function safetyCautions(input: SafetyCautionsInput): readonly SafetyCaution[] {
  return ROWS.filter(({ place, when }) => input.places.includes(place) && (when === undefined || when(input))).map(
    ({ topic, place, text, source }) => ({
      topic,
      place,
      text,
      deferral: CAUTION_DEFERRAL,
      source: source ?? commonPractice(),
    }),
  );
}

function holdsQuartz(fits: readonly BedFit[]): boolean {
  return fits.some(({ bed, kind }) => bed.hazards.includes("silica-dust") || QUARTZ_KINDS.has(kind));
}

const QUARTZ_KINDS: ReadonlySet<BedFit["kind"]> = new Set(["chert", "crystalline", "gravel", "sand", "sandstone"]);
