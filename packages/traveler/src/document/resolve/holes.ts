import { commonPractice, derivedFrom } from "@bitwright/engine";
import { formatQuantity, type Quantity } from "../../quantity/index.ts";
import type { ResolvedHole } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { ReadingNotes } from "./reading-notes.ts";

/** The holes of a job and the one that this bit drills. */
export interface ResolvedHoles {
  readonly holes: readonly ResolvedHole[];
  readonly bitHole: ResolvedHole;
  /** Depth of the finished job [m]. */
  readonly depth: number;
  /** Diameter of the bit: as entered, else that of its hole [m]. */
  readonly bitDiameter: number;
}

/** A new bit may differ from its hole by this and no more [m]: 1/32 in, above every tolerance of bits to 12 in. */
const NEW_BIT_SLACK = 0.0254 / 32;
/** A worn bit may be smaller than its hole was meant to be by this [m]: 1/4 in. */
const WORN_BIT_SLACK = 0.0254 / 4;
/** Bore of a casing over the bit that passes it [m]: 1/4 in; common practice, no source. */
const CASING_OVER_BIT = 0.0254 / 4;

/** Fills the depths of the holes and finds the one that this bit drills; nothing where something is wrong with them. */
export function resolveHoles({ inquiry, bit }: ReadTraveler, notes: ReadingNotes): ResolvedHoles | undefined {
  const holes: ResolvedHole[] = [];
  let sound = true;
  for (const [at, hole] of inquiry.holes.entries()) {
    const path = `inquiry.holes[${at}]`;
    const above = holes.at(-1);
    const to = hole.to ?? inquiry.depth;
    if (!to) {
      const expected =
        'give the depth where the hole ends, for example "300 ft", or the depth of the job as inquiry.depth';
      notes.refuse({ field: `${path}.to`, got: "nothing", expected, wrong: "nothing is given" });
      sound = false;
      continue;
    }
    const from = hole.from?.si ?? above?.to ?? 0;
    if (!hole.from && above) {
      notes.assumeNumber({
        field: `${path}.from`,
        kind: "depth",
        si: from,
        why: "a hole begins where the one before it ends",
        source: derivedFrom(`inquiry.holes[${at - 1}].to`),
      });
    }
    if (!(to.si > from)) {
      const start = hole.from?.text ?? formatQuantity("depth", from, "field");
      notes.refuse({
        field: hole.to ? `${path}.to` : "inquiry.depth",
        got: `"${to.text}"`,
        expected: `give a depth below ${start}`,
        wrong: `got "${to.text}", which is not below the hole's beginning at ${start}`,
      });
      sound = false;
    }
    const { diameter } = hole;
    const name = hole.name ?? (inquiry.holes.length === 1 ? "hole" : `hole ${at + 1}`);
    holes.push({
      name,
      path,
      diameter: diameter.si,
      diameterAsTyped: diameter.text,
      from,
      to: to.si,
      ...(hole.casingBore ? { casingBore: hole.casingBore.si } : {}),
    });
  }
  if (!sound) return undefined;
  const given = bit?.spec?.diameter ?? bit?.measured?.diameter;
  const bitHole = bitHoleOf({ holes, named: inquiry.bitHole, given, worn: bit?.measured !== undefined }, notes);
  if (!bitHole) return undefined;
  return {
    holes: holes.map((hole) => withCasing(hole, bitHole, notes)),
    bitHole,
    depth: Math.max(inquiry.depth?.si ?? 0, ...holes.map(({ to }) => to)),
    bitDiameter: given?.si ?? bitHole.diameter,
  };
}

/** A hole above that of the bit is cased; the casing passes the bit and little more where nobody gave its bore. */
function withCasing(hole: ResolvedHole, bitHole: ResolvedHole, notes: ReadingNotes): ResolvedHole {
  if (hole === bitHole || hole.casingBore !== undefined || hole.to > bitHole.from) return hole;
  const casingBore = bitHole.diameter + CASING_OVER_BIT;
  notes.assumeNumber({
    field: `${hole.path}.casingBore`,
    kind: "diameter",
    si: casingBore,
    why: "a casing passes the bit that drills below it, taken as a quarter inch over it; a wider one slows the return",
    source: commonPractice(),
  });
  return { ...hole, casingBore };
}

interface BitHoleSearch {
  readonly holes: readonly ResolvedHole[];
  readonly named: string | undefined;
  readonly given: Quantity | undefined;
  readonly worn: boolean;
}

function bitHoleOf(search: BitHoleSearch, notes: ReadingNotes): ResolvedHole | undefined {
  const { holes, named, given, worn } = search;
  const fits = (hole: ResolvedHole) => {
    if (!given) return true;
    const short = hole.diameter - given.si;
    return short <= (worn ? WORN_BIT_SLACK : NEW_BIT_SLACK) && -short <= NEW_BIT_SLACK;
  };
  const pool = named === undefined ? holes : holes.filter((hole, at) => isNamed(hole, at, named));
  if (pool.length === 0) {
    const names = holes.map(({ name }) => name).join(", ");
    notes.refuse({
      field: "inquiry.bitHole",
      got: `"${named}"`,
      expected: `give the name of a hole of this job: ${names}`,
    });
    return undefined;
  }
  const fitting = pool.filter(fits);
  const deepest = [...fitting].sort((a, b) => b.to - a.to)[0];
  if (!deepest) {
    const sizes = pool.map(({ diameterAsTyped }) => diameterAsTyped).join(", ");
    notes.refuse({
      field: worn ? "bit.measured.diameter" : "bit.spec.diameter",
      got: `"${given?.text}"`,
      expected: `give the diameter of the hole it is to drill: ${sizes}`,
      wrong: `got "${given?.text}", which fits no hole it could drill`,
    });
    return undefined;
  }
  if (named === undefined && fitting.length > 1) {
    notes.assume({
      field: "inquiry.bitHole",
      text: deepest.name,
      why: "the bit drills the deepest hole of its diameter; name another to work that one up",
      source: derivedFrom("inquiry.holes"),
    });
  }
  return deepest;
}

function isNamed(hole: ResolvedHole, at: number, named: string): boolean {
  return hole.name.toLowerCase() === named.toLowerCase() || String(at + 1) === named;
}
