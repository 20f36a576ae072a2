import { type SavedVersion, StoreFault } from "@bitwright/store";
import { problemsOf, travelerSchema } from "@bitwright/traveler";
import * as z from "zod";
import { badValues } from "../http/problem-details.ts";
import type { App, ServerContext } from "../server-context.ts";
import { noteSchema, refusals } from "./shapes.ts";
import { conflict, textOf } from "./traveler-texts.ts";

const { ground, lists, prices } = travelerSchema.shape;
const own = lists.unwrap().shape;

/** The lists of a shop, each by the schema that a traveler reads it with. */
const LISTS = {
  rigs: own.rigs.unwrap(),
  pumps: own.pumps.unwrap(),
  pipe: own.pipe.unwrap(),
  cutters: own.cutters.unwrap(),
  rocks: own.rocks.unwrap(),
  connections: own.connections.unwrap(),
  ground: z.array(z.looseObject({ name: z.string().min(1).max(200), ground })),
  prices: prices.unwrap(),
} as const satisfies Record<string, z.ZodType>;

type ListKind = keyof typeof LISTS;
const LIST_KINDS = Object.keys(LISTS) as ListKind[];

/** What a shop sets once. Fields it does not know are kept. */
const settingsSchema = z
  .looseObject({
    units: z.enum(["field", "metric"]).optional().meta({ description: "Units that the shop works in." }),
    shop: z.string().max(200).optional().meta({ description: "Name of the shop, for new travelers." }),
    currency: z.string().max(20).optional().meta({ description: "Currency of its prices." }),
  })
  .meta({ id: "ShopSettings" });

const keptSchema = z
  .object({
    version: z.int().min(0).meta({ description: "0 as long as nothing was saved." }),
    savedAt: z.string().optional().meta({ format: "date-time" }),
    savedBy: z.string().optional(),
    note: z.string().optional(),
    value: z.any().meta({ description: "As it was saved; empty as long as nothing was." }),
  })
  .meta({ id: "KeptPaper" });
const savingSchema = z.object({
  value: z.any().meta({ description: "The whole list or all settings." }),
  baseVersion: z.int().min(0).meta({ description: "The version it was made from, 0 for the first." }),
  note: noteSchema.optional(),
});

interface Kept {
  readonly kind: "list" | "setting";
  readonly name: string;
  readonly schema: z.ZodType;
  readonly empty: unknown;
}

/** Lists and settings of the shop, each saved as a whole and with every version. */
export function listAndSettingRoutes(app: App, context: ServerContext): void {
  const params = z.object({ kind: z.enum(LIST_KINDS) });
  const listOf = (kind: ListKind): Kept => ({
    kind: "list",
    name: kind,
    schema: LISTS[kind],
    empty: kind === "prices" ? {} : [],
  });
  const settings: Kept = { kind: "setting", name: "shop", schema: settingsSchema, empty: {} };
  const reading = (operationId: string, summary: string) => ({ tags: ["shop"], operationId, summary });

  app.get(
    "/api/lists/:kind",
    { schema: { ...reading("readList", "A list of the shop"), params, response: { 200: keptSchema, ...refusals } } },
    ({ params: { kind } }) => read(context, listOf(kind)),
  );
  app.put(
    "/api/lists/:kind",
    {
      schema: {
        ...reading("saveList", "Keeps the next version of a list"),
        params,
        body: savingSchema,
        response: { 200: keptSchema, ...refusals },
      },
    },
    ({ params: { kind }, body }) => save(context, listOf(kind), body),
  );
  app.get(
    "/api/settings",
    { schema: { ...reading("readSettings", "The settings of the shop"), response: { 200: keptSchema, ...refusals } } },
    () => read(context, settings),
  );
  app.put(
    "/api/settings",
    {
      schema: {
        ...reading("saveSettings", "Keeps the next version of the settings"),
        body: savingSchema,
        response: { 200: keptSchema, ...refusals },
      },
    },
    ({ body }) => save(context, settings, body),
  );
}

async function read({ store }: ServerContext, { kind, name, empty }: Kept) {
  try {
    return keptOf(await store.papers.read({ kind, name }));
  } catch (error) {
    if (error instanceof StoreFault && error.kind === "not-found") return { version: 0, value: empty };
    throw error;
  }
}

async function save({ store, who }: ServerContext, { kind, name, schema }: Kept, saving: z.infer<typeof savingSchema>) {
  const { value, baseVersion, note = "" } = saving;
  const checked = schema.safeParse(value);
  if (!checked.success) throw badValues(problemsOf(checked.error, value));
  const body = textOf(value);
  const outcome = await store.papers.save({ kind, name, body, basedOn: baseVersion, who, note });
  if (outcome.ok) return keptOf({ ...outcome.saved, body });
  const { refused, newest } = outcome;
  throw conflict(name, refused, newest, { yours: value, theirs: keptOf(newest) });
}

function keptOf({ version, savedAt, who, note, body }: SavedVersion) {
  return { version, savedAt, savedBy: who, note, value: JSON.parse(body) as unknown };
}
