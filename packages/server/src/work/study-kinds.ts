import { CUTTER_CATALOG, PORT_GOALS, tradeBevels } from "@bitwright/engine";
import * as z from "zod";

/** Numbers up to which a study may be asked, the same as on the command line [-]. */
const MOST = {
  candidates: 10_000_000,
  holes: 100_000,
  lives: 10_000,
  samples: 100_000,
  speeds: 200,
  wings: 16,
} as const;
const LARGEST_FACTOR = 1000;

const whole = (least: number, most: number, what: string) =>
  z.int().min(least).max(most).optional().meta({ description: what });
const seed = whole(0, Number.MAX_SAFE_INTEGER, "The same seed gives the same draws.");
const bed = z.string().min(1).max(200).optional().meta({
  description: "Only this bed: its number among those the bit drills, its name or a part of it.",
});
const units = z.enum(["field", "metric"]).optional().meta({ description: "Units of the sheets; the result is in SI." });
const typed = (what: string, example: string) =>
  z
    .string()
    .min(1)
    .max(60)
    .meta({ description: what, examples: [example] });

/** What each kind of study may be asked; every option may be left out. */
export const STUDY_OPTIONS = {
  layout: z.strictObject({
    units,
    measure: z.enum(["area", "work", "wear"]).optional().meta({ description: "What is to be even over the cutters." }),
    candidates: whole(1, MOST.candidates, "Layouts to try."),
    seed,
  }),
  life: z.strictObject({
    units,
    holes: whole(1, MOST.holes, "Most holes through this ground."),
    wearFactor: z
      .number()
      .min(1 / LARGEST_FACTOR)
      .max(LARGEST_FACTOR)
      .optional()
      .meta({ description: "How many times faster than usual the bits come back worn." }),
    samples: whole(1, MOST.lives, "Lives to draw over what is not known; none where not given."),
    seed,
  }),
  bands: z.strictObject({ units, bed, samples: whole(1, MOST.samples, "Draws for each bed."), seed }),
  map: z.strictObject({
    units,
    bed,
    avoid: z
      .array(z.strictObject({ from: typed("Slower speed.", "84 rpm"), to: typed("Faster speed.", "92 rpm") }))
      .max(20)
      .optional()
      .meta({ description: "Rotary speeds to keep out of." }),
  }),
  rank: z.strictObject({
    units,
    cutter: z
      .array(z.enum(CUTTER_CATALOG.map(({ code }) => code)))
      .min(1)
      .optional()
      .meta({ description: "Only these cutters." }),
    wings: z
      .array(z.int().min(1).max(MOST.wings))
      .min(1)
      .max(MOST.wings)
      .optional()
      .meta({ description: "Only so many wings." }),
    bevel: z
      .array(z.literal(tradeBevels().map(({ angle }) => Math.round((angle * 180) / Math.PI))))
      .min(1)
      .optional()
      .meta({ description: "Only these bevels, in degrees." }),
    body: z
      .array(z.enum(["steel", "matrix"]))
      .min(1)
      .optional()
      .meta({ description: "Only these bodies." }),
    all: z.boolean().optional().meta({ description: "Looks at every combination." }),
  }),
  stability: z.strictObject({ units, bed, speeds: whole(2, MOST.speeds, "Rotary speeds to try in each bed.") }),
  depth: z.strictObject({ units }),
  flow: z.strictObject({
    units,
    ports: z
      .strictObject({ count: z.int().min(1).max(24), diameter: typed("Diameter of one port.", "1/2 in") })
      .optional()
      .meta({ description: "Other ports." }),
    pumps: whole(1, 6, "So many pumps of this kind side by side."),
    flow: typed("Flow asked of all pumps together.", "180 gpm").optional(),
  }),
  ports: z.strictObject({
    units,
    goal: z.enum(PORT_GOALS).optional().meta({ description: "What the ports are to be best for." }),
    sets: whole(1, 1000, "Most sets to give."),
  }),
} as const;

/** Name of a kind of study. */
export type StudyKind = keyof typeof STUDY_OPTIONS;

/** The options of a kind of study. */
export type StudyOptions<Kind extends StudyKind> = z.infer<(typeof STUDY_OPTIONS)[Kind]>;

/** A kind of study with its options. */
export type AskedStudy = { readonly [Kind in StudyKind]: { kind: Kind; options: StudyOptions<Kind> } }[StudyKind];

/** Names of all kinds. */
export const STUDY_KINDS = Object.keys(STUDY_OPTIONS) as readonly StudyKind[];
