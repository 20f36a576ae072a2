import { readFileSync } from "node:fs";
import { sheetsOf } from "@bitwright/shop";
import { cardPrint } from "@bitwright/shop/print";
import { parseTraveler, type UnitSystem, workUp, workupJson } from "@bitwright/traveler";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { projectFile } from "../../../../tests/support/command.ts";
import { type ServerOfTest, serverOfTest } from "../../../../tests/support/server-of-test.ts";
import { saving, travelerText } from "../../../../tests/support/shop-of-test.ts";

const text = readFileSync(projectFile("examples/loop-hole.traveler.json"), "utf8");

function workedHere(document: string) {
  const read = parseTraveler(document);
  if (!read.ok) throw new Error("the example is not sound");
  return workUp(read);
}

let server: ServerOfTest;
beforeAll(async () => {
  server = await serverOfTest();
  await server.store.papers.save(saving({ name: "loop", body: text }));
  await server.store.papers.save(saving({ name: "loop", body: travelerText("Other"), basedOn: 1 }));
});
afterAll(() => server.close());

const get = (path: string) => server.app.inject(`/api/travelers/loop${path}`);

describe("a workup", () => {
  it("is that of the very version, worked up by the server, and says by which program", async () => {
    const { statusCode, headers, body } = await get("/workup?version=1");
    expect([statusCode, headers["content-type"]]).toEqual([200, "application/json; charset=utf-8"]);
    expect(body).toBe(workupJson(workedHere(text)));
    expect([headers["bitwright-traveler-version"], headers["bitwright-program"]]).toEqual(["1", "Bitwright 9.8.7"]);
    const newest = await get("/workup");
    expect(newest.headers["bitwright-traveler-version"]).toBe("2");
    expect(newest.json().inquiry.job.name).toBe("Other");
  });

  it("takes no figure from a document", async () => {
    const traveler = JSON.parse(text);
    const forged = { ...traveler, workup: { card: "run it at 90,000 lbf" }, findings: [] };
    const made = await server.app.inject({ method: "POST", url: "/api/travelers", payload: { document: forged } });
    const { id, findings } = made.json();
    const worked = await server.app.inject(`/api/travelers/${id}/workup`);
    const { assumed, ...figures } = worked.json();
    const { assumed: _, ...here } = JSON.parse(workupJson(workedHere(text)));
    expect(figures).toEqual(here);
    expect(findings.stop + findings.caution + findings.note).toBe(here.findings.length);
    expect(JSON.stringify(assumed)).not.toContain("90,000");
  });

  it("leaves the server free to answer meanwhile", async () => {
    await server.store.papers.save(saving({ name: "busy", body: travelerText("Busy") }));
    const answered: string[] = [];
    const working = server.app.inject("/api/travelers/busy/workup").then(() => answered.push("workup"));
    await server.app.inject("/api/about").then(() => answered.push("about"));
    await working;
    expect(answered).toEqual(["about", "workup"]);
  });
});

describe("the sheets", () => {
  const TYPES = {
    svg: "image/svg+xml",
    txt: "text/plain",
    html: "text/html",
    csv: "text/csv",
    json: "application/json",
  } as const;

  it.each<UnitSystem>(["field", "metric"])("are those that the shop's own code makes, in %s units", async (units) => {
    const made = sheetsOf(workedHere(text), { units, program: "Bitwright 9.8.7" });
    expect((await get("/sheets?version=1")).json()).toEqual({
      version: 1,
      program: "Bitwright 9.8.7",
      sheets: [...made.map(({ name }) => name), "card.pdf"],
    });
    for (const sheet of made) {
      const { headers, body } = await get(`/sheets/${sheet.name}?version=1&units=${units}`);
      expect(body).toBe(sheet.text);
      const type = TYPES[sheet.name.split(".")[1] as keyof typeof TYPES];
      expect(headers["content-type"]).toBe(`${type}; charset=utf-8`);
      expect(headers["content-security-policy"]).toContain("default-src 'none'");
      expect(headers["bitwright-traveler-version"]).toBe("1");
    }
  });

  it("hold the card as it prints, byte for byte that of the shop's own code, and another in other units", async () => {
    const card = await server.app.inject("/api/travelers/loop/sheets/card.pdf?version=1&units=metric");
    expect([card.statusCode, card.headers["content-type"]]).toEqual([200, "application/pdf"]);
    const { pdf } = cardPrint(workedHere(text), { units: "metric", program: "Bitwright 9.8.7" });
    expect(card.rawPayload.equals(Buffer.from(pdf))).toBe(true);
    const field = await server.app.inject("/api/travelers/loop/sheets/card.pdf?version=1&units=field");
    expect(field.rawPayload.equals(card.rawPayload)).toBe(false);
  });

  it("give the card of the phone under a short address as well", async () => {
    const { body, headers } = await get("/sheets/card.html?version=1");
    const short = await server.app.inject("/card/loop?version=1");
    expect([short.statusCode, short.headers["content-type"]]).toEqual([200, headers["content-type"]]);
    expect(short.body).toBe(body);
    expect((await server.app.inject("/card/nobody")).statusCode).toBe(404);
  });

  it("are named where one is asked for that there is not", async () => {
    const { statusCode, json } = await get("/sheets/back.svg");
    expect([statusCode, json().detail]).toEqual([404, expect.stringContaining("card.txt, card.html, cutters.csv")]);
  });
});
