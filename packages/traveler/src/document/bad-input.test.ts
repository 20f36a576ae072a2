import { describe, expect, it } from "vitest";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "./parse-traveler.ts";

type Path = readonly (string | number)[];

/** The sound traveler with one place put to another value, or taken out where the value is `undefined`. */
function spoilt(path: Path, value: unknown): unknown {
  const put = (node: unknown, [step, ...rest]: Path): unknown => {
    if (step === undefined) return value;
    if (Array.isArray(node)) return node.map((item, at) => (at === step ? put(item, rest) : item));
    const group = (node ?? {}) as Record<string, unknown>;
    const { [step]: old, ...others } = group;
    const next = put(old, rest);
    return next === undefined ? others : { ...group, [step]: next };
  };
  return put(soundTraveler(), path);
}

/** The traveler with a table of an as-measured bit in place of its specification. */
const measured = (table: object) => spoilt(["bit"], { measured: table });
const row = { radius: 20, azimuth: 0, height: 0, backRake: 15, cutter: "1308" };

const hole = ["inquiry", "holes", 1] as const;
const bed = (at: number) => ["ground", "beds", at] as const;

const cases: readonly (readonly [string, unknown, string])[] = [
  [
    "not JSON",
    '{\n "format": "bitwright-traveler"\n "version": 1\n}',
    'traveler: the text is not JSON at line 3, column 2: a comma or } is missing before "; give a traveler as JSON text',
  ],
  [
    "an empty file",
    "",
    "traveler: the text is not JSON at line 1, column 1: the file is empty; give a traveler as JSON text",
  ],
  ["no traveler at all", [], "traveler: got []; give a traveler, a group of fields in braces { }"],
  [
    "no mark",
    spoilt(["format"], undefined),
    'format: nothing is given; give "bitwright-traveler", the mark by which a traveler is known',
  ],
  [
    "a newer version",
    spoilt(["version"], 3),
    "version: this traveler was saved by a newer Bitwright (version 3); this one reads up to version 1",
  ],
  [
    "no version",
    spoilt(["version"], undefined),
    "version: nothing is given; give the version of the document, a whole number up to 1",
  ],
  ["no job", spoilt(["job"], undefined), "job: nothing is given; give a group of fields in braces { }"],
  [
    "an empty name",
    spoilt(["job", "name"], " "),
    'job.name: nothing is given; give a text, for example "Ridge Road house well"',
  ],
  [
    "a list where a group stands",
    spoilt(["inquiry", "rig"], []),
    "inquiry.rig: got []; give a group of fields in braces { }",
  ],
  [
    "a wrong kind of unit",
    spoilt([...hole, "diameter"], "90 rpm"),
    'inquiry.holes[1].diameter: got "90 rpm", which is a rotary speed; give a length of 0.5 in to 60 in, for example "6 1/8 in" or "155.6 mm"',
  ],
  [
    "a bare number",
    spoilt([...hole, "diameter"], 6.125),
    'inquiry.holes[1].diameter: got 6.125 without a unit; give a length of 0.5 in to 60 in, for example "6 1/8 in" or "155.6 mm"',
  ],
  [
    "a bare number as text",
    spoilt([...hole, "to"], "300"),
    'inquiry.holes[1].to: got "300" without a unit; give a length of 0 ft to 20000 ft, for example "300 ft" or "91.5 m"',
  ],
  [
    "not a number",
    spoilt(["inquiry", "pump", "flow"], Number.NaN),
    'inquiry.pump.flow: got NaN, which is no number to work with; give a flow of 1 gpm to 5000 gpm, for example "150 gpm" or "570 L/min"',
  ],
  [
    "not a number as text",
    spoilt(["inquiry", "pump", "flow"], "NaN gpm"),
    'inquiry.pump.flow: got "NaN gpm", which is no number to work with; give a flow of 1 gpm to 5000 gpm, for example "150 gpm" or "570 L/min"',
  ],
  [
    "without end",
    spoilt(["inquiry", "depth"], Number.POSITIVE_INFINITY),
    'inquiry.depth: got Infinity, which is no number to work with; give a length of 0 ft to 20000 ft, for example "300 ft" or "91.5 m"',
  ],
  [
    "a negative length",
    spoilt(["inquiry", "pipe", "jointLength"], "-20 ft"),
    'inquiry.pipe.jointLength: got "-20 ft", which is below zero; give a length of 1 ft to 100 ft',
  ],
  [
    "a hole too small",
    spoilt([...hole, "diameter"], "1/4 in"),
    'inquiry.holes[1].diameter: got "1/4 in", which is under 0.5 in; give a length of 0.5 in to 60 in, for example "6 1/8 in" or "155.6 mm"',
  ],
  [
    "a comma of two readings",
    spoilt(["inquiry", "depth"], "1,234 m"),
    'inquiry.depth: got "1,234 m", where the comma may part thousands or decimals: write 1234 or 1.234; give a length of 0 ft to 20000 ft, for example "300 ft" or "91.5 m"',
  ],
  [
    "an unknown unit",
    spoilt(["inquiry", "depth"], "50 fathoms"),
    'inquiry.depth: got "50 fathoms", but "fathoms" is no unit known here; give a length of 0 ft to 20000 ft, for example "300 ft" or "91.5 m"',
  ],
  [
    "an impossible fraction",
    spoilt(["bit", "spec", "diameter"], "6 9/8 in"),
    'bit.spec.diameter: got "6 9/8 in", but the fraction behind a whole number must be less than one; give a length of 0.5 in to 60 in, for example "6 1/8 in" or "155.6 mm"',
  ],
  ["no holes", spoilt(["inquiry", "holes"], []), "inquiry.holes: got []; give at least one"],
  [
    "a hole without a diameter",
    spoilt([...hole, "diameter"], undefined),
    'inquiry.holes[1].diameter: nothing is given; give a length of 0.5 in to 60 in, for example "6 1/8 in" or "155.6 mm"',
  ],
  [
    "a hole without an end",
    spoilt([...hole, "to"], undefined),
    'inquiry.holes[1].to: nothing is given; give the depth where the hole ends, for example "300 ft", or the depth of the job as inquiry.depth',
  ],
  [
    "a hole that ends where it begins",
    spoilt([...hole, "to"], "45 ft"),
    `inquiry.holes[1].to: got "45 ft", which is not below the hole's beginning at 45 ft; give a depth below 45 ft`,
  ],
  [
    "a hole name that is none",
    spoilt(["inquiry", "bitHole"], "lower hole"),
    'inquiry.bitHole: got "lower hole"; give the name of a hole of this job: surface hole, open hole',
  ],
  [
    "a bed of no thickness",
    spoilt(bed(1), { thickness: "0 ft", rock: "gravel" }),
    'ground.beds[1].thickness: got "0 ft", a bed of no thickness; give a thickness, for example "12 ft"',
  ],
  [
    "a bed that ends above its top",
    spoilt([...bed(1), "bottom"], "30 ft"),
    `ground.beds[1].bottom: got "30 ft", which is not below the bed's top at 38 ft; give a depth below the top`,
  ],
  [
    "overlapping beds",
    spoilt([...bed(2), "top"], "42 ft"),
    'ground.beds[2].top: got "42 ft", which lies inside the bed before it (down to 45 ft); give 45 ft or deeper, or end the bed before it higher',
  ],
  [
    "unsorted beds",
    spoilt([...bed(3), "top"], "10 ft"),
    'ground.beds[3].top: got "10 ft", which lies above the bed before it (top at 45 ft); list the beds from the top down',
  ],
  [
    "a bed without an end",
    spoilt([...bed(1), "bottom"], undefined),
    `ground.beds[1].bottom: nothing is given; give the depth of the bed's bottom, for example "42 ft", or its thickness`,
  ],
  [
    "a bed that says nothing",
    spoilt([...bed(0), "rock"], undefined),
    `ground.beds[0].rock: neither rock nor phrase is given; give the rock, for example "limestone", or the driller's words as phrase`,
  ],
  ["no beds", spoilt(["ground", "beds"], []), "ground.beds: got []; give at least one"],
  [
    "an unknown rock",
    spoilt([...bed(2), "rock"], "limstone"),
    `ground.beds[2].rock: got "limstone", which is no rock of the list; give one of topsoil… (did you mean limestone?), or the driller's words as phrase`,
  ],
  [
    "a band that falls",
    spoilt([...bed(2), "strength"], { low: "9 ksi", high: "3 ksi" }),
    "ground.beds[2].strength: got 9 ksi, 3 ksi, which do not rise; give low, mid and high in rising order",
  ],
  [
    "half a band",
    spoilt([...bed(2), "strength"], { low: "9 ksi" }),
    'ground.beds[2].strength.high: nothing is given; give a strength of 0 psi to 100 ksi, for example "8700 psi" or "60 MPa"',
  ],
  [
    "an unknown correlation",
    spoilt(bed(3), {
      bottom: "300 ft",
      rock: "limestone",
      strengthFrom: { correlation: "sonic", reading: "60 us/ft" },
    }),
    'ground.beds[3].strengthFrom.correlation: got "sonic"; give one of sonic-… (did you mean sonic-shale-gulf or sonic-shale-world or sonic-sandstone-weak or sonic-shale-north-sea?)',
  ],
  [
    "a reading the correlation does not use",
    spoilt(bed(3), {
      bottom: "300 ft",
      rock: "sandstone",
      strengthFrom: { correlation: "sonic-sandstone-bowen", reading: "12 %" },
    }),
    'ground.beds[3].strengthFrom.reading: got "12 %", which is not what sonic-sandstone-bowen works from; give a sonic transit time, for example "80 us/ft"',
  ],
  [
    "an unknown cutter",
    spoilt(["bit", "spec", "cutter"], "1380"),
    'bit.spec.cutter: got "1380", which is no cutter of the list; give one of 0808, 1008, 1308, 1313, 1608, 1613, 1616, 1908, 1913, 1916 (did you mean 1308?)',
  ],
  [
    "a bit that fits no hole",
    spoilt(["bit", "spec", "diameter"], "7 7/8 in"),
    'bit.spec.diameter: got "7 7/8 in", which fits no hole it could drill; give the diameter of the hole it is to drill: 9 7/8 in, 6 1/8 in',
  ],
  ["no wings", spoilt(["bit", "spec", "wings"], 0), "bit.spec.wings: got 0; give a whole number from 1 to 16"],
  ["forty wings", spoilt(["bit", "spec", "wings"], 40), "bit.spec.wings: got 40; give a whole number from 1 to 16"],
  ["half a wing", spoilt(["bit", "spec", "wings"], 4.5), "bit.spec.wings: got 4.5; give a whole number from 1 to 16"],
  [
    "ports larger than the bit can hold",
    spoilt(["bit", "spec", "ports"], { count: 8, diameter: "2 in" }),
    `bit.spec.ports: got 8 of "2 in", which would take 85.3 % of the bit's face; give ports that take less than 25 % of it`,
  ],
  [
    "an unknown body",
    spoilt(["bit", "spec", "body"], "bronze"),
    'bit.spec.body: got "bronze"; give one of matrix, steel',
  ],
  [
    "an unknown profile",
    spoilt(["bit", "spec", "profile"], "flatt"),
    'bit.spec.profile.shape: got "flatt"; give one of flat, step, short parabolic, medium parabolic, long parabolic (did you mean flat?)',
  ],
  [
    "specification and table at once",
    spoilt(["bit", "measured"], { rows: [row] }),
    "bit: got spec and measured; give spec for a bit to be laid out or measured for one on the bench, not both",
  ],
  [
    "a bore as large as the pipe",
    spoilt(["inquiry", "pipe", "bore"], "3 1/2 in"),
    'inquiry.pipe.bore: got "3 1/2 in", which is not less than the outside diameter of 3 1/2 in; give a bore under 3 1/2 in',
  ],
  [
    "a pipe as large as the hole",
    spoilt(["inquiry", "pipe"], { ...soundTraveler().inquiry.pipe, outsideDiameter: "6 1/8 in" }),
    'inquiry.pipe.outsideDiameter: got "6 1/8 in", which does not go into the hole of 6 1/8 in; give an outside diameter under 6 1/8 in',
  ],
  [
    "an unknown rig",
    spoilt(["inquiry", "rig", "preset"], "meduim"),
    'inquiry.rig.preset: got "meduim", which is no rig of the list; give one of small, medium, large… (did you mean medium?)',
  ],
  [
    "a slowest speed over the fastest",
    spoilt(["inquiry", "rig", "rotarySpeedMin"], "150 rpm"),
    'inquiry.rig.rotarySpeedMin: got "150 rpm", which is over the fastest speed of 140 rpm; give a speed up to 140 rpm',
  ],
  [
    "an unknown fluid",
    spoilt(["inquiry", "fluid", "kind"], "bentonit"),
    'inquiry.fluid.kind: got "bentonit"; give one of water, bentonite, polymer, foam, mist, air (did you mean bentonite?)',
  ],
  [
    "dial readings that fall",
    spoilt(["inquiry", "fluid"], { kind: "polymer", dialReadings: { at600: 16, at300: 24 } }),
    "inquiry.fluid.dialReadings: got 16 at 600 and 24 at 300; give readings that rise with the speed, for example 24 at 600 and 16 at 300",
  ],
  [
    "an override of an unknown rock",
    spoilt(["overrides", "rocks"], { sandston: { ucs: "30 MPa" } }),
    'overrides.rocks: got "sandston", which is no rock of the list; give one of topsoil… (did you mean sandstone or sand or hard-sandstone or friable-sandstone?)',
  ],
  [
    "a friction beyond all sense",
    spoilt(["overrides", "rocks"], { shale: { flatFriction: 7 } }),
    'overrides.rocks.shale.flatFriction: got 7, which is over 2; give a plain number of 0 to 2, for example "0.3"',
  ],
  [
    "an own rock like none",
    spoilt(["lists", "rocks"], [{ id: "ours", like: "nothing-known" }]),
    'lists.rocks[0].like: got "nothing-known", which is no rock of the table; give one of topsoil…',
  ],
  [
    "a table without rows",
    measured({ maker: "unknown" }),
    "bit.measured: neither rows nor csv is given; give the table of the cutters as rows or as csv",
  ],
  [
    "a cutter of the table without a size",
    measured({ rows: [{ ...row, cutter: undefined }] }),
    'bit.measured.rows[0].faceDiameter: neither faceDiameter nor cutter is given; give the diameter of the face, for example "13.44 mm", or the code of the cutter',
  ],
  [
    "a cutter outside the bit",
    measured({ rows: [{ ...row, radius: 200 }] }),
    "bit.measured: got a cutter centred at a radius of 7.874 in, outside a bit of 6 1/8 in; give radii within half the bit's diameter, or the table's true unit in units",
  ],
  [
    "a cell that is no number",
    measured({ rows: [{ ...row, backRake: "steep" }] }),
    'bit.measured.rows[0].backRake: got "steep", but it does not begin with a number; give an angle of -45 deg to 60 deg, for example "15 deg" or "0.26 rad"',
  ],
  [
    "a missing cell",
    measured({ rows: [{ ...row, azimuth: undefined }] }),
    "bit.measured.rows[0].azimuth: nothing is given; give a number in the table's unit or a quantity with its unit",
  ],
  [
    "a wing of a name",
    measured({ rows: [{ ...row, wing: "left" }] }),
    'bit.measured.rows[0].wing: got "left"; give the number of its wing, a whole number from 1 to 16',
  ],
  [
    "a column of the table that is not known",
    measured({ csv: "radius,azimut,height,backRake,cutter\n20,0,0,15,1308" }),
    'bit.measured.csv: got the column "azimut", which is not known; give one of radius, azimuth, height… (did you mean azimuth?)',
  ],
  [
    "a CSV cell of the wrong kind",
    measured({ csv: "radius,azimuth,height,backRake,cutter\n20,0,0,15,1308\n30,90 rpm,0,15,1308" }),
    'bit.measured.csv row 2 azimuth: got "90 rpm", which is a rotary speed; give an angle of -720 deg to 720 deg, for example "15 deg" or "0.26 rad"',
  ],
];

/** Whether a line is the one expected; `…` stands for the rest of a list that may grow. */
function isLine(line: string, expected: string): boolean {
  const [start = "", ...rest] = expected.split("…");
  const end = rest.at(-1) ?? "";
  return rest.length === 0 ? line === expected : line.startsWith(start) && line.endsWith(end);
}

describe("each bad input ends in one clear line that names the field, the value and what is accepted", () => {
  it.each(cases)("%s", (_name, input, expected) => {
    const read = parseTraveler(input);
    const lines = read.ok ? [] : read.problems.map(({ message }) => message);
    expect(lines).toEqual([expect.any(String)]);
    expect(lines.filter((line) => !isLine(line, expected))).toEqual([]);
    expect(lines[0]).not.toMatch(/\n|undefined|\[object/);
  });
});
