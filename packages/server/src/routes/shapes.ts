import * as z from "zod";
import { fieldProblemSchema, problemSchema } from "../http/problem-details.ts";

/** A traveler as JSON. It is read by the traveler's own schema, which tells every fault; here it is any group of fields. */
export const documentSchema = z.looseObject({}).meta({ id: "TravelerDocument" });

export const noteSchema = z.string().max(2000).meta({ description: "What has changed and why." });
export const versionSchema = z.int().min(1);

/** Name of a traveler in the shop, as part of an address. */
export const idParams = z.object({ id: z.string().min(1).max(400).meta({ description: "Name in the shop." }) });
/** A traveler and one of its versions. */
export const versionParams = idParams.extend({ version: z.coerce.number().int().min(1) });
/** A version other than the newest. */
export const versionQuery = z.object({
  version: z.coerce.number().int().min(1).optional().meta({ description: "The newest where not given." }),
});
/** Units that sheets are printed in. */
export const unitsQuery = z.object({ units: z.enum(["field", "metric"]).default("field") });

/** Who saved a version and when. */
export const versionEntrySchema = z
  .object({
    version: versionSchema,
    savedAt: z.string().meta({ description: "In UTC.", format: "date-time" }),
    savedBy: z.string(),
    note: z.string(),
    program: z.string().meta({ description: "Name and version of the program that saved it." }),
    name: z.string().meta({ description: "Name of the job." }),
    sound: z.boolean().meta({ description: "Whether it could be worked up when it was saved." }),
  })
  .meta({ id: "TravelerVersion" });

/** How many remarks of each kind a workup carries. */
const findingsSchema = z
  .object({ stop: z.int(), caution: z.int(), note: z.int() })
  .meta({ description: "Remarks of the workup, counted as it was worked up for this save.", id: "FindingCounts" });

/** A traveler as it is kept. */
export const savedTravelerSchema = versionEntrySchema
  .extend({
    id: z.string().meta({ description: "Name in the shop, unlike any other." }),
    document: documentSchema,
    problems: z
      .array(fieldProblemSchema)
      .meta({ description: "What is in the way of working it up; empty where sound." }),
    findings: findingsSchema.optional(),
  })
  .meta({ id: "SavedTraveler" });

/** A save that was refused, kept whole beside the versions. */
const refusalSchema = z
  .object({
    number: z.int().min(1).meta({ description: "1 for the first refused save." }),
    basedOn: z.int().min(0),
    found: z.int().min(1).meta({ description: "The version that was there already." }),
    refusedAt: z.string().meta({ format: "date-time" }),
    savedBy: z.string(),
    note: z.string(),
  })
  .meta({ id: "Refusal" });

/** A refused save with its document. */
export const refusedSaveSchema = refusalSchema.extend({ document: documentSchema }).meta({ id: "RefusedSave" });

/** A save that met another: both are kept. */
export const conflictSchema = problemSchema
  .extend({ yours: documentSchema, theirs: savedTravelerSchema, refusal: refusalSchema })
  .meta({ id: "Conflict", description: "Somebody else has saved meanwhile; both versions are kept." });

/** What any address may answer when it does not do what was asked. */
export const refusals = {
  "4xx": { description: "Refused", content: { "application/problem+json": { schema: problemSchema } } },
  "5xx": { description: "Failed", content: { "application/problem+json": { schema: problemSchema } } },
} as const;

/** A reply that is a file and not JSON. */
export const fileReply = (description: string, ...types: string[]) => ({
  description,
  content: Object.fromEntries(types.map((type) => [type, { schema: z.any().meta({ description }) }])),
});
