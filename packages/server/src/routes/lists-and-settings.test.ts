import { afterAll, beforeAll, expect, it } from "vitest";
import { describePlaces } from "../../../../tests/support/places.ts";
import { type ServerOfTest, serverOfTest } from "../../../../tests/support/server-of-test.ts";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";

await describePlaces(({ fresh }) => {
  let server: ServerOfTest;
  const get = async (url: string) => (await server.app.inject(url)).json();
  const put = (url: string, payload: object) => server.app.inject({ method: "PUT", url, payload });

  beforeAll(async () => {
    server = await serverOfTest({ place: await fresh() });
  });
  afterAll(() => server.close());

  const pump = { id: "old-duplex", name: "Old duplex", flow: "150 gpm", pressureRating: "250 psi" };
  const { ground } = soundTraveler();

  it.each([
    ["pumps", [pump]],
    ["rigs", [{ id: "rig-2", pullDown: "12000 lbf", rotarySpeedMax: "120 rpm" }]],
    ["pipe", [{ id: "our-pipe", outsideDiameter: "2 7/8 in", bore: "2.44 in", weight: "6.85 lb/ft" }]],
    ["cutters", [{ code: "1310", faceDiameter: "13.44 mm", length: "10 mm" }]],
    ["rocks", [{ id: "hill-sandstone", like: "sandstone" }]],
    ["connections", [{ id: "own-thread" }]],
    ["ground", [{ name: "across the road", ground }]],
    ["prices", { rigRate: "180 /h", ownField: "kept" }],
  ])("keeps the list of %s, by the schema of the traveler, with its fields as typed", async (kind, value) => {
    const url = `/api/lists/${kind}`;
    const empty = kind === "prices" ? {} : [];
    expect(await get(url)).toEqual({ version: 0, value: empty });
    const saved = await put(url, { value, baseVersion: 0, note: "first" });
    expect([saved.statusCode, saved.json()]).toEqual([
      200,
      expect.objectContaining({ version: 1, savedBy: "Ada", note: "first", value }),
    ]);
    expect(await get(url)).toEqual(saved.json());
  });

  it("names every field of a list that is not taken, and keeps nothing of it", async () => {
    const value = [pump, { ...pump, flow: "90 rpm" }, { name: "without an id" }];
    const refused = await put("/api/lists/pumps", { value, baseVersion: 1 });
    expect(refused.statusCode).toBe(422);
    const { problems } = refused.json();
    expect(problems.map(({ path }: { path: string }) => path)).toEqual(["[1].flow", "[2].id"]);
    expect(problems[0]).toMatchObject({ value: '"90 rpm"', message: expect.stringContaining("rotary speed") });
    expect((await get("/api/lists/pumps")).version).toBe(1);
  });

  it("keeps both where somebody else was quicker", async () => {
    await put("/api/lists/pumps", { value: [], baseVersion: 1, note: "cleared" });
    const late = await put("/api/lists/pumps", { value: [pump, pump], baseVersion: 1, note: "mine" });
    expect(late.statusCode).toBe(409);
    const { yours, theirs, refusal } = late.json();
    expect(yours).toEqual([pump, pump]);
    expect(refusal).toMatchObject({ number: 1, basedOn: 1, found: 2, note: "mine" });
    expect(theirs).toMatchObject({ version: 2, note: "cleared", value: [] });
    const kept = await server.store.papers.refusals({ kind: "list", name: "pumps" });
    expect(kept.map(({ body }) => JSON.parse(body))).toEqual([[pump, pump]]);
  });

  it("keeps the settings, fields that it does not know among them", async () => {
    expect(await get("/api/settings")).toEqual({ version: 0, value: {} });
    const value = { units: "metric", shop: "Fernhollow Bit Works", columns: [1, 2] };
    expect((await put("/api/settings", { value, baseVersion: 0 })).json()).toMatchObject({ version: 1, value });
    expect(await get("/api/settings")).toMatchObject({ version: 1, value });
    const refused = await put("/api/settings", { value: { units: "cubits" }, baseVersion: 1 });
    expect([refused.statusCode, refused.json().problems[0].path]).toEqual([422, "units"]);
  });
});
