import { readFileSync } from "node:fs";
import { bandsStudy, type MapStudy, mapStudy, parseTraveler, studyJson, workUp } from "@bitwright/traveler";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { projectFile } from "../../../../tests/support/command.ts";
import { type ServerOfTest, serverOfTest } from "../../../../tests/support/server-of-test.ts";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";

const document = soundTraveler();
const read = parseTraveler(document);
if (!read.ok) throw new Error("the traveler of the tests is not sound");
const workup = workUp(read);

interface Study {
  readonly id: string;
  readonly state: string;
  readonly progress: { readonly done: number; readonly of?: number; readonly doing: string };
  readonly sheets: readonly string[];
  readonly result?: Record<string, unknown>;
  readonly problem?: { readonly detail: string; readonly problems: readonly { readonly path: string }[] };
}

let server: ServerOfTest;
beforeAll(async () => {
  server = await serverOfTest({ limits: { studies: 3 } });
});
afterAll(() => server.close());

const post = (payload: object) => server.app.inject({ method: "POST", url: "/api/studies", payload });
const get = async (id: string): Promise<Study> => (await server.app.inject(`/api/studies/${id}`)).json();
const stop = async (id: string): Promise<Study> =>
  (await server.app.inject({ method: "DELETE", url: `/api/studies/${id}` })).json();

async function started(kind: string, options?: object, of: object = document): Promise<string> {
  const { statusCode, headers, json } = await post({ kind, document: of, ...(options ? { options } : {}) });
  expect([statusCode, headers.location]).toEqual([202, `/api/studies/${json().id}`]);
  return json().id;
}

/** The events of a study, from now until it is over. */
async function events(id: string): Promise<Study[]> {
  const { headers, body } = await server.app.inject(`/api/studies/${id}/events`);
  expect(headers["content-type"]).toBe("text/event-stream; charset=utf-8");
  return [...body.matchAll(/^data: (.*)$/gm)].map(([, data = ""]) => JSON.parse(data));
}

const over = async (id: string) => (await events(id)).at(-1) as Study;
const plain = (study: object) => JSON.parse(studyJson(study));

describe("a study", () => {
  it("runs on a thread, tells how far it is and ends with what the same call gives here", async () => {
    const id = await started("bands", { samples: 400, seed: 7 });
    const told = await events(id);
    expect(told.length).toBeGreaterThan(2);
    expect(told[0]?.state).toMatch(/waiting|running/);
    const running = told.filter(({ state }) => state === "running");
    expect(running.some(({ progress }) => /drawing samples in /.test(progress.doing))).toBe(true);
    const counts = running.filter(({ progress }) => progress.of !== undefined).map(({ progress }) => progress.done);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    const last = told.at(-1);
    expect(told.filter(({ state }) => state === "done")).toEqual([last]);
    expect(last?.progress).toMatchObject({ done: 400 * workup.cut.beds.length, of: 400 * workup.cut.beds.length });
    expect(last?.result).toEqual(plain(bandsStudy(workup, { samples: 400, seed: 7 })));
    expect(await get(id)).toEqual(last);
    // Whoever comes late hears how it ended.
    expect(await events(id)).toEqual([last]);
    // A browser that has heard it comes back with the id of that event; 204 is how it is told to come no more.
    const headers = { "last-event-id": "over" };
    expect((await server.app.inject({ url: `/api/studies/${id}/events`, headers })).statusCode).toBe(204);
  });

  it.each([
    ["layout", { candidates: 300 }, ["pareto.svg", "face.svg"], "solved"],
    ["life", { holes: 2, samples: 2 }, ["life.svg", "life-bands.svg", "life.csv"], "spread"],
    ["map", { bed: "1", avoid: [{ from: "84 rpm", to: "92 rpm" }] }, ["map-1.svg", "map-rates.csv"], "beds"],
    ["rank", { cutter: ["1308"], wings: [4, 5], bevel: [20], body: ["steel"] }, ["choice.svg"], "ranking"],
    ["stability", { bed: "1", speeds: 2, units: "metric" }, [], "beds"],
    ["depth", {}, ["depth.csv"], "joints"],
    ["flow", { ports: { count: 3, diameter: "1/2 in" }, pumps: 2 }, ["flow.csv"], "changed"],
    ["ports", { goal: "cooling", sets: 2 }, [], "sets"],
  ])("of the kind %s gives a result and its sheets", async (kind, options, sheets, field) => {
    const study = await over(await started(kind, options));
    expect([study.state, study.problem]).toEqual(["done", undefined]);
    expect(study.result).toHaveProperty(field);
    expect(study.sheets).toEqual(expect.arrayContaining(sheets));
    for (const name of study.sheets.slice(0, 1)) {
      const sheet = await server.app.inject(`/api/studies/${study.id}/sheets/${name}`);
      expect([sheet.statusCode, sheet.headers["content-security-policy"]]).toEqual([
        200,
        expect.stringContaining("sandbox"),
      ]);
    }
    expect((await server.app.inject(`/api/studies/${study.id}/sheets/none.svg`)).statusCode).toBe(404);
  });

  it("keeps out of the speeds that it is told to, in the units of a traveler", async () => {
    const study = await over(await started("map", { bed: "1", avoid: [{ from: "84 rpm", to: "92 rpm" }] }));
    const rpm = (2 * Math.PI) / 60;
    const avoid = [{ from: 84 * rpm, to: 92 * rpm, why: "as given" }];
    const { beds } = mapStudy(workup, { bed: "1", avoid }) as MapStudy;
    expect(study.result).toEqual(plain({ beds }));
  });

  it.each([
    ["a kind that there is not", { kind: "guess", document }, "kind"],
    ["an option that there is not", { kind: "bands", document, options: { sample: 3 } }, "options"],
    ["a count beyond its limit", { kind: "bands", document, options: { samples: 100_001 } }, "options.samples"],
    ["a quantity of another kind", { kind: "flow", document, options: { flow: "90 rpm" } }, "options.flow"],
    [
      "speeds the wrong way round",
      { kind: "map", document, options: { avoid: [{ from: "92 rpm", to: "84 rpm" }] } },
      "options.avoid[0]",
    ],
    ["a half-filled document", { kind: "bands", document: { format: "bitwright-traveler", version: 1 } }, "job"],
  ])("is refused %s, with the field named", async (_, asked, path) => {
    const refused = await post(asked);
    expect(refused.statusCode).toBe(422);
    expect(refused.json().problems.map((one: { path: string }) => one.path)).toContain(path);
  });

  it("fails in plain words where the document does not fit it", async () => {
    const bed = await over(await started("bands", { bed: "granite of the moon" }));
    expect([bed.state, bed.problem?.problems[0]?.path]).toEqual(["failed", "options.bed"]);
    expect(bed.problem?.detail).toContain("give a number, a name or a part of one: 1 ");
    const measured = JSON.parse(readFileSync(projectFile("examples/measured-bit.traveler.json"), "utf8"));
    const layout = await over(await started("layout", {}, measured));
    expect([layout.state, layout.problem?.problems[0]?.path]).toEqual(["failed", "bit.kind"]);
  });

  it("is not found by an id that was never given", async () => {
    for (const [method, url] of [
      ["GET", "/none"],
      ["GET", "/none/events"],
      ["DELETE", "/none"],
    ] as const) {
      const { statusCode, json } = await server.app.inject({ method, url: `/api/studies${url}` });
      expect([statusCode, json().type]).toEqual([404, "urn:bitwright:problem:not-found"]);
    }
  });
});

describe("stopping", () => {
  const LONG = { candidates: 10_000_000 };
  const running = (id: string, doing: RegExp) =>
    expect.poll(async () => (await get(id)).progress.doing, { timeout: 20_000 }).toMatch(doing);

  it("ends a running study within a second with what it has, and the thread takes the next", async () => {
    const id = await started("layout", LONG);
    await running(id, /trying layouts/);
    const from = performance.now();
    const stopping = stop(id);
    const hasHeard = async () => {
      const { state, progress } = await get(id);
      return state === "stopped" || progress.doing === "ending with what it has";
    };
    await expect.poll(hasHeard, { interval: 20, timeout: 5000 }).toBe(true);
    expect(performance.now() - from).toBeLessThan(1000);
    const stopped = await stopping;
    expect(stopped.state).toBe("stopped");
    const { solved } = stopped.result as { solved: { tried: number; choices: unknown[] } };
    expect(solved.tried).toBeGreaterThan(0);
    expect(solved.tried).toBeLessThan(LONG.candidates);
    expect(stopped.sheets).toContain("pareto.svg");
    expect(await stop(id)).toEqual(stopped);
    expect((await over(await started("depth"))).state).toBe("done");
  });

  it("ends one that waits, and tells whoever watches", async () => {
    const first = await started("layout", LONG);
    await running(first, /trying layouts/);
    const others = [await started("bands"), await started("life")];
    const watched = events(others[1] ?? "");
    for (const id of [...others, first]) expect((await stop(id)).state).toBe("stopped");
    expect((await watched).at(-1)).toMatchObject({ state: "stopped" });
    expect((await over(await started("depth"))).state).toBe("done");
  });

  it("makes room: no more wait than the server takes", async () => {
    const ids = [await started("layout", LONG), await started("layout", LONG), await started("layout", LONG)];
    const fourth = await post({ kind: "depth", document });
    expect([fourth.statusCode, fourth.json().type]).toEqual([429, "urn:bitwright:problem:too-many"]);
    for (const id of ids) await stop(id);
    expect((await post({ kind: "depth", document })).statusCode).toBe(202);
  });
});
