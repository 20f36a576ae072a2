import { type Dimension, UNIT_TABLE, type Unit } from "./unit-table.ts";

/**
 * A unit's text in plain characters: dots, hyphens and stars between units become spaces, raised figures become plain
 * ones, `per` becomes a stroke. Upper and lower case stay, because mPa and MPa differ.
 */
export function unitKey(text: string): string {
  return text
    .replace(/²/g, "2")
    .replace(/³/g, "3")
    .replace(/[µμ]/g, "u")
    .replace(/°\s*/g, "deg")
    .replace(/''|[″“”]/g, '"')
    .replace(/[′‘’´]/g, "'")
    .replace(/\^/g, "")
    .replace(/\s+per\s+/gi, "/")
    .replace(/([A-Za-z])\.(?=\s|$|\/)/g, "$1")
    .replace(/(?<=\S)[·⋅×*-](?=\S)/g, " ")
    .replace(/\s*\/\s*/g, "/")
    .replace(/\s+/g, " ")
    .trim();
}

type Table = ReadonlyMap<string, Unit>;

function tableOf(units: readonly Unit[]): Table {
  const table = new Map<string, Unit>();
  const keys = units.flatMap((unit) => [unit.name, ...unit.alsoWritten].map((text) => [unitKey(text), unit] as const));
  for (const [key, unit] of keys) table.set(key, unit);
  // People write PSI and Gpm: any case will do where the exact one is not taken.
  for (const [key, unit] of keys) if (!table.has(key.toLowerCase())) table.set(key.toLowerCase(), unit);
  return table;
}

const dimensions = Object.keys(UNIT_TABLE) as Dimension[];
const tables = new Map<Dimension, Table>(dimensions.map((dimension) => [dimension, tableOf(UNIT_TABLE[dimension])]));

/** The unit that `text` names within a dimension. */
export function unitOf(dimension: Dimension, text: string): Unit | undefined {
  const key = unitKey(text);
  const table = tables.get(dimension);
  return table?.get(key) ?? table?.get(key.toLowerCase());
}

/** Every dimension that knows a unit by this text, for a line that says what was given instead. */
export function dimensionsWith(text: string): Dimension[] {
  return dimensions.filter((dimension) => unitOf(dimension, text) !== undefined);
}
