import {
  breakInFor,
  type CardContent,
  type CardFeed,
  type CardRow,
  safetyCautions,
  stopSigns,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { cardText } from "./card-text.ts";
import { feedRows } from "./feed-rows.ts";

const foot = 0.3048;
const poundForce = 0.45359237 * 9.80665;
const rpm = (2 * Math.PI) / 60;

const depth = (feet: number) => ({ kind: "depth", value: feet * foot }) as const;
const pounds = (low: number, high?: number) =>
  ({ kind: "force", value: low * poundForce, ...(high ? { to: high * poundForce } : {}) }) as const;

function feedAt(feet: number): CardFeed {
  const push = 3000 - 20 * feet;
  return {
    depth: depth(feet),
    act: Math.abs(push) < 100 ? "let it hang" : push > 0 ? "pull down" : "hold back",
    force: pounds(Math.abs(push)),
    wanted: pounds(4800),
    string: pounds(4800 - push),
    gauge: { kind: "pressure", value: Math.abs(push) * 900 },
  };
}

function drilled(ground: string, from: number, to: number, more: Partial<CardRow> = {}): CardRow {
  const joints = Array.from(
    { length: Math.floor(to / 20) - Math.floor(from / 20) },
    (_, k) => 20 * (Math.floor(from / 20) + k + 1),
  );
  return {
    ground,
    from: depth(from),
    to: depth(to),
    verdict: "fit",
    drilled: true,
    weight: pounds(4800, 6120),
    rotarySpeed: { kind: "rotary speed", value: 90 * rpm },
    flow: { kind: "flow", value: 0.0095 },
    rate: { kind: "rate", value: (40 * foot) / 3600, to: (85 * foot) / 3600 },
    practiceWeight: pounds(6125),
    practiceSpeed: { kind: "rotary speed", value: 90 * rpm },
    feed: joints.map(feedAt),
    remarks: [],
    ...more,
  };
}

const start = breakInFor({ fullWeight: 6000 * poundForce, fullSpeed: 90 * rpm });
const content: CardContent = {
  job: "Orchard lane\nwell 2",
  customer: "Quillback Drilling",
  bit: "6 1/8 in matrix bit, five wings of three 13.44 mm cutters, 16 degree bevel, five 1/2 in ports",
  hole: { kind: "diameter", value: 0.155575 },
  casing: depth(45),
  casingWords: ["Chert gravel from 38 to 44 ft would break the cutters; it has to be cased off first."],
  rows: [
    { ...drilled("clay", 0, 38), drilled: false, feed: [], remarks: ["Not with this bit. Use: drag blade, auger."] },
    {
      ...drilled("chert gravel with a long name that does not fit", 38, 44),
      verdict: "unfit",
      drilled: false,
      feed: [],
      remarks: ["Not with this bit. Use: roller, hammer with casing advance."],
    },
    drilled("shale", 44, 140),
    drilled("limestone, broken at the top", 140, 210, {
      verdict: "fit with care",
      remarks: ["Broken rock: slow the rotation going in."],
    }),
    drilled("sandstone", 210, 300),
  ],
  breakIn: {
    length: { kind: "length", value: start.length },
    weight: pounds(2000, 3000),
    rotarySpeed: { kind: "rotary speed", value: 40 * rpm, to: 60 * rpm },
    steps: start.steps,
  },
  stopSigns: stopSigns({ fits: [], fluid: "bentonite" }),
  cautions: safetyCautions({ fits: [], fluid: "bentonite", mayFlow: true, places: ["rig"] }),
  warnings: ["sandstone: the pump cleans no more than 62 ft/h from this hole; hold the rate under it."],
  standing: "An estimate from the ground as it was logged, never a permission.",
  sources: [],
};
const paper = { units: "field", shop: "Fernhollow Bit Works", date: "2026-01-15", program: "Bitwright 0.0.0" } as const;

describe("cardText", () => {
  const text = cardText(content, paper);
  const lines = text.trimEnd().split("\n");

  it("fits one page of 66 lines and 80 columns, in field and in metric units", () => {
    for (const units of ["field", "metric"] as const) {
      const page = cardText(content, { ...paper, units })
        .trimEnd()
        .split("\n");
      expect(page.length).toBeLessThanOrEqual(66);
      expect(Math.max(...page.map((line) => [...line].length))).toBeLessThanOrEqual(80);
    }
  });

  it("says what to do in each bed, and plainly where the bit does not go", () => {
    expect(text).toMatch(/44 {3}140 shale +4,800-6,120 +90 +151 +40-85/);
    expect(text).toMatch(
      /38 {4}44 chert gravel with a long name that does not fit: NOT THIS BIT\.\s+Use:\s+roller, hammer/,
    );
    expect(text).toMatch(/! limestone, broken at +4,800-6,120.*\n +the top/);
    expect(text).toContain("CASE TO 45 ft BEFORE THIS BIT GOES IN");
    expect(text).toContain("Rule of thumb (common practice): 6,130 lbf at 90 rpm.");
  });

  it("gives weight wanted, weight of the string, push, hang or hold-back and the gauge reading at every joint", () => {
    // 900 Pa for each lbf: 1,800 lbf are 235 psi, 3,000 lbf are 392 psi.
    expect(text).toMatch(/60 +4,800 +3,000 PUSH +1,800 +235/);
    expect(text).toMatch(/150 +4,800 +4,800 HANG|160 +4,800 +5,000 HOLD +200 +26/);
    expect(text).toMatch(/300 +4,800 +7,800 HOLD +3,000 +392/);
    for (let feet = 60; feet <= 300; feet += 20) expect(text).toMatch(new RegExp(`(^| )${feet} +4,800 `, "m"));
  });

  it("prints some of the joints of a deep hole, evenly, and says how many", () => {
    const rows = [drilled("shale", 44, 2000)];
    const page = cardText({ ...content, rows }, paper);
    const [, shown, of] = /(\d+) of (\d+) joints; between two of them/.exec(page) ?? [];
    expect(Number(of)).toBe(98);
    expect(Number(shown)).toBe(page.match(/ (PUSH|HOLD|HANG) /g)?.length);
    expect(Number(shown)).toBeGreaterThanOrEqual(20);
    expect(page.trimEnd().split("\n").length).toBeLessThanOrEqual(66);
    expect(page).toMatch(/2,?000 +4,800/);
  });

  it("cuts no figure, however heavy or deep", () => {
    const heavy = { wanted: pounds(112_000), string: pounds(234_000), force: pounds(122_000) };
    const feed = [15_000, 19_990, 20_000].map((feet) => ({ ...feedAt(feet), ...heavy }));
    const rows = [{ ...drilled("shale", 12_000, 20_000, { weight: pounds(112_000, 118_000) }), feed }];
    const page = cardText({ ...content, rows }, paper);
    expect(page).toMatch(/12,000 20,000 shale +112,000-118,000 +90 /);
    expect(page).toMatch(/20,000 112,000 234,000 HOLD 122,000/);
    expect(Math.max(...page.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it("says how hard to make the bit up, and that the rig cannot where it cannot", () => {
    const pound = 1.3558179483;
    const makeUp = { thread: "3 1/2 REG", torque: { kind: "torque", value: 6600 * pound } } as const;
    expect(cardText({ ...content, makeUp }, paper)).toContain("MAKE UP 3 1/2 REG to 6,600 ft-lbf, with compound.");
    const short = { kind: "torque", value: 4500 * pound } as const;
    const page = cardText({ ...content, makeUp: { ...makeUp, short } }, paper);
    expect(page).toContain("MAKE UP 3 1/2 REG to 6,600 ft-lbf; the rig has 4,500 ft-lbf: tongs with gauge.");
  });

  it("says what fuel to bring where there is room", () => {
    const gallon = 3.785411784e-3;
    const fuel = {
      drilling: { kind: "fuel flow", value: (2 * gallon) / 3600, to: (2.9 * gallon) / 3600 },
      hole: { kind: "volume", value: 8.6 * gallon },
    } as const;
    const { warnings: _, ...quiet } = content;
    expect(cardText({ ...quiet, warnings: [], fuel }, paper)).toContain(
      "FUEL 2-2.9 gal/h drilling, about 8.6 gal for the hole.",
    );
  });

  it("keeps every stop sign, every caution with its deferral, and the standing of the card", () => {
    for (const { sign } of content.stopSigns) expect(text.replace(/\s+/g, " ")).toContain(sign.toUpperCase());
    for (const { topic } of content.cautions) expect(text.replace(/\s+/g, " ")).toContain(`${topic.toUpperCase()}:`);
    expect(text.replace(/\s+/g, " ")).toContain("Follow local code and licensed practice.");
    expect(text).toContain(content.standing);
    expect(text).toContain("Bitwright 0.0.0, field units, card 1 of 1.");
  });

  it("puts what a person typed on one line", () => {
    expect(lines[1]).toBe("DRILLER'S CARD   Orchard lane well 2");
  });

  it("still holds to one page for a deep hole of twelve beds with much to warn of", () => {
    const rows = Array.from({ length: 12 }, (_, k) =>
      drilled(`bed ${k + 1}`, 100 * k, 100 * (k + 1), {
        remarks: ["One remark.", "Another, rather longer remark on this bed."],
      }),
    );
    const warned = Array.from({ length: 20 }, (_, k) => `bed ${k}: ${`thing ${k} to be careful about `.repeat(4)}`);
    const page = cardText({ ...content, rows, warnings: warned }, paper);
    expect(page.trimEnd().split("\n").length).toBeLessThanOrEqual(66);
    for (const { ground } of rows) expect(page).toContain(ground);
    expect(page).toMatch(/WATCH; and \d+ more on the summary/);
  });

  it("says first of all that a bit without ground for it is not to be run", () => {
    const rows = content.rows.map((row) => ({ ...row, drilled: false, feed: [] }));
    expect(cardText({ ...content, rows }, paper)).toContain("! DO NOT RUN THIS BIT IN THIS HOLE.");
    expect(text).not.toContain("DO NOT RUN");
  });

  it("sends the driller by the rate where the ground is too soft to set a weight", () => {
    const rows = content.rows.map((row) => (row.ground === "shale" ? { ...row, weight: pounds(37) } : row));
    const page = cardText({ ...content, rows }, paper);
    expect(page).toMatch(/44 {3}140 shale +by rate +90/);
    expect(page).toContain("by rate: too soft to set a weight.");
    expect(text).not.toContain("by rate");
  });

  it("prints no pump flow for a hole drilled on air, mist or foam", () => {
    const air = cardText(content, { ...paper, blownWith: { medium: "air", leastAirFlow: 0.24 } });
    expect(air).toMatch(/44 {3}140 shale +4,800-6,120 +90 +- +40-85/);
    expect(air).not.toContain("gpm");
    expect(air).toContain("Air: at least 509 cfm of free air");
    expect(cardText(content, { ...paper, blownWith: { medium: "foam" } })).toContain("Foam: not worked out here");
  });

  it("gives forces to the same fineness in both systems", () => {
    expect(cardText(content, { ...paper, units: "metric" })).toMatch(/13\.41 +42\.67 shale +21\.4-27\.2 +90/);
  });

  it("tells a warning of several places once", () => {
    const page = cardText({ ...content, warnings: ["shale: Go slow.", "chalk: Go slow.", "chalk: Look."] }, paper);
    expect(page).toContain("* shale; chalk: Go slow.");
    expect(page).toContain("* chalk: Look.");
  });

  it("says so where the rig's gauge factor is not known", () => {
    const rows = content.rows.map((row) => ({ ...row, feed: row.feed.map(({ gauge: _, ...rest }) => rest) }));
    expect(cardText({ ...content, rows }, paper)).toContain("No gauge readings");
  });
});

describe("feedRows", () => {
  it("tells each change by its first joint where both sides are too many", () => {
    const feed = Array.from(
      { length: 40 },
      (_, k): CardFeed => ({ ...feedAt(20 * k), act: k % 2 ? "hold back" : "pull down" }),
    );
    const kept = feedRows({ ...content, rows: [{ ...drilled("shale", 0, 800), feed }] }, 12);
    expect(kept.length).toBeLessThanOrEqual(12);
    expect([kept[0], kept.at(-1)]).toEqual([feed[0], feed.at(-1)]);
  });

  it("keeps both sides of every change of act and the ends", () => {
    const all = content.rows.flatMap(({ feed }) => feed);
    const kept = feedRows(content, 6);
    expect(kept).toHaveLength(6);
    expect(kept[0]).toBe(all[0]);
    expect(kept.at(-1)).toBe(all.at(-1));
    const hanging = all.findIndex(({ act }) => act === "let it hang");
    for (const k of [hanging - 1, hanging, hanging + 1]) if (all[k]) expect(kept).toContain(all[k]);
  });
});
