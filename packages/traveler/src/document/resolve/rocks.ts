import { type Band, rockIds } from "@bitwright/engine";
import { oneOf } from "../nearest-names.ts";
import type { OwnRock, RockOverride } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { ReadingNotes } from "./reading-notes.ts";

/** The rocks a traveler may name. */
export interface KnownRocks {
  /** Ids of the shop's own rocks, then of the table. */
  readonly ids: readonly string[];
  /** The id that a person's text names: `Hard Sandstone` is `hard-sandstone`. */
  find(text: string): string | undefined;
}

const idKey = (text: string) =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-");

/** The rocks of the shop's own list and of the table. */
export function knownRocks(own: readonly OwnRock[]): KnownRocks {
  const ids = [...own.map(({ id }) => id), ...rockIds];
  const byKey = new Map(ids.map((id) => [idKey(id), id]));
  return { ids, find: (text) => byKey.get(idKey(text)) };
}

type GivenOwnRock = NonNullable<NonNullable<ReadTraveler["lists"]>["rocks"]>[number];

/** The shop's own rocks; each must be like one of the table. */
export function resolveOwnRocks(given: readonly GivenOwnRock[], notes: ReadingNotes): OwnRock[] {
  const table = knownRocks([]);
  return given.flatMap((rock, at) => {
    const like = table.find(rock.like);
    if (like === undefined) {
      const wrong = `got "${rock.like}", which is no rock of the table`;
      const expected = oneOf(rock.like, rockIds);
      notes.refuse({ field: `lists.rocks[${at}].like`, got: `"${rock.like}"`, wrong, expected });
      return [];
    }
    return [{ id: rock.id, name: rock.name ?? rock.id, like, ...rockOverrideOf(rock) }];
  });
}

const PROPERTIES = [
  "ucs",
  "clastUcs",
  "specificEnergyRatio",
  "contactStressRatio",
  "faceFriction",
  "flatFriction",
  "kappa",
  "frictionAngle",
  "density",
  "quartzShare",
  "equivalentQuartz",
  "cerchar",
] as const satisfies (keyof RockOverride)[];

/** The properties of a rock that a person gave. */
export function rockOverrideOf(given: Partial<Record<(typeof PROPERTIES)[number], Band | undefined>>): RockOverride {
  return Object.fromEntries(PROPERTIES.flatMap((name) => (given[name] ? [[name, given[name]]] : [])));
}
