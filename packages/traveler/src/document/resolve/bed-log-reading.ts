import { strengthCorrelations } from "@bitwright/engine";
import type { Quantity } from "../../quantity/index.ts";
import { oneOf } from "../nearest-names.ts";
import type { ResolvedStrengthReading } from "../resolved-traveler.ts";
import type { GivenBed } from "./given-bed.ts";
import type { ReadingNotes } from "./reading-notes.ts";

const READING_WORDS = {
  slowness: { kind: "transit time", words: 'a sonic transit time, for example "80 us/ft"' },
  porosity: { kind: "share", words: 'a porosity, for example "12 %"' },
  youngsModulus: { kind: "strength", words: 'a Young\'s modulus, for example "30 GPa"' },
  velocity: { kind: "speed", words: 'a wave speed, for example "4000 m/s"' },
} as const;

/** The log reading of a bed in SI, held against what its correlation works from. */
export function readingOf(given: GivenBed, path: string, notes: ReadingNotes): ResolvedStrengthReading | undefined {
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
