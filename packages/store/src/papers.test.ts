import { readFileSync } from "node:fs";
import { afterAll, afterEach, expect, it } from "vitest";
import { projectFile } from "../../../tests/support/command.ts";
import { describePlaces } from "../../../tests/support/places.ts";
import { openForTest, saving, travelerText } from "../../../tests/support/shop-of-test.ts";
import type { Store } from "./index.ts";

await describePlaces(({ fresh }) => {
  let store: Store | undefined;
  let empty: Store | undefined;
  afterEach(() => store?.close());
  afterAll(() => empty?.close());
  const open = async () => {
    store = await openForTest(await fresh());
    return store;
  };

  it("keeps every version exactly as it was given, with who, when, note and program", async () => {
    const { papers } = await open();
    const first = readFileSync(projectFile("examples/house-well.traveler.json"), "utf8");
    const second = first.replace("Ridge Road house well", "Ridge Road, büro 氷 \u{1f9ca}");
    expect(await papers.save(saving({ body: first, note: "as rung in" }))).toEqual({
      ok: true,
      saved: {
        version: 1,
        // The clock's first stroke opens the store, the second saves.
        savedAt: "2026-03-14T12:00:01.000Z",
        who: "Ada",
        note: "as rung in",
        program: "Bitwright test",
        title: "Ridge Road house well",
        sound: true,
      },
    });
    await papers.save(saving({ body: second, basedOn: 1, who: "Bela", note: "two\nlines" }));
    expect((await papers.read({ kind: "traveler", name: "ridge" }, 1)).body).toBe(first);
    const newest = await papers.read({ kind: "traveler", name: "ridge" });
    expect([newest.version, newest.body, newest.title]).toEqual([2, second, "Ridge Road, büro 氷 \u{1f9ca}"]);
    const history = await papers.history({ kind: "traveler", name: "ridge" });
    expect(history.map(({ version, savedAt, who, note }) => [version, savedAt, who, note])).toEqual([
      [1, "2026-03-14T12:00:01.000Z", "Ada", "as rung in"],
      [2, "2026-03-14T12:00:02.000Z", "Bela", "two\nlines"],
    ]);
  });

  it("refuses a save on an old version and keeps both", async () => {
    const store = await open();
    const { papers } = store;
    await papers.save(saving({}));
    await papers.save(saving({ basedOn: 1, who: "Bela", body: travelerText("Bela's") }));
    const late = await papers.save(saving({ basedOn: 1, who: "Cleo", note: "late", body: travelerText("Cleo's") }));
    const kept = { number: 1, basedOn: 1, found: 2, who: "Cleo", note: "late", body: travelerText("Cleo's") };
    expect(late).toMatchObject({ ok: false, refused: kept, newest: { version: 2, body: travelerText("Bela's") } });
    expect(await papers.refusals({ kind: "traveler", name: "ridge" })).toMatchObject([kept]);
    expect((await papers.read({ kind: "traveler", name: "ridge" })).body).toBe(travelerText("Bela's"));
    // Having looked, Cleo saves on what is there now.
    expect(await papers.save(saving({ basedOn: 2, body: travelerText("both") }))).toMatchObject({ ok: true });
    expect(await papers.list("traveler")).toMatchObject([{ name: "ridge", refused: 1, newest: { version: 3 } }]);
    expect(await store.faults()).toEqual([]);
  });

  it.each([0, 2])("does not take a save on version %d where 1 is the newest", async (basedOn) => {
    const { papers } = await open();
    await papers.save(saving({}));
    expect(await papers.save(saving({ basedOn, body: travelerText("other") }))).toMatchObject({
      ok: false,
      refused: { basedOn, found: 1, body: travelerText("other") },
    });
  });

  it("lets one of many savers at once through, and keeps the rest", async () => {
    const store = await open();
    const { papers } = store;
    const crowd = Array.from({ length: 12 }, (_, at) => saving({ who: `seat ${at}`, body: travelerText(`of ${at}`) }));
    const outcomes = await Promise.all(crowd.map((one) => papers.save(one)));
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    const refused = await papers.refusals({ kind: "traveler", name: "ridge" });
    const { body } = await papers.read({ kind: "traveler", name: "ridge" });
    expect([body, ...refused.map((one) => one.body)].sort()).toEqual(crowd.map((one) => one.body).sort());
    expect(refused.map(({ number }) => number)).toEqual(Array.from({ length: 11 }, (_, at) => at + 1));
    expect(await store.faults()).toEqual([]);
  });

  it("keeps travelers, lists and settings apart and gives each kind by name", async () => {
    const { papers } = await open();
    for (const name of ["zeta", "Alpha", "émile", "alpha"]) await papers.save(saving({ name }));
    await papers.save(saving({ kind: "list", name: "alpha", body: '{"rocks":[]}' }));
    await papers.save(saving({ kind: "setting", name: "units", body: '"metric"' }));
    const names = (await papers.list("traveler")).map(({ name }) => name);
    // By code point, whatever the database's own order of letters.
    expect(names).toEqual(["Alpha", "alpha", "zeta", "émile"]);
    expect((await papers.read({ kind: "list", name: "alpha" })).body).toBe('{"rocks":[]}');
    expect((await papers.read({ kind: "setting", name: "units" })).body).toBe('"metric"');
    expect(await papers.list("setting")).toHaveLength(1);
  });

  it("knows a name in both spellings of an accent", async () => {
    const { papers } = await open();
    await papers.save(saving({ name: "e\u0301mile" }));
    expect((await papers.read({ kind: "traveler", name: "\u00e9mile" })).version).toBe(1);
    expect(await papers.save(saving({ name: "\u00e9mile" }))).toMatchObject({ ok: false });
  });

  it("keeps a traveler that is half filled, and says that it is", async () => {
    const { papers } = await open();
    const draft = '{"format":"bitwright-traveler","version":1,"job":{"name":"on the line"},"own":[1,2]}';
    expect(await papers.save(saving({ body: draft }))).toMatchObject({
      saved: { sound: false, title: "on the line" },
    });
    expect((await papers.read({ kind: "traveler", name: "ridge" })).body).toBe(draft);
  });

  const half = "\ud800";
  it.each([
    ["no JSON", { body: "{" }, /^traveler: .*not JSON at line 1/],
    ["no mark", { body: '{"version":1}' }, /^format: .*give "bitwright-traveler"/],
    [
      "a newer one",
      { body: '{"format":"bitwright-traveler","version":99}' },
      /^version: .*version 99.*up to version 1/,
    ],
    ["a list that is no JSON", { kind: "list", body: "rocks" }, /^body: .*give JSON/],
    ["half a character", { kind: "list", body: `"${half}"` }, /^body: .*give text without/],
    ["a long text", { kind: "list", body: JSON.stringify("x".repeat(4 * 1024 ** 2)) }, /^body: got 4 MiB; .*4 MiB/],
    ["no name", { name: "" }, /^name: got nothing; give 1 to 80 letters/],
    ["a path for a name", { name: "../ridge" }, /^name: got "\.\.\/ridge"; give/],
    ["a long name", { name: "n".repeat(81) }, /^name: got "n+\.\.\."; give 1 to 80/],
    ["nobody", { who: " " }, /^who: .*1 to 120 characters/],
    ["a who of two lines", { who: "a\nb" }, /^who: got "a\\nb"; .*in one line/],
    ["a long note", { note: "n".repeat(2001) }, /^note: .*at most 2000 .*got 2001/],
    ["half a version", { basedOn: 0.5 }, /^basedOn: got 0\.5; give the version/],
    ["a version of nothing", { basedOn: 3 }, /^name: no traveler of the name "ridge" is kept; save it as a new one/],
  ] as const)("refuses %s in one line and keeps nothing of it", async (_, wrong, words) => {
    // One shop for all of them: whatever one left would be found by the next.
    empty ??= await openForTest(await fresh());
    const store = empty;
    await expect(store.papers.save(saving(wrong))).rejects.toThrow(words);
    for (const kind of ["traveler", "list"] as const) expect(await store.papers.list(kind)).toEqual([]);
    expect(await store.faults()).toEqual([]);
  });

  it("names what is not kept", async () => {
    const { papers } = await open();
    await papers.save(saving({}));
    await expect(papers.read({ kind: "traveler", name: "ridg" })).rejects.toThrow(/no traveler of the name "ridg"/);
    await expect(papers.history({ kind: "list", name: "a\0" })).rejects.toThrow(/no list of the name/);
    await expect(papers.read({ kind: "traveler", name: "ridge" }, 2)).rejects.toThrow(
      "version: got 2; give a version of ridge from 1 to 1",
    );
  });
});
