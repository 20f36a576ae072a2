import { type Band, enteredBy } from "../quantity/index.ts";
import type { Rock, RockExtraProperties, RockProperties } from "./rock.ts";

/** A rock of the shop's own, or one of the table with some properties set by hand. */
export interface ShopRockInput {
  /** The rock that fills what is not given. */
  readonly like: Rock;
  /** Id of the new rock; that of `like` where it only replaces properties. */
  readonly id?: string;
  readonly name?: string;
  /** Bands set by hand, in the SI unit of each. */
  readonly properties: Partial<RockProperties & RockExtraProperties>;
  /** Where they were entered, for example a field path; carried into `sources`. */
  readonly from: string;
}

/**
 * A rock made from another by setting some of its properties; each property set says that it was entered.
 *
 * @source (d) the rock it is like, and what was entered
 * @example
 * shopRock({ like: rockById("sandstone"), id: "hill-sandstone", properties: {}, from: "lists" }).family // → "clastic"
 */
export function shopRock({ like, id = like.id, name = like.name, properties, from }: ShopRockInput): Rock {
  const given = Object.entries(properties).filter((entry): entry is [string, Band] => entry[1] !== undefined);
  return {
    ...like,
    ...Object.fromEntries(given),
    id,
    name,
    likeId: like.likeId ?? like.id,
    sources: { ...like.sources, ...Object.fromEntries(given.map(([property]) => [property, enteredBy(from)])) },
  };
}
