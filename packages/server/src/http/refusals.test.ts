import { connect } from "node:net";
import { StoreFault } from "@bitwright/store";
import type { InjectOptions } from "fastify";
import { Piscina } from "piscina";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { projectFile } from "../../../../tests/support/command.ts";
import { type ServerOfTest, serverOfTest } from "../../../../tests/support/server-of-test.ts";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { HttpProblem } from "./problem-details.ts";
import { problemOfError } from "./problem-of-error.ts";

let server: ServerOfTest;
beforeAll(async () => {
  server = await serverOfTest({
    limits: { body: 100_000 },
    more: (app) => {
      app.get("/api/of-test/failing", async () => {
        throw new Error("a secret of the inside");
      });
    },
  });
});
afterAll(() => server.close());

type Asked = InjectOptions;
const json = { "content-type": "application/json" };

describe("every refusal is problem details", () => {
  const document = soundTraveler();
  // Status and kind as RFC 9110 and the kinds of RFC 9457 have them; 422 for what reads and is not taken.
  it.each<[string, number, string, Asked]>([
    ["an address that is not there", 404, "not-found", { url: "/api/nothing" }],
    ["an address of a page that is not there, with another method", 404, "not-found", { method: "POST", url: "/page" }],
    ["a file that is not there", 404, "not-found", { url: "/assets/none-12345678.js" }],
    ["a method that an address does not have", 405, "method-not-allowed", { method: "DELETE", url: "/api/travelers" }],
    [
      "text in place of JSON",
      415,
      "media-type",
      { method: "POST", url: "/api/travelers", headers: { "content-type": "text/plain" }, payload: "{}" },
    ],
    ["no JSON", 400, "bad-request", { method: "POST", url: "/api/travelers", headers: json, payload: "{" }],
    ["an empty body", 400, "bad-request", { method: "POST", url: "/api/travelers", headers: json, payload: "" }],
    [
      "a body with a field that poisons objects",
      400,
      "bad-request",
      { method: "POST", url: "/api/travelers", headers: json, payload: '{"__proto__": {}}' },
    ],
    [
      "a body that is too large",
      413,
      "too-large",
      { method: "POST", url: "/api/travelers", payload: { document, note: "x".repeat(100_000) } },
    ],
    ["a body without its fields", 422, "bad-value", { method: "POST", url: "/api/travelers", payload: {} }],
    [
      "a document without a bottom",
      422,
      "bad-value",
      {
        method: "POST",
        url: "/api/travelers",
        headers: json,
        payload: `{"document": {"format": ${"[".repeat(40_000)}${"]".repeat(40_000)}}}`,
      },
    ],
    ["a version that is no number", 422, "bad-value", { url: "/api/travelers/ridge/versions/one" }],
    ["units that there are not", 422, "bad-value", { url: "/api/travelers/ridge/sheets/card.txt?units=cubits" }],
    ["a list that there is not", 422, "bad-value", { url: "/api/lists/hats" }],
    ["an address that cannot be read", 400, "bad-request", { url: "/api/travelers/%E0%A4%A" }],
    ["a fault of the program", 500, "fault", { url: "/api/of-test/failing" }],
  ])("%s: %i", async (_, status, kind, asked) => {
    const { statusCode, headers, body } = await server.app.inject(asked);
    expect(headers["content-type"]).toBe("application/problem+json; charset=utf-8");
    const problem = JSON.parse(body);
    expect([statusCode, problem.status, problem.type]).toEqual([status, status, `urn:bitwright:problem:${kind}`]);
    expect(problem.title.length * problem.detail.length).toBeGreaterThan(0);
    expect(Object.keys(problem)).not.toContain("stack");
  });

  it("names the field that is not taken", async () => {
    const asked = { method: "PUT", url: "/api/travelers/ridge", payload: { document, baseVersion: "two" } } as const;
    const { problems } = (await server.app.inject(asked)).json();
    expect(problems).toEqual([{ path: "baseVersion", message: expect.stringMatching(/^baseVersion: .*number/) }]);
    const query = (await server.app.inject("/api/travelers/ridge/workup?version=0")).json();
    expect(query.problems[0].path).toBe("querystring.version");
  });

  it("says which methods an address has", async () => {
    const { headers } = await server.app.inject({ method: "PATCH", url: "/api/travelers/ridge" });
    expect(String(headers.allow).split(", ").sort()).toEqual(["GET", "HEAD", "PUT"]);
  });

  it("tells of a fault, and keeps its words inside", async () => {
    server.faults.length = 0;
    const { body } = await server.app.inject("/api/of-test/failing");
    expect(body).not.toMatch(/secret|\.ts|Error/);
    expect(server.faults).toEqual([new Error("a secret of the inside")]);
  });

  it("answers what is no HTTP in the same manner", async () => {
    const address = new URL(await server.app.listen({ host: "127.0.0.1", port: 0 }));
    const answer = await new Promise<string>((told) => {
      let got = "";
      const socket = connect(Number(address.port), "127.0.0.1", () => socket.write("what is this\r\n\r\n"));
      socket.on("data", (bytes) => {
        got += bytes;
      });
      socket.on("close", () => told(got));
    });
    expect(answer).toMatch(/^HTTP\/1\.1 400 .*content-type: application\/problem\+json.*"status":400/s);
  });
});

describe("too much at once", () => {
  it("is refused with 429 and a time to come back", async () => {
    const busy = await serverOfTest({ limits: { requests: 2 } });
    const ask = () => busy.app.inject("/api/about");
    expect([(await ask()).statusCode, (await ask()).statusCode]).toEqual([200, 200]);
    const third = await ask();
    expect([third.statusCode, third.headers["content-type"]]).toEqual([429, "application/problem+json; charset=utf-8"]);
    expect(third.json()).toMatchObject({ type: "urn:bitwright:problem:too-many", status: 429 });
    expect(Number(third.headers["retry-after"])).toBeGreaterThan(0);
    await busy.close();
  });
});

describe("problemOfError", () => {
  const parts = { field: "data", got: "there", expected: "give another" };

  it.each([
    ["bad-value", 422],
    ["not-found", 404],
    ["in-use", 503],
    ["newer", 422],
    ["in-the-way", 409],
    ["damaged", 422],
    ["out-of-reach", 503],
  ] as const)("tells %s of the store as %i, in its words", (kind, status) => {
    const { statusCode, message } = problemOfError(new StoreFault(kind, parts));
    expect([statusCode, message]).toEqual([status, "data: got there; give another"]);
  });

  it("tells a full disk as such", () => {
    const full = Object.assign(new Error("database or disk is full"), { code: "SQLITE_FULL" });
    expect(problemOfError(full)).toMatchObject({ kind: "out-of-reach", statusCode: 503 });
  });

  it("tells a pool of threads that takes no more as too much at once", async () => {
    const pool = new Piscina({
      filename: projectFile("packages/server/dist/work/worker.js"),
      maxThreads: 1,
      maxQueue: 1,
    });
    const asked = [1, 2, 3, 4].map(() => pool.run({ text: "{}" }, { name: "findings" }));
    const refused = (await Promise.allSettled(asked)).filter((one) => one.status === "rejected");
    expect(refused.length).toBeGreaterThan(0);
    for (const { reason } of refused)
      expect(problemOfError(reason)).toMatchObject({ kind: "too-many", statusCode: 429 });
    await pool.destroy();
  });

  it("leaves a problem as it is and takes anything else as a fault", () => {
    const problem = new HttpProblem("too-large", "give less");
    expect(problemOfError(problem)).toBe(problem);
    expect(problemOfError("thrown text").kind).toBe("fault");
  });
});
