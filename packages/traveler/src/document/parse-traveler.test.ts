import { rockById } from "@bitwright/engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import type { Assumed } from "./assumed.ts";
import { parseTraveler, writeTraveler } from "./parse-traveler.ts";
import type { ResolvedTraveler } from "./resolved-traveler.ts";

function parsed(document: unknown) {
  const read = parseTraveler(document);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return read;
}

const resolve = (document: unknown): ResolvedTraveler => parsed(document).resolved;
const assumedIn = (document: unknown): readonly Assumed[] => parsed(document).assumed;

const inch = 0.0254;
const foot = 12 * inch;
const lbf = 0.45359237 * 9.80665;

/** The least a person can write. */
const bare = () => ({
  format: "bitwright-traveler",
  version: 1,
  job: { name: "call of Tuesday" },
  inquiry: { holes: [{ diameter: "6 1/8 in", to: "300 ft" }] },
  ground: { beds: [{ thickness: "300 ft", rock: "shale" }] },
});

describe("a traveler with all of its facts", () => {
  it("needs nothing assumed and has nothing to remark", () => {
    expect(assumedIn(soundTraveler())).toEqual([]);
    expect(resolve(soundTraveler()).findings).toEqual([]);
  });

  it("is in SI when read", () => {
    const { inquiry, ground, bit } = resolve(soundTraveler());
    expect(inquiry.bitHole).toMatchObject({ name: "open hole", path: "inquiry.holes[1]", diameterAsTyped: "6 1/8 in" });
    expect(inquiry.bitHole.diameter).toBeCloseTo(6.125 * inch, 12);
    expect(inquiry.depth).toBeCloseTo(300 * foot, 9);
    expect(inquiry.rig.pullDown).toBeCloseTo(15000 * lbf, 6);
    expect(inquiry.rig.gaugeForceFactor).toBeCloseTo(7.5 * inch ** 2, 12);
    expect(inquiry.targets.weight).toBeCloseTo(6125 * lbf, 6);
    expect(inquiry.collars[0]?.length).toBeCloseTo(30 * foot, 9);
    expect(ground.beds.map(({ rock, rockFrom }) => [rock, rockFrom])).toEqual([
      ["clay", "entered"],
      ["gravel", "phrase"],
      ["shale", "entered"],
      ["limestone", "entered"],
    ]);
    expect(ground.beds[3]?.strength).toEqual({ low: 60e6, mid: 60e6, high: 60e6 });
    expect(bit).toMatchObject({ kind: "spec", cutter: "1308", wings: 5, cuttersPerWing: 3 });
  });

  it("comes back from its file as it was, unknown fields and all", () => {
    const own = { ...soundTraveler(), shopColour: "blue", inquiry: { ...soundTraveler().inquiry, gate: { code: 7 } } };
    const text = writeTraveler(parsed(own).traveler);
    expect(JSON.parse(text)).toEqual(own);
    expect(Object.keys(JSON.parse(text))).toEqual(Object.keys(own));
    expect(text).toContain('"6 1/8 in"');
    expect(parsed(text).traveler).toEqual(own);
  });

  it("reads the same as text and as value", () => {
    expect(resolve(JSON.stringify(soundTraveler()))).toEqual(resolve(soundTraveler()));
  });
});

describe("an older traveler", () => {
  it("opens quietly and is kept in today's version", () => {
    const { holes, ...rest } = soundTraveler().inquiry;
    const old = { ...soundTraveler(), version: 0, inquiry: { ...rest, hole: holes[1] } };
    const { traveler, resolved } = parsed(old);
    expect(traveler.version).toBe(1);
    expect(traveler.inquiry.holes).toEqual([holes[1]]);
    expect(resolved.inquiry.bitHole.name).toBe("open hole");
  });
});

describe("missing facts", () => {
  it("are each named once, with a value, a reason and a source", () => {
    const assumed = assumedIn(bare());
    const fields = assumed.map(({ field }) => field);
    expect(new Set(fields).size).toBe(fields.length);
    for (const fact of assumed) {
      expect(fact.text).not.toBe("");
      expect(fact.why.length).toBeGreaterThan(10);
      expect(fact.source.cite).not.toBe("");
    }
    expect(fields).toEqual(
      expect.arrayContaining([
        "inquiry.rig.pullDown",
        "inquiry.rig.torque",
        "inquiry.pump.flow",
        "inquiry.pipe.outsideDiameter",
        "inquiry.fluid.kind",
        "inquiry.fluid.density",
        "inquiry.waterLevel",
        "ground.beds[0].strength",
      ]),
    );
  });

  it("follow the hole: a small rig and light pipe for a loop hole, a larger one for a house well", () => {
    const loop = { ...bare(), inquiry: { holes: [{ diameter: "4 3/4 in", to: "300 ft" }] } };
    expect(resolve(loop).inquiry.pipe.outsideDiameter).toBeCloseTo(2.375 * inch, 9);
    expect(resolve(bare()).inquiry.pipe.outsideDiameter).toBeCloseTo(3.5 * inch, 9);
    expect(resolve(loop).inquiry.rig.torque).toBeLessThan(resolve(bare()).inquiry.rig.torque);
  });

  it("take strength from the rock table and say so, unless the traveler has it elsewhere", () => {
    const strength = assumedIn(bare()).find(({ field }) => field === "ground.beds[0].strength");
    expect(strength).toMatchObject({ si: rockById("shale").ucs.mid, source: rockById("shale").sources.ucs });
    const overridden = { ...bare(), overrides: { rocks: { shale: { ucs: "30 MPa" } } } };
    expect(assumedIn(overridden).map(({ field }) => field)).not.toContain("ground.beds[0].strength");
  });

  it("carry the last bed on where the hole goes deeper than the log", () => {
    const short = { ...bare(), ground: { beds: [{ thickness: "200 ft", rock: "shale" }] } };
    expect(resolve(short).ground.beds[0]?.bottom).toBeCloseTo(300 * foot, 9);
    expect(assumedIn(short)).toContainEqual(
      expect.objectContaining({ field: "ground.beds[0].bottom", text: "300 ft", unit: "m" }),
    );
  });

  it("make the fluid air where only a compressor is named", () => {
    const inquiry = { ...bare().inquiry, compressor: { flow: "900 cfm", pressure: "350 psi" } };
    expect(resolve({ ...bare(), inquiry }).inquiry.fluid.kind).toBe("air");
  });

  it("take the weight of a pipe of given measures from its steel", () => {
    const inquiry = { ...bare().inquiry, pipe: { outsideDiameter: "2 7/8 in", bore: "2.151 in" } };
    // Plain end 9.72 lb/ft after API Spec 5DP, recalled; joints add 5 to 12 %, common practice.
    const massPerFoot = (resolve({ ...bare(), inquiry }).inquiry.pipe.linearMass * foot) / 0.45359237;
    expect(massPerFoot).toBeGreaterThan(9.72 * 1.05);
    expect(massPerFoot).toBeLessThan(9.72 * 1.12);
  });
});

describe("gear of the lists", () => {
  const gear = (inquiry: object) => resolve({ ...bare(), inquiry: { ...bare().inquiry, ...inquiry } }).inquiry;

  it("is named by id or name, whatever the strokes and capitals", () => {
    for (const preset of ["2-7/8-10.40", "2 7/8 in, 10.40 lb/ft"]) {
      expect(gear({ pipe: { preset } }).pipe.bore).toBeCloseTo(2.151 * inch, 12);
    }
    expect(gear({ pipe: { preset: "3-1/2-13.30", connection: "3-1/2 reg" } }).pipe.connection).toBe("3 1/2 REG");
  });

  it("gives the rated figures of a rated rig and the low side of a class", () => {
    // US Navy training manual 14080: 15,000 lbf pull-down, 30,000 lbf pullback, 200 rpm.
    const rated = gear({ rig: { preset: "Military top-head rig" } }).rig;
    expect(rated.pullDown).toBeCloseTo(15000 * lbf, 6);
    expect(rated.rotarySpeedMax).toBeCloseTo((200 * 2 * Math.PI) / 60, 9);
    // Class of medium rigs, common practice: 25 to 45 klbf of hoist.
    expect(gear({ rig: { preset: "medium" } }).rig.hoist).toBeCloseTo(25000 * lbf, 6);
    expect(gear({ rig: { preset: "large" } }).rig.hoist).toBeCloseTo(50000 * lbf, 6);
  });

  it("is not made up where none suits: a hole too small for listed pipe", () => {
    const read = parseTraveler({ ...bare(), inquiry: { holes: [{ diameter: "2 in", to: "50 ft" }] } });
    expect(read.ok ? [] : read.problems.map(({ field, got }) => [field, got])).toEqual([
      ["inquiry.pipe.outsideDiameter", "nothing"],
    ]);
  });
});

describe("remarks that are no errors", () => {
  const codes = (document: unknown) => resolve(document).findings.map(({ code, where }) => [code, where]);

  it("a gap between beds", () => {
    const beds = [
      { top: "0 ft", bottom: "40 ft", rock: "clay" },
      { top: "50 ft", bottom: "300 ft", rock: "shale" },
    ];
    expect(codes({ ...bare(), ground: { beds } })).toEqual([["gap-between-beds", "ground.beds[1]"]]);
  });

  it("a rounding between feet and metres is none", () => {
    const beds = [
      { top: "0 ft", bottom: "40 ft", rock: "clay" },
      { top: "12.2 m", bottom: "300 ft", rock: "shale" },
    ];
    expect(codes({ ...bare(), ground: { beds } })).toEqual([]);
  });

  it("a speed over what the rig turns", () => {
    const overrides = { rotarySpeed: "200 rpm" };
    expect(codes({ ...soundTraveler(), overrides })).toEqual([["rotary-speed-over-gear", "overrides.rotarySpeed"]]);
  });

  it("a flow over what the pump gives", () => {
    expect(codes({ ...soundTraveler(), overrides: { flow: "300 gpm" } })).toEqual([
      ["flow-over-gear", "overrides.flow"],
    ]);
  });

  it("words that name no ground", () => {
    const beds = [{ thickness: "300 ft", phrase: "drilled all day" }];
    expect(codes({ ...bare(), ground: { beds } })).toEqual([["phrase-names-no-rock", "ground.beds[0]"]]);
  });

  it("a slip in the name of a field", () => {
    const rig = { pulldown: "3 klbf" };
    expect(codes({ ...bare(), inquiry: { ...bare().inquiry, rig } })).toEqual([
      ["field-not-known", "inquiry.rig.pulldown"],
    ]);
  });

  it("but not a field of the shop's own", () => {
    expect(codes({ ...bare(), $schema: "traveler", gate: 7, rigOperator: "on call", _comment: "x" })).toEqual([]);
  });

  it("a hole that a bit cannot reach through the one above", () => {
    const holes = [
      { name: "top", diameter: "5 in", to: "40 ft" },
      { name: "open", diameter: "6 1/8 in", to: "300 ft" },
    ];
    expect(codes({ ...bare(), inquiry: { holes } })).toEqual([["hole-not-smaller-than-above", "inquiry.holes[1]"]]);
  });
});

describe("a field that is missing", () => {
  const messages = (document: unknown) => {
    const read = parseTraveler(document);
    return read.ok ? [] : read.problems.map(({ message }) => message);
  };

  it("is told with the unknown fields beside it, where the fact may stand under another name", () => {
    const holes = [{ diamter: "6 1/8 in", bore: "6 in", to: "300 ft" }];
    expect(messages({ ...bare(), inquiry: { holes } })).toEqual([
      expect.stringMatching(
        /^inquiry\.holes\[0\]\.diameter: nothing is given \(and nothing is read from "diamter", "bore", which .+\); give a length/,
      ),
    ]);
  });

  it("is told alone where nothing beside it is unknown", () => {
    expect(messages({ ...bare(), gate: 7, inquiry: { holes: [{ to: "300 ft" }] } })).toEqual([
      expect.stringMatching(/^inquiry\.holes\[0\]\.diameter: nothing is given; give a length/),
    ]);
  });
});

describe("the hole of the bit", () => {
  const holes = [
    { name: "surface", diameter: "9 7/8 in", to: "45 ft" },
    { name: "open", diameter: "6 1/8 in", to: "300 ft" },
  ];
  const hole = (more: object, bit?: object) =>
    resolve({ ...bare(), inquiry: { holes, ...more }, ...(bit ? { bit } : {}) }).inquiry.bitHole.name;

  it("is the deepest, the one named, the one numbered or the one of the bit's diameter", () => {
    expect(hole({})).toBe("open");
    expect(hole({ bitHole: "Surface" })).toBe("surface");
    expect(hole({ bitHole: 1 })).toBe("surface");
    expect(hole({}, { spec: { diameter: "9.875 in" } })).toBe("surface");
  });
});

describe("lists of the shop's own", () => {
  it("win over those of the program and fill what is not given", () => {
    const lists = {
      rocks: [{ id: "hill-sandstone", like: "sandstone", ucs: { low: "4 ksi", high: "9 ksi" } }],
      cutters: [{ code: "1310", faceDiameter: "13.3 mm", length: "10 mm" }],
      rigs: [{ id: "rig-2", name: "old rig", pullDown: "9 klbf" }],
      pipe: [{ id: "rods", outsideDiameter: "2 3/8 in", bore: "1.8 in", weight: "7 lb/ft", jointLength: "10 ft" }],
    };
    const {
      inquiry,
      ground,
      bit,
      lists: own,
    } = resolve({
      ...bare(),
      inquiry: { ...bare().inquiry, rig: { preset: "rig-2" }, pipe: { preset: "rods", jointLength: "20 ft" } },
      ground: { beds: [{ thickness: "300 ft", rock: "Hill Sandstone" }] },
      bit: { spec: { cutter: "1310" } },
      lists,
    });
    expect(ground.beds[0]?.rock).toBe("hill-sandstone");
    expect(own.rocks[0]?.ucs?.mid).toBeCloseTo(Math.sqrt(4 * 9) * 6894757.293, -1);
    expect(bit).toMatchObject({ cutter: "1310" });
    expect(inquiry.rig).toMatchObject({ preset: "rig-2", name: "old rig" });
    expect(inquiry.rig.pullDown).toBeCloseTo(9000 * lbf, 6);
    expect(inquiry.pipe.outsideDiameter).toBeCloseTo(2.375 * inch, 12);
    expect(inquiry.pipe.jointLength).toBeCloseTo(20 * foot, 12);
  });
});

describe("strength from a log reading", () => {
  it("keeps the reading in SI under its correlation", () => {
    const strengthFrom = { correlation: "sonic-sandstone-bowen", reading: "80 us/ft" };
    const beds = [{ thickness: "300 ft", rock: "sandstone", strengthFrom }];
    const read = resolve({ ...bare(), ground: { beds } }).ground.beds[0]?.strengthFrom;
    expect(read?.correlation).toBe("sonic-sandstone-bowen");
    expect(read?.reading).toBeCloseTo(80e-6 / foot, 12);
  });
});

describe("whatever comes in", () => {
  it("never throws and always has a line that names a field", () => {
    const spoilt = fc.tuple(fc.nat(), fc.oneof(fc.jsonValue(), fc.constantFrom("-1 ft", "1e9 ft", "90 rpm", "")));
    fc.assert(
      fc.property(spoilt, ([at, value]) => {
        const document = spoiltAt(soundTraveler(), at, value);
        const read = parseTraveler(document);
        if (!read.ok) {
          expect(read.problems.length).toBeGreaterThan(0);
          for (const { message, field } of read.problems) expect(message.startsWith(`${field}: `)).toBe(true);
        }
      }),
      { numRuns: 400 },
    );
  });
});

describe("what only code can hand in", () => {
  it("is refused like the rest", () => {
    const ring: Record<string, unknown> = { ...bare() };
    ring.job = { name: ring };
    for (const input of [ring, { ...bare(), job: { name: 10n } }, undefined, Symbol("x"), () => 1, new Map()]) {
      const read = parseTraveler(input);
      expect(read.ok ? [] : read.problems.length).toBe(1);
    }
  });

  it("runs over one line only", () => {
    const read = parseTraveler({ ...bare(), inquiry: { holes: [{ diameter: "6\n1/8\nparsecs", to: "300 ft" }] } });
    expect(read.ok ? "" : read.problems[0]?.message).toMatch(
      /^inquiry\.holes\[0\]\.diameter: got "6 1\/8 parsecs", but/,
    );
  });
});

/** The document with the value of its `at`-th field, counted over and over, put to `value`. */
function spoiltAt(document: unknown, at: number, value: unknown): unknown {
  const paths: (readonly (string | number)[])[] = [];
  const walk = (node: unknown, path: readonly (string | number)[]) => {
    paths.push(path);
    if (Array.isArray(node)) for (const [place, item] of node.entries()) walk(item, [...path, place]);
    else if (typeof node === "object" && node !== null) {
      for (const [name, item] of Object.entries(node)) walk(item, [...path, name]);
    }
  };
  walk(document, []);
  const put = (node: unknown, [step, ...rest]: readonly (string | number)[]): unknown => {
    if (step === undefined) return value;
    if (Array.isArray(node)) return node.map((item, place) => (place === step ? put(item, rest) : item));
    return { ...(node as object), [step]: put((node as Record<string, unknown>)[step], rest) };
  };
  return put(document, paths[at % paths.length] ?? []);
}
