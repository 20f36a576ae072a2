import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { afterAll, afterEach, describe, expect, it } from "vitest";
import { describePlaces } from "../../../tests/support/places.ts";
import { openForTest, saving, travelerText } from "../../../tests/support/shop-of-test.ts";
import type { Store, StoreOptions } from "./index.ts";

const files = mkdtempSync(join(tmpdir(), "bitwright-backup-"));
afterAll(() => rmSync(files, { recursive: true, force: true }));
let made = 0;
const newFile = () => join(files, `shop-${++made}.zip`);

/** A zip within an attachment: bytes that a careless reader takes for its own marks. */
const zipped = zipSync({ "field.csv": strToU8("depth,rate\n1,2\n".repeat(99)) });
const photo = Uint8Array.from({ length: 2 * 1024 ** 2 + 7 }, (_, at) => (at * 131 + (at >> 9)) % 256);

/** A shop with one of everything. */
async function fill({ papers, attachments }: Store) {
  await papers.save(saving({ note: "first\nof two" }));
  await papers.save(saving({ basedOn: 1, body: travelerText("Ridge, 氷"), who: "Bela" }));
  await papers.save(saving({ basedOn: 1, body: travelerText("late"), who: "Cleo" }));
  await papers.save(saving({ name: "creek" }));
  await papers.save(saving({ kind: "list", name: "rigs", body: '{"rigs":[]}' }));
  await papers.save(saving({ kind: "setting", name: "units", body: '"metric"' }));
  const file = { traveler: "ridge", mediaType: "application/zip", who: "Ada", note: "" };
  await attachments.add({ ...file, name: "log.zip", bytes: [zipped] });
  await attachments.add({ ...file, name: "photo.jpg", mediaType: "image/jpeg", bytes: [photo] });
  await attachments.add({ ...file, name: "empty.txt", mediaType: "text/plain", bytes: [] });
}

/** All that a shop gives out, through its public face. */
async function everything({ papers, attachments }: Store) {
  const all: unknown[] = [];
  for (const kind of ["traveler", "list", "setting"] as const) {
    for (const entry of await papers.list(kind)) {
      const versions = await papers.history(entry);
      const bodies = await Promise.all(versions.map(({ version }) => papers.read(entry, version)));
      all.push(entry, bodies, await papers.refusals(entry));
      if (kind !== "traveler") continue;
      for (const one of await attachments.list(entry.name)) {
        const bytes: Uint8Array[] = [];
        for await (const piece of attachments.bytes(one)) bytes.push(piece);
        all.push(one, Buffer.concat(bytes).toString("base64"));
      }
    }
  }
  return all;
}

const COUNTS = { papers: 4, versions: 5, refusals: 1, attachments: 3 };

await describePlaces(({ kind, fresh }) => {
  const opened: Store[] = [];
  const open = async (place?: string, more?: Partial<StoreOptions>) => {
    const store = await openForTest(place ?? (await fresh()), more);
    opened.push(store);
    return store;
  };
  afterEach(async () => {
    for (const store of opened.splice(0)) await store.close();
  });

  it("gives the whole shop back elsewhere, on either kind of place", async () => {
    const shop = await open();
    await fill(shop);
    const file = newFile();
    expect(await shop.backup(file)).toEqual(COUNTS);
    const folder = await open(join(files, `restored-${kind}`));
    const other = await open();
    for (const store of [folder, other]) {
      expect(await store.restore(file)).toEqual(COUNTS);
      expect(await everything(store)).toEqual(await everything(shop));
      expect(await store.faults()).toEqual([]);
      // Work goes on where it stopped.
      expect(await store.papers.save(saving({ basedOn: 2 }))).toMatchObject({ saved: { version: 3 } });
    }
  });

  it("gives back many attachments, large and small, of a machine whose clock stands at 1970", async () => {
    const shop = await open(undefined, { now: () => new Date(0) });
    await shop.papers.save(saving({}));
    const about = { traveler: "ridge", mediaType: "application/octet-stream", who: "Ada", note: "" };
    // More than is unpacked at once, the first of them alone too.
    const large = new Uint8Array(10 * 1024 ** 2).fill(7);
    for (let k = 0; k < 2; k++) await shop.attachments.add({ ...about, name: `scan-${k}`, bytes: [large, large] });
    for (let k = 0; k < 30; k++) await shop.attachments.add({ ...about, name: `note-${k}`, bytes: [strToU8(`n${k}`)] });
    const file = newFile();
    await shop.backup(file);
    const other = await open();
    await other.restore(file);
    const sizes = Object.fromEntries((await other.attachments.list("ridge")).map(({ name, size }) => [name, size]));
    expect(sizes).toMatchObject({ "scan-0": 20 * 1024 ** 2, "scan-1": 20 * 1024 ** 2, "note-29": 3 });
    expect(await other.faults()).toEqual([]);
  });

  it("restores over nothing", async () => {
    const shop = await open();
    await fill(shop);
    const file = newFile();
    await shop.backup(file);
    const before = await everything(shop);
    await expect(shop.restore(file)).rejects.toThrow(/holds a shop already; restore into a new folder/);
    expect(await everything(shop)).toEqual(before);
    await expect(shop.backup(file)).rejects.toThrow(/is there already; give the name of a new file/);
  });

  it("keeps nothing of a backup whose rows do not belong together", async () => {
    const shop = await open();
    await fill(shop);
    const file = newFile();
    await shop.backup(file);
    const torn = respelt(file, (entries) => {
      entries["paper.jsonl"] = entries["paper.jsonl"].split("\n").slice(1).join("\n");
    });
    const other = await open();
    await expect(other.restore(torn)).rejects.toThrow(/a row of paper_version does not fit the others/);
    for (const one of ["traveler", "list", "setting"] as const) expect(await other.papers.list(one)).toEqual([]);
    expect(await other.restore(file)).toEqual(COUNTS);
  });

  it("makes no backup that is larger than it could read back, and leaves no half of one", async () => {
    const shop = await open(undefined, { limits: { backup: 1_000_000 } });
    await fill(shop);
    const file = newFile();
    await expect(shop.backup(file)).rejects.toThrow(/holds more than 976\.6 KiB; one zip takes 976\.6 KiB; .*copy the/);
    expect(readdirSync(files).filter((name) => file.endsWith(name) || name.endsWith(".part"))).toEqual([]);
    await expect(shop.backup(join(files, "no-such-folder", "shop.zip"))).rejects.toThrow(/cannot be written/);
  });
});

/** The same backup with its entries changed and its list of contents made to fit them. */
function respelt(file: string, change: (entries: Record<string, string>) => void): string {
  const entries = Object.fromEntries(
    Object.entries(unzipSync(readFileSync(file))).map(([name, bytes]) => [name, strFromU8(bytes, true)]),
  );
  change(entries);
  const contents = JSON.parse(entries["shop.json"]);
  for (const entry of contents.entries) {
    const bytes = Buffer.from(entries[entry.name] ?? "", "latin1");
    entry.size = bytes.length;
    entry.sha256 = createHash("sha256").update(bytes).digest("hex");
  }
  entries["shop.json"] = JSON.stringify(contents);
  return zipOf(entries);
}

function zipOf(entries: Record<string, string>): string {
  const file = newFile();
  const bytes = Object.entries(entries).map(([name, text]) => [name, strToU8(text, true)]);
  writeFileSync(file, zipSync(Object.fromEntries(bytes)));
  return file;
}

describe("a backup that is not what was written", () => {
  const sound = newFile();
  const entriesOf = () =>
    Object.fromEntries(
      Object.entries(unzipSync(readFileSync(sound))).map(([name, bytes]) => [name, strFromU8(bytes, true)]),
    );
  const changed = (change: (entries: Record<string, string>) => void) => () => {
    const entries = entriesOf();
    change(entries);
    return zipOf(entries);
  };
  const written = (bytes: Uint8Array) => {
    const file = newFile();
    writeFileSync(file, bytes);
    return file;
  };

  it.each<[string, () => string, RegExp]>([
    ["no zip", () => written(strToU8("traveler")), /no sound zip/],
    ["half a zip", () => written(readFileSync(sound).subarray(0, 900)), /no sound zip/],
    ["another zip", () => written(zipped), /shop\.json is not in it/],
    ["no file", () => join(files, "none.zip"), /cannot be read/],
    ["a folder", () => files, /cannot be read/],
    [
      "a changed row",
      changed((all) => {
        all["paper.jsonl"] = all["paper.jsonl"].replace("ridge", "rigde");
      }),
      /paper\.jsonl is not what was written/,
    ],
    [
      "a lost entry",
      changed((all) => {
        delete all["refusal.jsonl"];
      }),
      /refusal\.jsonl is not in it/,
    ],
    [
      "an entry more",
      changed((all) => {
        all["more.txt"] = "x";
      }),
      /more\.txt is not of it/,
    ],
    [
      "another mark",
      changed((all) => {
        all["shop.json"] = all["shop.json"].replace("bitwright-shop", "sheet");
      }),
      /no backup of a shop/,
    ],
    [
      "a newer backup",
      changed((all) => {
        all["shop.json"] = all["shop.json"].replace('"version": 1', '"version": 2');
      }),
      /of version 2, written by Bitwright test; this program reads version 1/,
    ],
    [
      "a row of another shape",
      () =>
        respelt(sound, (all) => {
          all["paper.jsonl"] = all["paper.jsonl"].replace('"current":2', '"current":"2"');
        }),
      /line \d of paper is no row/,
    ],
  ])("is refused: %s", async (_, file, words) => {
    if (!existsSync(sound)) {
      const shop = await openForTest(join(files, "sound"));
      await fill(shop);
      await shop.backup(sound);
      await shop.close();
    }
    const store = await openForTest(join(files, "for-refused"));
    await expect(store.restore(file())).rejects.toThrow(words);
    expect(await store.papers.list("traveler")).toEqual([]);
    await store.close();
  });
});
