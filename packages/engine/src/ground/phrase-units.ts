import { type LexiconEntry, LONGEST_ENTRY, lexiconEntry, MATERIAL_NAMES } from "./driller-lexicon.ts";
import { editDistance } from "./edit-distance.ts";

/** What stands between a unit and the one before it. */
type Joint = "none" | "and" | "slash" | "break";

/** A word, or a run of words that mean one thing, in a driller's phrase. */
export interface PhraseUnit {
  /** As written. */
  readonly text: string;
  /** Where it starts in the phrase, counted in characters from 0 [-]. */
  readonly start: number;
  /** Where it ends, the first character after it [-]. */
  readonly end: number;
  readonly joint: Joint;
  readonly entry: LexiconEntry;
  /** The word the entry was found by, where the spelling had to be mended. */
  readonly mendedTo?: string;
}

interface Token {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  joint: Joint;
}

const TOKEN = /w\/o\b|(?:[a-z]\.){2,}|[a-z]+|\d+(?:[.,]\d+)?\s*%?|[^\s]/giu;
const NOTHING: LexiconEntry = { does: "nothing" };
const SHORTEST_MENDED = 6;
/** Found even inside a run-together word, "finegravel", for missing them costs a bit. */
const STONES: readonly string[] = ["gravel", "boulder", "cobble", "chert"];

/**
 * The units of a phrase in order: the longest run of words that the lexicon knows is taken first, and a long word with
 * one letter wrong is read as the material it is near to.
 *
 * @source (d) splitting by the lexicon
 */
export function phraseUnits(phrase: string): PhraseUnit[] {
  const tokens = wordTokens(phrase);
  const units: PhraseUnit[] = [];
  let next = 0;
  while (next < tokens.length) {
    const { unit, taken } = unitAt(phrase, tokens, next);
    units.push(unit);
    next += taken;
  }
  return units;
}

function wordTokens(phrase: string): Token[] {
  const tokens: Token[] = [];
  let joint: Joint = "none";
  for (const match of phrase.matchAll(TOKEN)) {
    const text = match[0].trimEnd();
    const start = match.index;
    const end = start + text.length;
    const lower = text.toLowerCase();
    const before = tokens.at(-1);
    if (lower === "/" && before && before.end === start && SHORT_BEFORE_SLASH.has(before.text.toLowerCase())) continue;
    if (/^[a-z0-9?]/iu.test(text) && !JOINING_WORDS.has(lower)) {
      tokens.push({ text, start, end, joint });
      joint = "none";
    } else {
      joint = graver(joint, jointOf(lower, phrase, start));
    }
  }
  return tokens;
}

/** "w/ sand", "d/granite": the stroke belongs to the short form. */
const SHORT_BEFORE_SLASH: ReadonlySet<string> = new Set(["w", "d"]);
const JOINING_WORDS: ReadonlySet<string> = new Set(["and", "n", "or"]);

function jointOf(mark: string, phrase: string, at: number): Joint {
  if (mark === "and" || mark === "n" || mark === "&" || mark === "+") return "and";
  if (mark === "/" || mark === "or") return "slash";
  // A dash with no space around it holds a word together: water-bearing.
  if (mark === "-") return /\s/u.test(phrase[at - 1] ?? " ") || /\s/u.test(phrase[at + 1] ?? " ") ? "break" : "none";
  if (mark === "'" || mark === '"') return "none";
  return "break";
}

const GRAVITY: Readonly<Record<Joint, number>> = { none: 0, and: 1, slash: 2, break: 3 };
const graver = (one: Joint, other: Joint): Joint => (GRAVITY[other] > GRAVITY[one] ? other : one);

function unitAt(phrase: string, tokens: readonly Token[], at: number): { unit: PhraseUnit; taken: number } {
  const first = tokens[at];
  if (!first) throw new RangeError(`no token at ${at}`);
  for (let taken = longestRun(tokens, at); taken >= 1; taken--) {
    const run = tokens.slice(at, at + taken);
    const entry = lexiconEntry(run.map((token) => token.text.toLowerCase()).join(" "));
    const end = run.at(-1)?.end ?? first.end;
    if (entry) {
      return {
        unit: { text: phrase.slice(first.start, end), start: first.start, end, joint: first.joint, entry },
        taken,
      };
    }
  }
  return { unit: { ...first, ...mended(first.text.toLowerCase()) }, taken: 1 };
}

function longestRun(tokens: readonly Token[], at: number): number {
  let length = 1;
  while (length < LONGEST_ENTRY && tokens[at + length]?.joint === "none") length++;
  return length;
}

function mended(word: string): Pick<PhraseUnit, "entry" | "mendedTo"> {
  if (/^\d.*%$/u.test(word)) return { entry: { does: "lessen" } };
  if (word.length < SHORTEST_MENDED) return { entry: word === "d" ? (lexiconEntry("decomposed") ?? NOTHING) : NOTHING };
  const stony = STONES.find((name) => word.includes(name));
  if (stony !== undefined) return { entry: lexiconEntry(stony) ?? NOTHING, mendedTo: stony };
  const singular = word.endsWith("s") ? word.slice(0, -1) : word;
  const near = MATERIAL_NAMES.find((name) => editDistance(word, name) === 1 || editDistance(singular, name) === 1);
  return near === undefined ? { entry: NOTHING } : { entry: lexiconEntry(near) ?? NOTHING, mendedTo: near };
}
