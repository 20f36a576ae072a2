import type { LexiconEntry } from "./driller-lexicon.ts";
import { type PhraseUnit, phraseUnits } from "./phrase-units.ts";
import { rockById } from "./rock-table.ts";

/** A lexicon entry that names a material. */
export type NameEntry = Extract<LexiconEntry, { does: "name" }>;

/** How a word stands in the phrase: in full, as a lesser part, put forward as the bed, or said not to be there. */
type Place = "promoted" | "full" | "lesser" | "denied";

/** A material named in the phrase. */
export interface NamedPart {
  readonly unit: PhraseUnit;
  readonly entry: NameEntry;
  readonly place: Place;
  /** Named only to tell what loose pieces are made of. */
  readonly piecesOf: boolean;
}

/** A phrase taken apart: its words, the materials among them, and the one that is the bed. */
export interface PhraseParts {
  readonly units: readonly PhraseUnit[];
  /** The place of each unit, in the order of `units`. */
  readonly places: readonly Place[];
  readonly parts: readonly NamedPart[];
  readonly main: NamedPart | undefined;
  /** An adjective that stands for the bed because no name does. */
  readonly tinge: (PhraseUnit & { readonly rockId: string }) | undefined;
}

/** Loose pieces: a rock named right before one of these is what the pieces are made of. */
const PIECES: ReadonlySet<string> = new Set(["sand", "gravel", "boulders"]);

/**
 * Takes a driller's phrase apart and finds the material that is the bed.
 *
 * @source (c) order of words in drillers' logs
 */
export function phraseParts(phrase: string): PhraseParts {
  const units = phraseUnits(phrase);
  const places = placesOf(units);
  const parts = namedParts(units, places);
  const refersBack = units.some((unit) => unit.entry.does === "refer-back");
  const main = mainInFull(parts) ?? (refersBack ? undefined : mainAmongLesser(parts));
  const tinge = main || refersBack ? undefined : bareTinge(units, places);
  return { units, places, parts, main, tinge };
}

/**
 * The next unit of the same clause that does none of `skipping`.
 *
 * @source (d) walk along the phrase
 */
export function following(
  units: readonly PhraseUnit[],
  at: number,
  skipping: readonly LexiconEntry["does"][],
): PhraseUnit | undefined {
  for (const unit of units.slice(at + 1)) {
    if (unit.joint === "break") return undefined;
    if (!skipping.includes(unit.entry.does)) return unit;
  }
  return undefined;
}

/**
 * Whether a name is of solid rock, as against soil.
 *
 * @source (d) family in the rock table
 */
export function isRock(entry: { readonly rockId?: string }): boolean {
  return entry.rockId !== undefined && !["soil", "organic"].includes(rockById(entry.rockId).family);
}

function placesOf(units: readonly PhraseUnit[]): Place[] {
  let place: Place = "full";
  let ofShape = false;
  return units.map((unit) => {
    if (unit.joint === "break") {
      place = "full";
      ofShape = false;
    }
    const { does } = unit.entry;
    if (does === "shape") ofShape = true;
    if (does === "deny") place = "denied";
    else if (does === "set-in") place = "full";
    // "clasts mostly mudstone" tells what the clasts are, not what the bed is.
    else if (does === "promote") place = ofShape ? "lesser" : "promoted";
    else if (does === "lessen" && place !== "denied") place = "lesser";
    const own = place;
    if (does === "name" && place === "promoted") place = "full";
    return own;
  });
}

function namedParts(units: readonly PhraseUnit[], places: readonly Place[]): NamedPart[] {
  return units.flatMap((unit, at): NamedPart[] => {
    const { entry } = unit;
    if (entry.does !== "name") return [];
    const next = units[at + 1];
    const adjacent = next?.joint === "none" ? next.entry : undefined;
    const nextName = adjacent?.does === "name" ? adjacent : undefined;
    const piecesOf = isRock(entry) && PIECES.has(nextName?.rockId ?? "") && !nextName?.yields;
    const leadsOn =
      (entry.yields === true && nextName?.rockId !== undefined) || (!isRock(entry) && nextName?.rockId === "till");
    const lessened = piecesOf || leadsOn || adjacent?.does === "shape" || entry.lesser === true;
    const own = places[at] ?? "full";
    return [{ unit, entry, place: own !== "denied" && lessened ? "lesser" : own, piecesOf }];
  });
}

function mainInFull(parts: readonly NamedPart[]): NamedPart | undefined {
  const full = parts.filter((part) => part.place === "full");
  return (
    parts.find((part) => part.place === "promoted") ??
    full.find((part) => !part.entry.yields) ??
    full.find((part) => part.entry.rockId !== undefined) ??
    full[0]
  );
}

function mainAmongLesser(parts: readonly NamedPart[]): NamedPart | undefined {
  const lesser = parts.filter((part) => part.place === "lesser");
  return lesser.find((part) => !part.entry.yields && part.entry.rockId !== undefined) ?? lesser[0];
}

/** "sandy", "silty" and no name at all. */
function bareTinge(units: readonly PhraseUnit[], places: readonly Place[]): PhraseParts["tinge"] {
  for (const [at, unit] of units.entries()) {
    if (unit.entry.does === "tinge" && places[at] !== "denied") return { ...unit, rockId: unit.entry.rockId };
  }
  return undefined;
}
