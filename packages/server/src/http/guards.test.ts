import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type ServerOfTest, serverOfTest } from "../../../../tests/support/server-of-test.ts";

let server: ServerOfTest;
beforeAll(async () => {
  server = await serverOfTest();
});
afterAll(() => server.close());

/** Where a browser says that a request comes from. */
type From = Readonly<Record<string, string>>;

const kindOf = async (headers: From, method: "GET" | "POST" = "GET") => {
  const payload = method === "POST" ? { payload: {} } : {};
  const url = method === "POST" ? "/api/studies" : "/api/about";
  const { statusCode, body } = await server.app.inject({ method, url, headers, ...payload });
  return statusCode === 200 || statusCode === 422 ? "let in" : (JSON.parse(body).type as string).split(":").at(-1);
};

describe("a name that is pointed at this machine", () => {
  it.each(["localhost", "localhost:7417", "LOCALHOST:1", "127.0.0.1:7417", "127.8.9.1", "[::1]:7417"])(
    "%s is ours",
    async (host) => {
      expect(await kindOf({ host })).toBe("let in");
    },
  );

  it.each([
    "rebound.example:7417",
    "localhost.example",
    "127.0.0.1.example",
    "127.0.0.1@rebound.example",
    "192.168.1.5:7417",
    "0.0.0.0:7417",
    "[::2]:7417",
    "localhost:7417.example",
  ])("%s is not", async (host) => {
    expect(await kindOf({ host })).toBe("foreign-host");
  });

  it("does not reach the pages either", async () => {
    const { statusCode } = await server.app.inject({ url: "/", headers: { host: "rebound.example" } });
    expect(statusCode).toBe(403);
  });
});

describe("a page of another server", () => {
  const host = "localhost:7417";

  it.each<From>([
    { origin: "http://localhost:7417" },
    { "sec-fetch-site": "same-origin", origin: "http://localhost:7417" },
    {},
  ])("%o is a page of ours or no page at all", async (from) => {
    expect(await kindOf({ host, ...from }, "POST")).toBe("let in");
  });

  it.each<From>([
    { origin: "http://elsewhere.example" },
    { origin: "http://localhost:3000" },
    { origin: "https://localhost:7417" },
    { origin: "http://127.0.0.1:7417" },
    { origin: "null" },
    { "sec-fetch-site": "cross-site" },
    { "sec-fetch-site": "same-site", origin: "http://localhost:7417" },
  ])("%o may change nothing", async (from) => {
    expect(await kindOf({ host, ...from }, "POST")).toBe("foreign-origin");
  });

  it("gets no leave to read", async () => {
    const headers = { host, origin: "http://elsewhere.example" };
    const { headers: given } = await server.app.inject({ url: "/api/about", headers });
    expect(given).not.toHaveProperty("access-control-allow-origin");
    expect(given["cross-origin-resource-policy"]).toBe("same-origin");
  });
});

describe("what a page of ours may do", () => {
  it("is told in every reply, and no more than it needs", async () => {
    for (const url of ["/", "/api/about", "/api/nothing"]) {
      const { headers } = await server.app.inject(url);
      const policy = Object.fromEntries(
        String(headers["content-security-policy"])
          .split(";")
          .map((part) => [part.split(" ")[0], part.split(" ").slice(1).join(" ")]),
      );
      expect(policy).toMatchObject({
        "default-src": "'self'",
        "script-src": "'self' 'wasm-unsafe-eval'",
        "connect-src": "'self'",
        "object-src": "'none'",
        "base-uri": "'none'",
        "frame-ancestors": "'none'",
      });
      expect(headers).toMatchObject({ "x-content-type-options": "nosniff", "referrer-policy": "no-referrer" });
      expect(headers).not.toHaveProperty("strict-transport-security");
    }
  });
});
