import * as z from "zod";
import { bitSchema } from "./schema/bit.ts";
import { groundSchema } from "./schema/ground.ts";
import { inquirySchema } from "./schema/inquiry.ts";
import { jobSchema } from "./schema/job.ts";
import { listsSchema } from "./schema/lists.ts";
import { overridesSchema } from "./schema/overrides.ts";
import { pricesSchema } from "./schema/prices.ts";

/** The mark by which a file is known to be a traveler. */
export const TRAVELER_FORMAT = "bitwright-traveler";

/**
 * The version of the document that this program writes; it reads this and all before [-].
 *
 * @source (d) one more with each step of the ladder in `migrate.ts`
 */
export const TRAVELER_VERSION = 1;

/** The traveler as it is written down. Fields it does not know are kept. */
export const travelerSchema = z
  .looseObject({
    format: z.literal(TRAVELER_FORMAT).meta({ description: "The mark of a traveler." }),
    version: z.literal(TRAVELER_VERSION).meta({ description: "Version of the document." }),
    job: jobSchema,
    inquiry: inquirySchema,
    ground: groundSchema,
    bit: bitSchema.optional(),
    prices: pricesSchema.optional(),
    overrides: overridesSchema.optional(),
    lists: listsSchema.optional(),
  })
  .meta({
    title: "Traveler",
    description:
      'The sheet that goes with a PDC drag bit from the phone call to its last foot. Quantities are written as a person types them, with their unit: "6 1/8 in", "155.6 mm", "3\' 6\\"", "500 gpm".',
  });

/** A traveler as entered: quantities as typed, fields it does not know kept. */
export type Traveler = z.input<typeof travelerSchema>;

/** A traveler whose every quantity has been read; nothing filled in and nothing held against anything else yet. */
export type ReadTraveler = z.output<typeof travelerSchema>;

/** The published description of the document, as JSON Schema (draft 2020-12). */
export function travelerJsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(travelerSchema, {
    io: "input",
    // The library leaves out the examples of fields that are read into something else; here they are what is typed in.
    override: ({ zodSchema, jsonSchema }) => {
      const examples = z.globalRegistry.get(zodSchema)?.examples;
      if (Array.isArray(examples) && examples.length > 0) jsonSchema.examples = examples;
    },
  });
  return { ...schema };
}
