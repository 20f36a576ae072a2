import { describe, expect, it } from "vitest";
import { travelerJsonSchema } from "./traveler-schema.ts";

type Node = Readonly<Record<string, unknown>>;

/** Every field of the published schema with its path. */
function fieldsOf(node: Node, path = ""): [string, Node][] {
  const properties = Object.entries((node.properties ?? {}) as Record<string, Node>);
  const own = properties.flatMap(([name, child]): [string, Node][] => {
    const at = `${path}.${name}`;
    return [[at, child], ...fieldsOf(child, at)];
  });
  const items = node.items ? fieldsOf(node.items as Node, `${path}[]`) : [];
  return [...own, ...items];
}

describe("the published schema", () => {
  const schema = travelerJsonSchema();
  const fields = new Map(fieldsOf(schema));

  it("is draft 2020-12 and names the mark and the version", () => {
    expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(fields.get(".format")).toMatchObject({ const: "bitwright-traveler" });
    expect(fields.get(".version")).toMatchObject({ const: 1 });
  });

  it("says in words what every field is", () => {
    const quantityParts = /\.(value|unit|low|mid|high|centre|gauge)$/;
    const silent = [...fields].filter(([path, node]) => !node.description && !quantityParts.test(path));
    expect(silent.map(([path]) => path)).toEqual([]);
  });

  it("shows how quantities are written", () => {
    expect(fields.get(".inquiry.holes[].diameter")).toMatchObject({
      description: "Nominal diameter. From 0.5 in to 60 in.",
      examples: ["6 1/8 in", "155.6 mm"],
      anyOf: [{ type: "string" }, { type: "object", required: ["value", "unit"] }],
    });
    expect(fields.get(".inquiry.fluid.kind")).toMatchObject({ enum: expect.arrayContaining(["water", "air"]) });
  });

  it("asks only for what cannot be assumed", () => {
    expect(schema.required).toEqual(["format", "version", "job", "inquiry", "ground"]);
    expect(fields.get(".inquiry")?.required).toEqual(["holes"]);
    expect(fields.get(".inquiry.holes")).toMatchObject({ items: { required: ["diameter"] } });
  });

  it("lets unknown fields pass everywhere", () => {
    const closed = [...fields].filter(([, node]) => node.additionalProperties === false);
    expect(closed).toEqual([]);
  });
});
