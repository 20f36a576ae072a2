import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type ServerOfTest, serverOfTest } from "../../../../tests/support/server-of-test.ts";

const folder = mkdtempSync(join(tmpdir(), "bitwright-web-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the built screens", () => {
  let server: ServerOfTest;
  beforeAll(async () => {
    const web = join(folder, "dist");
    mkdirSync(join(web, "assets"), { recursive: true });
    writeFileSync(join(web, "index.html"), "<!doctype html><title>screens</title>");
    writeFileSync(join(web, "assets/index-Ab3_9xYz.js"), "export {};");
    writeFileSync(join(web, "assets/kernel-0a1b2c3d.wasm"), new Uint8Array([0, 97, 115, 109]));
    writeFileSync(join(web, "manifest.webmanifest"), "{}");
    writeFileSync(join(folder, "secret.txt"), "not of the screens");
    server = await serverOfTest({ webFolder: web });
  });
  afterAll(() => server.close());
  const get = (url: string) => server.app.inject(url);

  it.each(["/", "/index.html", "/travelers/house-well", "/travelers/house-well/life?bed=2"])(
    "%s is the start page",
    async (url) => {
      const { statusCode, headers, body } = await get(url);
      expect([statusCode, headers["cache-control"]]).toEqual([200, "no-cache"]);
      expect(headers["content-type"]).toMatch(/^text\/html/);
      expect(body).toContain("<title>screens</title>");
      expect(headers["content-security-policy"]).toContain("'wasm-unsafe-eval'");
    },
  );

  it.each([
    ["/assets/index-Ab3_9xYz.js", /^(text|application)\/javascript/],
    ["/assets/kernel-0a1b2c3d.wasm", /^application\/wasm/],
  ])("%s is kept for good, as its name changes with it", async (url, type) => {
    const { statusCode, headers } = await get(url);
    expect([statusCode, headers["cache-control"]]).toEqual([200, "public, max-age=31536000, immutable"]);
    expect(headers["content-type"]).toMatch(type);
  });

  it("asks again for a file whose name stays", async () => {
    expect((await get("/manifest.webmanifest")).headers["cache-control"]).toBe("no-cache");
  });

  it.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/assets/..%2f..%2fsecret.txt",
    "/..%5csecret.txt",
    "/assets/gone-12345678.js",
  ])("%s is not found", async (url) => {
    const { statusCode, body } = await get(url);
    expect([400, 403, 404]).toContain(statusCode);
    expect(body).not.toContain("not of the screens");
    expect(body).not.toContain("<title>");
  });

  it("does not stand in for an address of the API that there is not", async () => {
    for (const url of ["/api", "/api/", "/api/nothing"]) expect([url, (await get(url)).statusCode]).toEqual([url, 404]);
  });
});

describe("without the screens", () => {
  it("a plain page says how to build them", async () => {
    const server = await serverOfTest();
    const { statusCode, body } = await server.app.inject("/any/page");
    expect(statusCode).toBe(200);
    expect(body).toContain("npm run build");
    expect(body).not.toContain("<script");
    await server.close();
  });
});
