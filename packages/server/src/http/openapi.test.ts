import { readFileSync } from "node:fs";
import { travelerJsonSchema } from "@bitwright/traveler";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { projectFile } from "../../../../tests/support/command.ts";
import { type ServerOfTest, serverOfTest } from "../../../../tests/support/server-of-test.ts";

interface Operation {
  readonly operationId: string;
  readonly summary: string;
  readonly tags: readonly string[];
  readonly parameters?: readonly {
    readonly name: string;
    readonly in: string;
    readonly required?: boolean;
    readonly schema: object;
  }[];
  readonly requestBody?: { readonly content: Record<string, { readonly schema: object }> };
  readonly responses: Record<
    string,
    { readonly description: string; readonly content?: Record<string, { readonly schema: object }> }
  >;
}
interface Description {
  readonly openapi: string;
  readonly info: Record<string, unknown>;
  readonly tags: readonly { readonly name: string }[];
  readonly paths: Record<string, Record<string, Operation>>;
  readonly components: { readonly schemas: Record<string, object> };
}

let server: ServerOfTest;
let described: Description;
const routes: string[] = [];
beforeAll(async () => {
  server = await serverOfTest();
  described = (await server.app.inject("/api/openapi.json")).json();
  routes.push(...routesOf(server.app.printRoutes({ commonPrefix: false })));
});
afterAll(() => server.close());

/** Method and address of every route of the API, read from the tree that the router prints of itself. */
function routesOf(tree: string): string[] {
  const above: string[] = [];
  return tree.split("\n").flatMap((line) => {
    const [, indent = "", path = "", methods] = /^((?:│ {3}| {4})*)[├└]── (\S*)(?: \(([^)]*)\))?/.exec(line) ?? [];
    if (path === "") return [];
    above.splice(indent.length / 4, above.length, path);
    const address = above.join("");
    const named = (methods ?? "").split(", ").filter((one) => one !== "" && one !== "HEAD");
    return /^\/(api|card)\//.test(address)
      ? named.map((method) => `${method} ${address.replace(/:(\w+)/g, "{$1}")}`)
      : [];
  });
}

const operations = () =>
  Object.entries(described.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
  );

describe("the description of the API", () => {
  it("names every route there is, and no other", () => {
    expect(routes.length).toBeGreaterThan(20);
    const named = operations().map(({ path, method }) => `${method.toUpperCase()} ${path}`);
    expect(named.sort()).toEqual([...routes].sort());
  });

  // The rules of https://spec.openapis.org/oas/v3.1.0.html that its schema and text lay down.
  it("is OpenAPI 3.1: version, title, a response for each operation, each id once", () => {
    expect(described.openapi).toBe("3.1.0");
    const { version } = JSON.parse(readFileSync(projectFile("package.json"), "utf8"));
    expect(version).toMatch(/^\d/);
    expect(described.info).toMatchObject({ title: "Bitwright", version: "9.8.7", license: { name: "MIT" } });
    const ids = operations().map(({ operation }) => operation.operationId);
    expect(new Set(ids).size).toBe(ids.length);
    const tags = described.tags.map(({ name }) => name);
    for (const { operation } of operations()) {
      expect(operation.summary).toMatch(/^\w/);
      expect(tags).toEqual(expect.arrayContaining([...operation.tags]));
      expect(Object.keys(operation.responses).every((status) => /^([1-5]\d\d|[1-5]XX|default)$/.test(status))).toBe(
        true,
      );
      expect(Object.keys(operation.responses).some((status) => /^2/.test(status))).toBe(true);
      for (const { description } of Object.values(operation.responses)) expect(description).toMatch(/\S/);
    }
  });

  it("declares every part of an address as a parameter that must be given, and no other", () => {
    for (const { path, operation } of operations()) {
      const parts = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
      const declared = (operation.parameters ?? []).filter((one) => one.in === "path");
      expect(declared.map(({ name }) => name).sort()).toEqual(parts.sort());
      expect(declared.every(({ required }) => required === true)).toBe(true);
    }
  });

  it("tells every refusal as problem details", () => {
    for (const { operation } of operations()) {
      for (const status of ["4XX", "5XX"]) {
        const content = operation.responses[status]?.content ?? {};
        expect(content["application/problem+json"]?.schema).toEqual({ $ref: "#/components/schemas/Problem" });
      }
    }
  });

  it("says for each saving what is taken, files as they are and as forms", () => {
    const types = (path: string, method: string) =>
      Object.keys(described.paths[path]?.[method]?.requestBody?.content ?? {}).sort();
    for (const { path, method } of operations()) {
      expect([path, method, types(path, method).length > 0]).toEqual([
        path,
        method,
        method === "post" || method === "put",
      ]);
    }
    expect(types("/api/travelers", "post")).toEqual(["application/json"]);
    expect(types("/api/import", "post")).toEqual(["application/json", "application/zip", "multipart/form-data"]);
    expect(types("/api/travelers/{id}/attachments", "post")).toEqual([
      "application/octet-stream",
      "multipart/form-data",
    ]);
  });

  it("refers to nothing that is not there", () => {
    const refs = [...JSON.stringify(described).matchAll(/"\$ref":"([^"]+)"/g)].map(([, ref]) => ref ?? "");
    expect(refs.length).toBeGreaterThan(50);
    const dangling = refs.filter((ref) => {
      const steps = ref.replace(/^#\//, "").split("/");
      return (
        steps.reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], described) ===
        undefined
      );
    });
    expect(dangling).toEqual([]);
  });

  it("carries the traveler as its own package publishes it", () => {
    const { $schema: _, ...traveler } = travelerJsonSchema();
    expect(described.components.schemas.Traveler).toEqual(JSON.parse(JSON.stringify(traveler)));
    expect(JSON.stringify(described.paths["/api/travelers"]?.post?.requestBody)).toContain("TravelerDocument");
  });

  it("holds only schemas: types and combinations that JSON Schema knows", () => {
    const types = new Set(["object", "array", "string", "number", "integer", "boolean", "null"]);
    const wrong: string[] = [];
    const walk = (schema: unknown, at: string) => {
      if (typeof schema === "boolean") return;
      if (typeof schema !== "object" || schema === null || Array.isArray(schema)) return void wrong.push(at);
      const { type, properties, items, additionalProperties, required, ...rest } = schema as Record<string, unknown>;
      if (type !== undefined && ![type].flat().every((one) => types.has(one as string))) wrong.push(`${at}.type`);
      if (required !== undefined && !Array.isArray(required)) wrong.push(`${at}.required`);
      for (const [name, one] of Object.entries(properties ?? {})) walk(one, `${at}.${name}`);
      if (items !== undefined) walk(items, `${at}[]`);
      if (additionalProperties !== undefined) walk(additionalProperties, `${at}.*`);
      for (const key of ["anyOf", "oneOf", "allOf"]) {
        if (rest[key] === undefined) continue;
        if (!Array.isArray(rest[key]) || rest[key].length === 0) wrong.push(`${at}.${key}`);
        else for (const [k, one] of rest[key].entries()) walk(one, `${at}.${key}[${k}]`);
      }
    };
    for (const [name, schema] of Object.entries(described.components.schemas)) walk(schema, name);
    for (const { path, operation } of operations()) {
      for (const { name, schema } of operation.parameters ?? []) walk(schema, `${path} ${name}`);
      for (const { content } of [operation.requestBody ?? { content: {} }, ...Object.values(operation.responses)]) {
        for (const { schema } of Object.values(content ?? {})) walk(schema, path);
      }
    }
    expect(wrong).toEqual([]);
  });
});
