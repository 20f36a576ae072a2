import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { afterAll, beforeAll, expect, it } from "vitest";
import { projectFile } from "../../../../tests/support/command.ts";
import { describePlaces } from "../../../../tests/support/places.ts";
import { formOf, type ServerOfTest, serverOfTest } from "../../../../tests/support/server-of-test.ts";
import { saving, travelerText } from "../../../../tests/support/shop-of-test.ts";

const MOST = 3_000_000;
/** Bytes of a photo that a text would not survive, over more than one piece of the store. */
const PHOTO = Buffer.from(Array.from({ length: 1_500_000 }, (_, byte) => (byte * 7) % 251));

/** Temporary files of uploads and exports; other programs of ours may be at work beside the test. */
const temporary = () => readdirSync(tmpdir()).filter((name) => /^bitwright-(upload|export)-/.test(name));
const before = new Set(temporary());

await describePlaces(({ fresh }) => {
  let server: ServerOfTest;
  const get = (url: string) => server.app.inject({ url });
  const post = (url: string, headers: Record<string, string>, payload: string | Buffer) =>
    server.app.inject({ method: "POST", url, headers, payload });
  const type = (name: string) => ({ "content-type": name });

  beforeAll(async () => {
    server = await serverOfTest({ place: await fresh(), limits: { attachment: 2_000_000, import: MOST } });
    await server.store.papers.save(saving({}));
  });
  afterAll(() => server.close());

  it("keeps a photo that comes as a form, and gives it back byte for byte", async () => {
    const form = await formOf({ note: "dull", file: new File([PHOTO], "face of the bit.jpg", { type: "image/jpeg" }) });
    const added = await post("/api/travelers/ridge/attachments", form.headers, form.payload);
    expect(added.statusCode).toBe(201);
    expect(added.json()).toMatchObject({
      name: "face of the bit.jpg",
      mediaType: "image/jpeg",
      size: PHOTO.length,
      sha256: createHash("sha256").update(PHOTO).digest("hex"),
      addedBy: "Ada",
      note: "dull",
    });
    const taken = await get(String(added.headers.location));
    expect(taken.rawPayload.equals(PHOTO)).toBe(true);
    expect(taken.headers).toMatchObject({
      "content-type": "image/jpeg",
      "content-length": String(PHOTO.length),
      "x-content-type-options": "nosniff",
    });
    expect(taken.headers["content-disposition"]).toMatch(/^attachment; filename="face_of_the_bit.jpg"/);
    expect(taken.headers["content-security-policy"]).toContain("sandbox");
    expect((await get("/api/travelers/ridge/attachments")).json().attachments).toEqual([added.json()]);
  });

  it("keeps one that comes as it is, JSON among them", async () => {
    const url = "/api/travelers/ridge/attachments?name=log.json&note=of%20the%20pump";
    const added = await post(url, type("application/json"), '{"not": "read"');
    expect(added.json()).toMatchObject({
      name: "log.json",
      mediaType: "application/json",
      note: "of the pump",
      size: 14,
    });
    expect((await get("/api/travelers/ridge/attachments/log.json")).body).toBe('{"not": "read"');
  });

  it.each([
    ["of a name that is taken", 409, "?name=log.json", Buffer.from("x")],
    ["without a name", 422, "", Buffer.from("x")],
    ["with a name that leads elsewhere", 422, "?name=..%2F..%2Fetc%2Fpasswd", Buffer.from("x")],
    ["that is too large", 413, "?name=large.bin", Buffer.alloc(2_000_001)],
  ])("refuses a file %s", async (_, status, query, bytes) => {
    const refused = await post(`/api/travelers/ridge/attachments${query}`, type("application/octet-stream"), bytes);
    expect([refused.statusCode, refused.headers["content-type"]]).toEqual([
      status,
      "application/problem+json; charset=utf-8",
    ]);
    expect((await get("/api/travelers/ridge/attachments")).json().attachments).toHaveLength(2);
  });

  it("refuses a form whose file is too large, one without a file, and a file of a traveler that there is not", async () => {
    const large = await formOf({ file: new File([Buffer.alloc(2_000_001)], "large.bin") });
    expect((await post("/api/travelers/ridge/attachments", large.headers, large.payload)).statusCode).toBe(413);
    const none = await formOf({ note: "nothing" });
    expect((await post("/api/travelers/ridge/attachments", none.headers, none.payload)).statusCode).toBe(422);
    expect((await post("/api/travelers/none/attachments", type("text/plain"), "x")).statusCode).toBe(404);
    const absent = await get("/api/travelers/ridge/attachments/foot.jpg");
    expect([absent.statusCode, absent.json().detail]).toEqual([
      404,
      expect.stringContaining("there is face of the bit.jpg, log.json"),
    ]);
  });

  it("makes a traveler of a traveler file, and keeps the text as it is in the file", async () => {
    const text = readFileSync(projectFile("examples/loop-hole.traveler.json"), "utf8");
    const made = await post("/api/import", type("application/json"), text);
    expect(made.statusCode).toBe(201);
    const { id, sound, version } = made.json().traveler;
    expect([sound, version]).toEqual([true, 1]);
    expect((await get(`/api/travelers/${id}/file`)).body).toBe(text);
    const form = await formOf({ file: new File([`\uFEFF${travelerText("From a form")}`], "f.traveler.json") });
    expect((await post("/api/import", form.headers, form.payload)).json().traveler).toMatchObject({
      id: "from-a-form",
      name: "From a form",
    });
  });

  it.each([
    ["a picture", 415, "image/png", Buffer.from("x")],
    ["JSON that is no traveler", 422, "application/json", Buffer.from('{"a": 1}')],
    ["a text that is no JSON", 422, "application/json", Buffer.from("{")],
    ["bytes that are no text", 422, "application/json", Buffer.from([0xff, 0xfe, 0x00])],
    ["a zip that is none", 422, "application/zip", Buffer.from("PK no zip")],
    ["more than is taken", 413, "application/zip", Buffer.alloc(MOST + 1)],
  ])("does not import %s", async (_, status, kind, bytes) => {
    const there = (await get("/api/travelers")).json().travelers.length;
    const refused = await post("/api/import", type(kind), bytes);
    expect([refused.statusCode, refused.json().status]).toEqual([status, status]);
    expect((await get("/api/travelers")).json().travelers).toHaveLength(there);
  });

  it("exports the whole shop, which fills an empty one and no other", async () => {
    const zip = await get("/api/export");
    expect(zip.headers).toMatchObject({ "content-type": "application/zip" });
    expect(zip.headers["content-disposition"]).toContain('filename="bitwright-shop.zip"');
    const over = await post("/api/import", type("application/zip"), zip.rawPayload);
    expect([over.statusCode, over.json().detail]).toEqual([409, expect.stringContaining("holds a shop already")]);
    const other = await serverOfTest({ place: await fresh() });
    const headers = type("application/zip");
    const filled = await other.app.inject({ method: "POST", url: "/api/import", headers, payload: zip.rawPayload });
    expect(filled.json().shop).toMatchObject({ attachments: 2, papers: 3 });
    const [there, here] = [await other.app.inject("/api/travelers"), await get("/api/travelers")];
    expect(there.json()).toEqual(here.json());
    await other.close();
  });

  it("takes a sending that breaks off for no fault of the program, and keeps nothing of it", async () => {
    const { port } = new URL(await server.app.listen({ host: "127.0.0.1", port: 0 }));
    const head =
      "POST /api/travelers/ridge/attachments?name=half.bin HTTP/1.1\r\nhost: localhost\r\ncontent-length: 9999";
    await new Promise<void>((broken) => {
      const socket = connect(Number(port), "127.0.0.1", () => {
        socket.write(`${head}\r\ncontent-type: image/png\r\n\r\nhalf`, () => setTimeout(() => socket.destroy(), 200));
      });
      socket.on("close", () => broken());
    });
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(server.faults).toEqual([]);
    expect((await get("/api/travelers/ridge/attachments")).json().attachments).toHaveLength(2);
  });

  it("leaves no temporary file behind", async () => {
    await expect.poll(() => temporary().filter((name) => !before.has(name)), { timeout: 5000 }).toEqual([]);
  });
});
