import { parseTraveler } from "@bitwright/traveler";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { describePlaces } from "../../../../tests/support/places.ts";
import { type ServerOfTest, serverOfTest } from "../../../../tests/support/server-of-test.ts";
import { travelerText } from "../../../../tests/support/shop-of-test.ts";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";

const named = (name: string) => JSON.parse(travelerText(name)) as Record<string, unknown>;
/** What is known when the phone has just rung. */
const HALF_FILLED = {
  format: "bitwright-traveler",
  version: 1,
  job: { name: "Call at noon", customer: "Quillback Drilling" },
};

await describePlaces(({ fresh }) => {
  let server: ServerOfTest;
  const get = (url: string) => server.app.inject({ url });
  const post = (payload: object) => server.app.inject({ method: "POST", url: "/api/travelers", payload });
  const put = (id: string, payload: object) =>
    server.app.inject({ method: "PUT", url: `/api/travelers/${id}`, payload });

  beforeAll(async () => {
    server = await serverOfTest({ place: await fresh() });
  });
  afterAll(() => server.close());

  it("keeps a new traveler under the name of its job, works it up first and says where it is", async () => {
    const document = named("Ridge Road, well #2");
    const made = await post({ document, note: "as rung in" });
    expect(made.statusCode).toBe(201);
    expect(made.headers.location).toBe("/api/travelers/ridge-road-well-2");
    const saved = made.json();
    expect(saved).toMatchObject({
      id: "ridge-road-well-2",
      version: 1,
      savedBy: "Ada",
      note: "as rung in",
      sound: true,
      problems: [],
      document,
    });
    expect(saved.savedAt).toMatch(/^2026-03-14T12:/);
    // The findings are those of the workup itself, counted.
    const workup = JSON.parse((await get("/api/travelers/ridge-road-well-2/workup")).body);
    const counted = (severity: string) =>
      workup.findings.filter((one: { severity: string }) => one.severity === severity).length;
    expect(saved.findings).toEqual({ stop: counted("stop"), caution: counted("caution"), note: counted("note") });
    const read = (await get("/api/travelers/ridge-road-well-2")).json();
    const { findings: _, ...kept } = saved;
    expect(read).toEqual(kept);
  });

  it("gives jobs of one name a number each, also when they come at once", async () => {
    const made = await Promise.all([1, 2, 3].map(() => post({ document: named("Twin") })));
    expect(made.map((one) => one.json().id).sort()).toEqual(["twin", "twin-2", "twin-3"]);
    expect((await get("/api/travelers/twin/refusals")).json()).toEqual({ refusals: [] });
  });

  it("names a job without letters, and one whose name is very long, so that the shop takes it", async () => {
    expect((await post({ document: named("???") })).json().id).toBe("traveler");
    const long = await post({ document: named("Ä".repeat(500)) });
    expect(long.statusCode).toBe(201);
    const again = await get(`/api/travelers/${encodeURIComponent(long.json().id)}`);
    expect(again.json().document.job.name).toBe("Ä".repeat(500));
  });

  it("keeps a half-filled traveler and names what is missing", async () => {
    const made = await post({ document: HALF_FILLED });
    expect(made.statusCode).toBe(201);
    const read = parseTraveler(HALF_FILLED);
    if (read.ok) throw new Error("a half-filled traveler was read as a whole one");
    const told = read.problems.map(({ field, message, got, expected }) => ({
      path: field,
      message,
      value: got,
      limit: expected,
    }));
    expect(made.json()).toMatchObject({ sound: false, problems: told, document: HALF_FILLED });
    expect(made.json()).not.toHaveProperty("findings");
    const workup = await get(`/api/travelers/${made.json().id}/workup`);
    expect(workup.statusCode).toBe(422);
    expect(workup.json().problems).toEqual(told);
  });

  it("refuses what is no traveler and names the field, the value and what is accepted", async () => {
    const foreign = await post({ document: { ...soundTraveler(), format: "something-else" } });
    expect(foreign.statusCode).toBe(422);
    expect(foreign.json().problems[0]).toMatchObject({ path: "format", value: '"something-else"' });
    expect(foreign.json().problems[0].limit).toContain("bitwright-traveler");
    const newer = await post({ document: { ...soundTraveler(), version: 99 } });
    expect(newer.json().problems[0].message).toContain("newer Bitwright (version 99)");
  });

  it("keeps the next version, and both where somebody else was quicker", async () => {
    await post({ document: named("Shared") });
    const second = await put("shared", { document: named("Bela's"), baseVersion: 1, note: "new rig" });
    expect([second.statusCode, second.json().version, second.json().name]).toEqual([200, 2, "Bela's"]);
    const late = await put("shared", { document: named("Cleo's"), baseVersion: 1, note: "new pump" });
    expect(late.statusCode).toBe(409);
    expect(late.headers["content-type"]).toBe("application/problem+json; charset=utf-8");
    const { type, yours, theirs, refusal, detail } = late.json();
    expect(type).toBe("urn:bitwright:problem:conflict");
    expect(detail).toMatch(/^shared: made from version 1, but Ada saved version 2 on .*; both are kept$/);
    expect(yours).toEqual(named("Cleo's"));
    expect(refusal).toMatchObject({ number: 1, basedOn: 1, found: 2, note: "new pump" });
    expect(theirs).toMatchObject({ id: "shared", version: 2, note: "new rig", document: named("Bela's") });
    expect((await get("/api/travelers/shared/refusals")).json().refusals).toEqual([{ ...refusal, document: yours }]);
    const versions = (await get("/api/travelers/shared/versions")).json().versions;
    expect(versions.map((one: { version: number; note: string }) => [one.version, one.note])).toEqual([
      [1, ""],
      [2, "new rig"],
    ]);
    expect((await get("/api/travelers/shared/versions/1")).json().document).toEqual(named("Shared"));
    expect((await get("/api/travelers/shared/versions/3")).json().detail).toContain(
      "give a version of shared from 1 to 2",
    );
  });

  it("lists travelers with the lines of their jobs, the one saved last first", async () => {
    const { travelers } = (await get("/api/travelers")).json();
    const times = travelers.map((one: { savedAt: string }) => one.savedAt);
    expect(times).toEqual([...times].sort().reverse());
    const entry = (id: string) => travelers.find((one: { id: string }) => one.id === id);
    expect(travelers[0]).toMatchObject({ id: "shared", name: "Bela's", version: 2, refused: 1, example: false });
    expect(entry("call-at-noon")).toMatchObject({ name: "Call at noon", customer: "Quillback Drilling", sound: false });
    // A line that was read before is read anew when the traveler has a new version.
    const changed = { ...named("Shared"), job: { name: "Shared", customer: "Another", number: 12 } };
    await put("shared", { document: changed, baseVersion: 2 });
    const again = (await get("/api/travelers")).json().travelers;
    expect(again[0]).toMatchObject({ id: "shared", customer: "Another", number: "12", version: 3 });
  });

  it("gives the file of a version as it was saved", async () => {
    const { headers, body } = await get("/api/travelers/shared/file?version=1");
    expect(body).toBe(travelerText("Shared"));
    expect(headers["content-disposition"]).toContain('attachment; filename="shared.traveler.json"');
  });

  it("finds no traveler that there is not, and saves none over nothing", async () => {
    for (const path of ["none", "none/versions", "none/refusals", "none/file", "none/workup", "none/sheets/card.txt"]) {
      const { statusCode, json } = await get(`/api/travelers/${path}`);
      expect([path, statusCode, json().type]).toEqual([path, 404, "urn:bitwright:problem:not-found"]);
    }
    const saved = await put("none", { document: named("None"), baseVersion: 1 });
    expect(saved.statusCode).toBe(404);
    expect((await get("/api/travelers/%2e%2e%2fetc%2fpasswd")).statusCode).toBe(404);
  });
});

describe("a traveler that the program fails on", () => {
  it("is kept all the same, and the fault is told", async () => {
    const server = await serverOfTest({
      threads: { findings: () => Promise.reject(new Error("a fault of the engine")) },
    });
    const document = named("Kept");
    const made = await server.app.inject({ method: "POST", url: "/api/travelers", payload: { document } });
    expect([made.statusCode, made.json().document]).toEqual([201, document]);
    expect(made.json()).not.toHaveProperty("findings");
    expect(server.faults).toEqual([new Error("a fault of the engine")]);
    await server.close();
  });
});
