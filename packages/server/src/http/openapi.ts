import { TRAVELER_FORMAT, travelerJsonSchema } from "@bitwright/traveler";
import swagger from "@fastify/swagger";
import { jsonSchemaTransform, jsonSchemaTransformObject } from "fastify-type-provider-zod";
import type { App } from "../server-context.ts";

/** Describes every address under `/api` from the very schemas that requests are held to. */
export async function describeApi(app: App, program: string): Promise<void> {
  await app.register(swagger, {
    openapi: {
      openapi: "3.1.0",
      info: {
        title: "Bitwright",
        version: program.split(" ").at(-1) ?? "",
        description:
          "Travelers of PDC drag bits with every version, worked up by the server itself. Figures are in SI; quantities in a traveler are written as people type them. Estimates, never a permission: local code, licensed practice and the driller's judgement come first.",
        license: { name: "MIT", identifier: "MIT" },
      },
      servers: [{ url: "/" }],
      tags: [
        { name: "about", description: "The program itself." },
        { name: "travelers", description: "Travelers, with every version." },
        { name: "attachments", description: "Files that go with a traveler." },
        { name: "workups", description: "What the server reckons from a traveler." },
        { name: "studies", description: "Long looks at a document, on threads of their own." },
        { name: "shop", description: "Lists, settings, and the shop as a whole." },
      ],
    },
    transform: jsonSchemaTransform,
    transformObject: (described) => withTraveler(jsonSchemaTransformObject(described)),
  });
}

type Schemas = Record<string, unknown>;

/**
 * The traveler as its own package publishes it, beside the documents that may still be half filled. Schemas that nothing
 * refers to, twins that the library makes of each, are left out.
 */
function withTraveler(described: ReturnType<typeof jsonSchemaTransformObject>) {
  const { $schema: _, ...traveler } = travelerJsonSchema();
  const { components, paths } = described as { components?: { schemas?: Schemas }; paths?: unknown };
  const schemas: Schemas = {
    ...components?.schemas,
    Traveler: traveler,
    TravelerDocument: HALF_FILLED,
    TravelerDocumentInput: HALF_FILLED,
  };
  const used = new Set(namedIn(paths));
  for (const name of used) for (const other of namedIn(schemas[name])) used.add(other);
  const kept = Object.fromEntries(Object.entries(schemas).filter(([name]) => used.has(name)));
  return { ...described, components: { ...components, schemas: kept } } as typeof described;
}

const HALF_FILLED = {
  description: "A traveler. It may be half filled as long as it carries its mark and its version.",
  anyOf: [
    { $ref: "#/components/schemas/Traveler" },
    {
      type: "object",
      required: ["format", "version"],
      properties: { format: { const: TRAVELER_FORMAT }, version: { type: "integer", minimum: 0 } },
    },
  ],
};

/** Names of the schemas that a part of a description refers to. */
function namedIn(part: unknown): string[] {
  const refs = JSON.stringify(part ?? null).matchAll(/"#\/components\/schemas\/([^"]+)"/g);
  return [...refs].map(([, name]) => name ?? "");
}
