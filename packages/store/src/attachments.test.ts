import { createHash } from "node:crypto";
import { afterEach, beforeEach, expect, it } from "vitest";
import { describePlaces } from "../../../tests/support/places.ts";
import { openForTest, saving } from "../../../tests/support/shop-of-test.ts";
import type { Attaching, Store } from "./index.ts";

/** Bytes of every value in no short cycle, so that a piece out of its place is seen. */
const bytesLike = (length: number) => Uint8Array.from({ length }, (_, at) => (at * 31 + (at >> 8) * 7) % 256);

async function gathered(pieces: AsyncIterable<Uint8Array>): Promise<Buffer> {
  const all: Uint8Array[] = [];
  for await (const piece of pieces) all.push(piece);
  return Buffer.concat(all);
}

await describePlaces(({ fresh }) => {
  let store: Store;
  beforeEach(async () => {
    store = await openForTest(await fresh(), { limits: { attachment: 3_000_000 } });
    await store.papers.save(saving({}));
  });
  afterEach(() => store.close());
  const attaching = (more: Partial<Attaching>): Attaching => ({
    traveler: "ridge",
    name: "photo.jpg",
    mediaType: "image/jpeg",
    who: "Ada",
    note: "",
    bytes: [bytesLike(10)],
    ...more,
  });

  it.each([0, 1, 1024 ** 2 - 1, 1024 ** 2, 1024 ** 2 + 1, 3_000_000])(
    "gives %d bytes back as they were",
    async (length) => {
      const bytes = bytesLike(length);
      // Handed over in parts that fit no piece.
      const parts = Array.from({ length: Math.ceil(length / 700_001) }, (_, at) =>
        bytes.subarray(at * 700_001, (at + 1) * 700_001),
      );
      const added = await store.attachments.add(attaching({ bytes: parts, note: "of the gauge" }));
      expect(added).toMatchObject({ name: "photo.jpg", mediaType: "image/jpeg", size: length, note: "of the gauge" });
      expect(added.sha256).toBe(createHash("sha256").update(bytes).digest("hex"));
      expect(await store.attachments.list("ridge")).toEqual([added]);
      expect((await gathered(store.attachments.bytes(added))).equals(bytes)).toBe(true);
    },
  );

  it("refuses a file past the limit and keeps nothing of it", async () => {
    const bytes = [bytesLike(2_000_000), bytesLike(1_000_001)];
    await expect(store.attachments.add(attaching({ bytes }))).rejects.toThrow(
      "attachment: got more than 2.9 MiB; give a file of at most 2.9 MiB",
    );
    expect(await store.attachments.list("ridge")).toEqual([]);
    expect(await store.faults()).toEqual([]);
  });

  it("keeps nothing of a file that breaks off", async () => {
    async function* broken() {
      yield bytesLike(1_500_000);
      throw new Error("the line broke");
    }
    await expect(store.attachments.add(attaching({ bytes: broken() }))).rejects.toThrow("the line broke");
    expect(await store.attachments.list("ridge")).toEqual([]);
    expect((await store.attachments.add(attaching({}))).size).toBe(10);
  });

  it("writes over no file of the same name", async () => {
    const first = await store.attachments.add(attaching({}));
    await expect(store.attachments.add(attaching({ bytes: [bytesLike(20)] }))).rejects.toThrow(
      'ridge has an attachment "photo.jpg" already; give another name',
    );
    expect((await gathered(store.attachments.bytes(first))).length).toBe(10);
    await store.papers.save(saving({ name: "other" }));
    expect((await store.attachments.add(attaching({ traveler: "other" }))).name).toBe("photo.jpg");
  });

  it("says so when the bytes are not those that were kept", async () => {
    const added = await store.attachments.add(attaching({}));
    const other = { ...added, sha256: added.sha256.replace(/^./, (digit) => (digit === "0" ? "1" : "0")) };
    await expect(gathered(store.attachments.bytes(other))).rejects.toThrow(/not the 10 B that were kept/);
    await expect(gathered(store.attachments.bytes({ ...added, id: "no-such" }))).rejects.toThrow(/gives 0 B/);
  });

  it.each([
    [{ traveler: "ridg" }, /no traveler of the name "ridg" is kept/],
    [{ name: "a/b" }, /^attachment: got "a\/b"/],
    [{ mediaType: "photo" }, /^mediaType: got "photo"; give a kind of file such as image\/jpeg/],
    [{ who: "" }, /^who: got nothing/],
  ] as const)("refuses %o", async (wrong, words) => {
    await expect(store.attachments.add(attaching(wrong))).rejects.toThrow(words);
    expect(await store.attachments.list("ridge")).toEqual([]);
  });
});
