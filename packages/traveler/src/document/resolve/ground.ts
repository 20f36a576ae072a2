import { classifyGround, commonPractice, derivedFrom, rockTable, strengthCorrelations } from "@bitwright/engine";
import { formatQuantity, type Quantity } from "../../quantity/index.ts";
import { oneOf } from "../nearest-names.ts";
import type { ResolvedBed, ResolvedGround, ResolvedHole, ResolvedStrengthReading } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { ReadingNotes } from "./reading-notes.ts";
import type { KnownRocks } from "./rocks.ts";

type GivenBed = ReadTraveler["ground"]["beds"][number];

/**
 * Two depths this near are one [m]. Logs that mix feet and metres round to the centimetre.
 */
const SAME_DEPTH = 0.01;

const depthText = (si: number) => formatQuantity("depth", si, "field");

interface GroundQuestion {
  readonly traveler: ReadTraveler;
  readonly rocks: KnownRocks;
  /** The hole this bit drills; absent where something is wrong with the holes. */
  readonly bitHole: ResolvedHole | undefined;
}

/** The beds in SI, in order, each with the rock it was given or its phrase was read as. */
export function resolveGround(question: GroundQuestion, notes: ReadingNotes): ResolvedGround {
  const { traveler, rocks, bitHole } = question;
  const beds: ResolvedBed[] = [];
  for (const [at, given] of traveler.ground.beds.entries()) {
    const path = `ground.beds[${at}]`;
    const span = spanOf({ given, path, above: beds.at(-1) }, notes);
    const rock = rockOf(given, path, rocks, notes);
    const strengthFrom = readingOf(given, path, notes);
    if (given.strength && given.strengthFrom) {
      const expected = "give the strength itself or a log reading to work it from, not both";
      notes.refuse({ field: `${path}.strengthFrom`, got: "strength and strengthFrom", expected });
    }
    if (!given.strength && !given.strengthFrom) assumeTableStrength(rock.rock, path, question, notes);
    if (!span) continue;
    beds.push({
      path,
      name: given.phrase ?? given.rock ?? `bed ${at + 1}`,
      ...span,
      ...(given.phrase === undefined ? {} : { phrase: given.phrase }),
      ...rock,
      ...(given.strength ? { strength: given.strength } : {}),
      ...(strengthFrom ? { strengthFrom } : {}),
      ...(given.notes === undefined ? {} : { notes: given.notes }),
    });
  }
  const reaching = bitHole && notes.problems.length === 0 ? reachingDown(beds, bitHole, notes) : beds;
  const { source } = traveler.ground;
  return { beds: reaching, ...(source === undefined ? {} : { source }) };
}

/** The strength of a bed that only has a rock's name is that of the table, a wide band: said for each bed. */
function assumeTableStrength(
  rock: string | undefined,
  path: string,
  question: GroundQuestion,
  notes: ReadingNotes,
): void {
  const { overrides, lists } = question.traveler;
  const own = lists?.rocks?.find(({ id }) => id === rock);
  if (rock === undefined || own?.ucs || overrides?.rocks?.[rock]?.ucs) return;
  const listed = rockTable.find(({ id }) => id === (own?.like ?? rock));
  if (!listed) return;
  const { low, mid, high } = listed.ucs;
  const text = [low, mid, high].map((side) => formatQuantity("strength", side, "field", { figures: 3 }));
  notes.assume({
    field: `${path}.strength`,
    text: `${text[0]} to ${text[2]}, mid ${text[1]}`,
    si: mid,
    unit: "Pa",
    why: `what is usual for ${listed.name}; a sample, a log or a returned bit tells more`,
    source: listed.sources.ucs,
  });
}

interface BedSpan {
  readonly given: GivenBed;
  readonly path: string;
  readonly above: ResolvedBed | undefined;
}

function spanOf({ given, path, above }: BedSpan, notes: ReadingNotes): { top: number; bottom: number } | undefined {
  const entered = given.top?.si ?? above?.bottom ?? 0;
  // A top that misses the bottom above it by rounding is that bottom.
  const top = above && Math.abs(entered - above.bottom) <= SAME_DEPTH ? above.bottom : entered;
  if (above && given.top && top < above.bottom) {
    const unsorted = top < above.top;
    const wrong = unsorted
      ? `got "${given.top.text}", which lies above the bed before it (top at ${depthText(above.top)})`
      : `got "${given.top.text}", which lies inside the bed before it (down to ${depthText(above.bottom)})`;
    const expected = unsorted
      ? "list the beds from the top down"
      : `give ${depthText(above.bottom)} or deeper, or end the bed before it higher`;
    notes.refuse({ field: `${path}.top`, got: `"${given.top.text}"`, wrong, expected });
    return undefined;
  }
  if (given.bottom && given.thickness) {
    const apart = Math.abs(given.bottom.si - top - given.thickness.si);
    if (apart > SAME_DEPTH) {
      notes.refuse({
        field: `${path}.thickness`,
        got: `"${given.thickness.text}"`,
        wrong: `got "${given.thickness.text}" beside the bottom "${given.bottom.text}", which gives ${depthText(given.bottom.si - top)}`,
        expected: "give the bottom or the thickness, not both",
      });
      return undefined;
    }
  }
  const end = given.bottom ?? given.thickness;
  if (!end) {
    const expected = 'give the depth of the bed\'s bottom, for example "42 ft", or its thickness';
    notes.refuse({ field: `${path}.bottom`, got: "nothing", wrong: "nothing is given", expected });
    return undefined;
  }
  const bottom = given.bottom ? given.bottom.si : top + end.si;
  if (!(bottom > top)) {
    notes.refuse({
      field: given.bottom ? `${path}.bottom` : `${path}.thickness`,
      got: `"${end.text}"`,
      wrong: given.bottom
        ? `got "${end.text}", which is not below the bed's top at ${given.top?.text ?? depthText(top)}`
        : `got "${end.text}", a bed of no thickness`,
      expected: given.bottom ? "give a depth below the top" : 'give a thickness, for example "12 ft"',
    });
    return undefined;
  }
  if (top - (above?.bottom ?? 0) > SAME_DEPTH) gapRemark(path, above?.bottom ?? 0, top, notes);
  return { top, bottom };
}

function gapRemark(path: string, from: number, to: number, notes: ReadingNotes): void {
  notes.remark({
    code: "gap-between-beds",
    severity: "caution",
    where: path,
    message: `Nothing is said of the ground from ${depthText(from)} to ${depthText(to)}. That length is left out; fill it to have it worked up.`,
    value: to - from,
    limit: 0,
    unit: "m",
    source: derivedFrom("ground.beds"),
  });
}

function rockOf(
  given: GivenBed,
  path: string,
  rocks: KnownRocks,
  notes: ReadingNotes,
): Pick<ResolvedBed, "rock" | "rockFrom"> {
  if (given.rock !== undefined) {
    const rock = rocks.find(given.rock);
    if (rock !== undefined) return { rock, rockFrom: "entered" };
    const expected = `${oneOf(given.rock, rocks.ids)}, or the driller's words as phrase`;
    const wrong = `got "${given.rock}", which is no rock of the list`;
    notes.refuse({ field: `${path}.rock`, got: `"${given.rock}"`, wrong, expected });
    return {};
  }
  if (given.phrase === undefined) {
    const expected = 'give the rock, for example "limestone", or the driller\'s words as phrase';
    notes.refuse({ field: `${path}.rock`, got: "nothing", wrong: "neither rock nor phrase is given", expected });
    return {};
  }
  const read = classifyGround(given.phrase);
  if (read.rockId === undefined) {
    notes.remark({
      code: "phrase-names-no-rock",
      severity: "caution",
      where: path,
      message: `"${given.phrase}" names no ground that is known here. Give the rock by its id to have this bed worked up.`,
      source: commonPractice("usage of drillers' logs"),
    });
    return {};
  }
  if (read.confidence === "guess") {
    notes.assume({
      field: `${path}.rock`,
      text: read.rockId,
      why: `${read.reason} Give the rock by its id where that is not so.`,
      source: commonPractice("usage of drillers' logs"),
    });
  }
  return { rock: read.rockId, rockFrom: "phrase" };
}

const READING_WORDS = {
  slowness: { kind: "transit time", words: 'a sonic transit time, for example "80 us/ft"' },
  porosity: { kind: "share", words: 'a porosity, for example "12 %"' },
  youngsModulus: { kind: "strength", words: 'a Young\'s modulus, for example "30 GPa"' },
  velocity: { kind: "speed", words: 'a wave speed, for example "4000 m/s"' },
} as const;

function readingOf(given: GivenBed, path: string, notes: ReadingNotes): ResolvedStrengthReading | undefined {
  const from = given.strengthFrom;
  if (!from) return undefined;
  const field = `${path}.strengthFrom`;
  const correlation = strengthCorrelations.find(({ id }) => id === from.correlation);
  if (!correlation) {
    const ids = strengthCorrelations.map(({ id }) => id);
    const got = `"${from.correlation}"`;
    notes.refuse({ field: `${field}.correlation`, got, expected: oneOf(from.correlation, ids) });
    return undefined;
  }
  const { kind, words } = READING_WORDS[correlation.input];
  if (from.reading.kind !== kind) {
    const wrong = `got "${from.reading.text}", which is not what ${correlation.id} works from`;
    notes.refuse({ field: `${field}.reading`, got: `"${from.reading.text}"`, wrong, expected: `give ${words}` });
    return undefined;
  }
  if (correlation.needsDensity && !from.density) {
    const expected = 'give the bulk density, for example "2.6 g/cm3"';
    const wrong = `nothing is given, and ${correlation.id} needs it`;
    notes.refuse({ field: `${field}.density`, got: "nothing", wrong, expected });
    return undefined;
  }
  return {
    correlation: correlation.id,
    reading: from.reading.si,
    ...optional(from.clayShare, "clayShare"),
    ...optional(from.density, "density"),
  };
}

function optional<Name extends string>(given: Quantity | undefined, name: Name): Partial<Record<Name, number>> {
  return given ? ({ [name]: given.si } as Partial<Record<Name, number>>) : {};
}

/** The beds with the last one carried on to the bottom of the hole, where the log ends above it. */
function reachingDown(beds: readonly ResolvedBed[], bitHole: ResolvedHole, notes: ReadingNotes): ResolvedBed[] {
  const last = beds.at(-1);
  if (!last || last.bottom >= bitHole.to - SAME_DEPTH) return [...beds];
  notes.assumeNumber({
    field: `${last.path}.bottom`,
    kind: "depth",
    si: bitHole.to,
    why: `the beds end at ${depthText(last.bottom)} and the hole goes deeper: the last bed is taken to go on`,
    source: derivedFrom(`${bitHole.path}.to`),
  });
  return [...beds.slice(0, -1), { ...last, bottom: bitHole.to }];
}
