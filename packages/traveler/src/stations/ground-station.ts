import {
  type Bed,
  derivedFrom,
  enteredBy,
  type GroundColumn,
  groundColumn,
  type Rock,
  rockById,
  shopRock,
  strengthFromLog,
} from "@bitwright/engine";
import type { ResolvedBed, ResolvedTraveler } from "../document/resolved-traveler.ts";

/** What the bit will meet: every bed with its rock, strength, answer to a cutter and hazards. */
export interface GroundStation extends GroundColumn {
  /** Where the column came from, in the words of the traveler. */
  readonly source?: string;
}

/** Works up the ground of a traveler. */
export function groundStation({ ground, inquiry, lists, overrides }: ResolvedTraveler): GroundStation {
  const shopRocks = ownRocks({ lists, overrides });
  const read = ground.beds.map((bed) => bedWithStrength(bed, shopRocks));
  const column = groundColumn({
    beds: read.map(({ bed }) => bed),
    fluidDensity: inquiry.fluid.density,
    waterLevel: inquiry.waterLevel,
    shopRocks,
  });
  return {
    ...column,
    ...(ground.source ? { source: ground.source } : {}),
    findings: [...column.findings, ...read.flatMap(({ findings }) => findings)],
    working: [...column.working, ...read.flatMap(({ working }) => working)],
  };
}

/** The shop's own rocks, and the rocks of the table whose properties the traveler overrides. */
function ownRocks({ lists, overrides }: Pick<ResolvedTraveler, "lists" | "overrides">): Rock[] {
  const own = lists.rocks.map(({ id, name, like, ...properties }) =>
    shopRock({ like: rockById(like), id, name, properties, from: `lists.rocks: ${id}` }),
  );
  const overridden = Object.entries(overrides.rocks).map(([id, properties]) =>
    shopRock({ like: rockById(id, own), properties, from: `overrides.rocks.${id}` }),
  );
  return [...overridden, ...own.filter(({ id }) => !(id in overrides.rocks))];
}

interface StrengthenedBed extends Pick<GroundColumn, "findings" | "working"> {
  readonly bed: Bed;
}

function bedWithStrength(resolved: ResolvedBed, shopRocks: readonly Rock[]): StrengthenedBed {
  const { path, name, top, bottom, phrase, rock, strength, strengthFrom } = resolved;
  const bed: Bed = { name, top, bottom, ...(phrase ? { phrase } : {}), ...(rock ? { rockId: rock } : {}) };
  if (strength) return { bed: { ...bed, ucs: strength, ucsSource: enteredBy(path) }, findings: [], working: [] };
  if (!strengthFrom) return { bed, findings: [], working: [] };
  const { correlation, reading: value, clayShare, density } = strengthFrom;
  const log = strengthFromLog({
    correlation,
    value,
    where: name,
    shopRocks,
    ...(clayShare === undefined ? {} : { clayShare }),
    ...(density === undefined ? {} : { density }),
    ...(rock ? { rockId: rock } : {}),
  });
  const known = log.ucs ? { ucs: log.ucs, ucsSource: derivedFrom(`${path}, through correlation ${correlation}`) } : {};
  return { bed: { ...bed, ...known }, findings: log.findings, working: log.working };
}
