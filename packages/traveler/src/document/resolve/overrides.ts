import { oneOf } from "../nearest-names.ts";
import { present } from "../present.ts";
import type { ResolvedOverrides, RockOverride } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { ReadingNotes } from "./reading-notes.ts";
import { type KnownRocks, rockOverrideOf } from "./rocks.ts";
import { weightOf } from "./weight.ts";

interface OverridesQuestion {
  readonly traveler: ReadTraveler;
  readonly rocks: KnownRocks;
  /** Diameter of the bit [m]. */
  readonly bitDiameter: number;
}

/** What a person set over the program, in SI. */
export function resolveOverrides(
  { traveler, rocks, bitDiameter }: OverridesQuestion,
  notes: ReadingNotes,
): ResolvedOverrides {
  const given = traveler.overrides ?? {};
  const byRock: Record<string, RockOverride> = {};
  for (const [name, properties] of Object.entries(given.rocks ?? {})) {
    const rock = rocks.find(name);
    if (rock === undefined) {
      const wrong = `got "${name}", which is no rock of the list`;
      notes.refuse({ field: "overrides.rocks", got: `"${name}"`, wrong, expected: oneOf(name, rocks.ids) });
    } else {
      byRock[rock] = rockOverrideOf(properties);
    }
  }
  const { limits } = given;
  return {
    rocks: byRock,
    ...present({
      weight: weightOf(given.weight, bitDiameter),
      rotarySpeed: given.rotarySpeed?.si,
      flow: given.flow?.si,
      slip: given.slip,
    }),
    limits: present({
      coolingFlow: limits?.coolingFlow?.si,
      upholeSpeed: limits?.upholeSpeed?.si,
      cuttingsShare: limits?.cuttingsShare?.si,
      rate: limits?.rate?.si,
      torque: limits?.torque?.si,
    }),
  };
}
