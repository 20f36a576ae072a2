import type { GroundModifier } from "./driller-lexicon.ts";
import type { Hazard } from "./hazard.ts";
import { following, isRock, type NamedPart, type NameEntry, type PhraseParts, phraseParts } from "./phrase-parts.ts";
import type { PhraseUnit } from "./phrase-units.ts";
import type { RockFamily } from "./rock.ts";
import { rockById } from "./rock-table.ts";

/** What a word did in the reading: names the bed, names a lesser part, tells a state, or says nothing of the ground. */
export type WordRole = "main" | "minor" | "modifier" | "noise";

/** A word of the phrase, or a run of words that mean one thing, and how it was read. */
export interface ClassifiedWord {
  /** As written. */
  readonly text: string;
  /** First character, counted from 0 [-]. */
  readonly start: number;
  /** First character after it [-]. */
  readonly end: number;
  readonly role: WordRole;
  /** The rock id or the state it was read as; absent for a word that decided nothing. */
  readonly meaning?: string;
}

/** How sure the reading is. */
export type ReadingConfidence = "clear" | "guess" | "unknown";

/** A driller's phrase read as ground. */
export interface ClassifiedGround {
  readonly phrase: string;
  /** Id in the rock table; `undefined` where the phrase names no rock. */
  readonly rockId: string | undefined;
  /** Every word of the phrase in order. */
  readonly words: readonly ClassifiedWord[];
  /** Ids of the other materials named, in order. */
  readonly secondary: readonly string[];
  /** Those of them that stand in the bed as bands much harder than it. */
  readonly stringers: readonly string[];
  /** State of the bed beyond what its rock id already says. */
  readonly modifiers: readonly GroundModifier[];
  /** Hazards that the words bring in; the rest of the rock's own are in the rock table. */
  readonly hazards: readonly Hazard[];
  readonly confidence: ReadingConfidence;
  /** One sentence for the person who has to believe or mend the reading. */
  readonly reason: string;
}

/** Hazards that a material brings along even as a lesser part; a little loose sand is not yet abrasive ground. */
const CARRIED_BY_ROCK: readonly Hazard[] = ["impact", "abrasion"];
const CARRIED_BY_SOIL: readonly Hazard[] = ["impact"];

/** Families that lie in beds, so that a name of theirs before "gravel" may be a bed of its own. */
const BEDDED: readonly RockFamily[] = ["clastic", "carbonate"];

/** A lesser part this many times as strong as the bed stands in it as a hard stringer [-]; (c) no source. */
const STRINGER_RATIO = 2;

/**
 * Reads a driller's phrase as a class of ground.
 *
 * The first material that is not marked as lesser ("with", "some", "trace", bands, pieces, an adjective such as sandy)
 * is the bed. Vague names (rock, fill, volcanics, quartz) give way to plainer ones; a rock right before gravel, sand or
 * boulders tells what those are made of. Gravel, boulders and chert bring the impact hazard wherever they stand.
 *
 * @source (c) usage of drillers' logs; agreement with open classified logs is measured in tests/reference/driller-phrases.test.ts
 * @example
 * classifyGround("brown sandy clay w/ gravel").rockId // → "clay"
 * classifyGround("broken lime").modifiers // → ["broken"]
 * classifyGround("dk gry sh w/ ls stringers").stringers // → ["limestone"]
 */
export function classifyGround(phrase: string): ClassifiedGround {
  const read = phraseParts(phrase);
  const { rockId, modifiers } = rockAndState(read);
  const doubts = doubtsOf(read);
  const secondary = secondaryOf(read, rockId);
  const stringers = stringersOf(read, rockId);
  return {
    phrase,
    rockId,
    words: wordsOf(read, rockId),
    secondary,
    stringers,
    modifiers,
    hazards: hazardsOf(read, stringers),
    confidence: rockId === undefined ? "unknown" : doubts.length > 0 ? "guess" : "clear",
    reason: reasonOf(read, { rockId, modifiers, secondary, doubts }),
  };
}

/** The rock, sharpened where the phrase calls it soft or hard, and what is left to say of its state. */
function rockAndState(read: PhraseParts): { rockId: string | undefined; modifiers: readonly GroundModifier[] } {
  const modifiers = modifiersOf(read);
  const entry: NameEntry | undefined = read.main?.entry;
  const soft = modifiers.includes("soft") || modifiers.includes("decomposed");
  const hard = modifiers.includes("hard") || modifiers.includes("cemented");
  if (entry?.soft !== undefined && soft && !hard) {
    return { rockId: entry.soft, modifiers: modifiers.filter((modifier) => modifier !== "soft") };
  }
  if (entry?.hard !== undefined && hard && !soft) {
    return { rockId: entry.hard, modifiers: modifiers.filter((modifier) => !["hard", "cemented"].includes(modifier)) };
  }
  return { rockId: entry ? entry.rockId : read.tinge?.rockId, modifiers };
}

function modifiersOf(read: PhraseParts): GroundModifier[] {
  const found = new Set<GroundModifier>();
  if (read.main?.entry.modifier) found.add(read.main.entry.modifier);
  for (const [at, { entry }] of read.units.entries()) {
    if (entry.does !== "modify" || read.places[at] === "denied") continue;
    // Water in a bed is a fact of the bed, whatever words stand around it.
    if (entry.modifier === "water-bearing" || isStateOfMain(read, at)) found.add(entry.modifier);
  }
  return [...found];
}

/** A state belongs to the name after it in its clause, else to one before it, else to the bed. */
function isStateOfMain({ units, places, parts, main }: PhraseParts, at: number): boolean {
  const ahead = following(units, at, ["modify", "nothing", "tinge"]);
  if (ahead?.entry.does === "shape") return false;
  if (ahead?.entry.does === "name") {
    const part = parts.find((candidate) => candidate.unit === ahead);
    // "hard quartz porphyry": quartz only leads on to the bed.
    return ahead === main?.unit || (part?.entry.yields === true && units[units.indexOf(ahead) + 1] === main?.unit);
  }
  const clause: PhraseUnit[] = [];
  for (const unit of units.slice(0, at + 1).reverse()) {
    clause.push(unit);
    if (unit.joint === "break") break;
  }
  if (main && clause.includes(main.unit)) return places[at] !== "lesser" || main.place === "lesser";
  return places[at] !== "lesser" && !clause.some((unit) => unit.entry.does === "name");
}

function secondaryOf({ units, places, main, tinge }: PhraseParts, rockId: string | undefined): string[] {
  const ids = units.flatMap(({ entry, start }, at) => {
    if (places[at] === "denied" || start === main?.unit.start || start === tinge?.start) return [];
    if (entry.does !== "name" && entry.does !== "tinge") return [];
    return entry.rockId === undefined ? [] : [entry.rockId];
  });
  return [...new Set(ids)].filter((id) => id !== rockId && id !== main?.entry.rockId);
}

function stringersOf({ parts, main }: PhraseParts, rockId: string | undefined): string[] {
  // In soil only what is called a band or a part is a stringer; rock named beside it may be the next bed.
  const mayHold = (part: NamedPart) => part.place === "lesser" || (main !== undefined && isRock(main.entry));
  const ids = parts.flatMap((part) => {
    const { rockId: id } = part.entry;
    const banded = part !== main && part.place !== "denied" && mayHold(part) && isStringer(part, rockId);
    return banded && id !== undefined ? [id] : [];
  });
  return [...new Set(ids)];
}

function hazardsOf(read: PhraseParts, stringers: readonly string[]): Hazard[] {
  const found = new Set<Hazard>();
  for (const at of read.units.keys()) {
    if (read.places[at] !== "denied") for (const hazard of hazardsOfUnit(read.units, at)) found.add(hazard);
  }
  if (stringers.length > 0) found.add("hard-stringers");
  return [...found];
}

function hazardsOfUnit(units: readonly PhraseUnit[], at: number): readonly Hazard[] {
  const entry = units[at]?.entry;
  switch (entry?.does) {
    case "warn":
      return entry.hazards;
    case "shape":
      return entry.hard ? ["hard-stringers"] : [];
    case "modify": {
      const own = entry.hazards ?? [];
      const banded = following(units, at, ["modify", "nothing"])?.entry.does === "shape";
      return banded && entry.modifier === "hard" ? [...own, "hard-stringers"] : own;
    }
    case "name":
    case "tinge": {
      const ofRock = entry.rockId === undefined ? [] : rockById(entry.rockId).hazards;
      const carried = isRock(entry) ? CARRIED_BY_ROCK : CARRIED_BY_SOIL;
      return [
        ...ofRock.filter((hazard) => carried.includes(hazard)),
        ...(entry.does === "name" ? (entry.hazards ?? []) : []),
      ];
    }
    default:
      return [];
  }
}

function isStringer({ entry, piecesOf }: NamedPart, rockId: string | undefined): boolean {
  if (rockId === undefined || entry.rockId === undefined || piecesOf || !isRock(entry)) return false;
  return rockById(entry.rockId).ucs.mid >= STRINGER_RATIO * rockById(rockId).ucs.mid;
}

function doubtsOf({ units, parts, main, tinge }: PhraseParts): string[] {
  const doubts: string[] = [];
  if (tinge) doubts.push("only an adjective names it");
  if (units.some((unit) => unit.entry.does === "doubt")) doubts.push("the log itself is in doubt");
  if (!main) return doubts;
  const { unit, entry, place } = main;
  if (unit.mendedTo !== undefined) doubts.push(`"${unit.text}" was read as ${unit.mendedTo}`);
  if (entry.guess) doubts.push(`"${unit.text}" can mean more than one rock`);
  if (place === "lesser") doubts.push("it is named only as a lesser part");
  const made = parts.find((part) => part.piecesOf && units[units.indexOf(part.unit) + 1] === unit);
  // "shale gravel" may be two beds with the comma left out; "chert gravel" is gravel.
  if (made?.entry.rockId !== undefined && BEDDED.includes(rockById(made.entry.rockId).family)) {
    doubts.push(`"${made.unit.text}" was taken for what the pieces are made of`);
  }
  const rival = parts.find(
    (part) =>
      part !== main &&
      part.place === "full" &&
      part.unit.joint === "slash" &&
      !part.entry.yields &&
      part.entry.rockId !== entry.rockId,
  );
  if (rival) doubts.push(`"${rival.unit.text}" stands on the same footing`);
  return doubts;
}

function wordsOf({ units, places, main, tinge }: PhraseParts, rockId: string | undefined): ClassifiedWord[] {
  return units.map(({ text, start, end, entry }, at) => {
    const word = (role: WordRole, meaning?: string): ClassifiedWord =>
      meaning === undefined ? { text, start, end, role } : { text, start, end, role, meaning };
    if (start === main?.unit.start || start === tinge?.start) return word("main", rockId);
    if (places[at] === "denied") return word("noise");
    if (entry.does === "name" || entry.does === "tinge") return word("minor", entry.rockId);
    if (entry.does === "modify") return word("modifier", entry.modifier);
    if (entry.does === "warn") return word("modifier", entry.hazards.join(", "));
    return word("noise");
  });
}

interface ReasonInput {
  readonly rockId: string | undefined;
  readonly modifiers: readonly GroundModifier[];
  readonly secondary: readonly string[];
  readonly doubts: readonly string[];
}

function reasonOf(read: PhraseParts, { rockId, modifiers, secondary, doubts }: ReasonInput): string {
  const deciding = read.main?.unit ?? read.tinge;
  if (rockId === undefined || !deciding) return unknownReason(read);
  const state = modifiers.length > 0 ? `, ${modifiers.join(", ")}` : "";
  const besides = secondary.length > 0 ? `, with ${secondary.join(", ")} besides` : "";
  const doubt = doubts.length > 0 ? `; a guess: ${doubts.join("; ")}` : "";
  return `"${deciding.text}" names ${rockById(rockId).name}${state}${besides}${doubt}.`;
}

function unknownReason({ units, main }: PhraseParts): string {
  if (units.length === 0) return "Nothing is written here.";
  const back = units.find((unit) => unit.entry.does === "refer-back");
  if (back) return `"${back.text}" points to the bed before; read the two together.`;
  if (main) return `"${main.unit.text}" does not say which rock.`;
  return "No word here names a rock.";
}
