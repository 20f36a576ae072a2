import { requireBetween } from "./require.ts";

/** Where a row of random numbers stands: the four 32-bit words of the generator. Never changed, only followed by the next. */
export type RandomState = readonly [number, number, number, number];

/** One random number and where the row goes on. */
export interface RandomDraw {
  /** Whole number from 0 to 2³² - 1, each as likely as any other [-]. */
  readonly word: number;
  /** The state to draw the next one from. */
  readonly state: RandomState;
}

const HALF = 2 ** 32;
const SPLIT_STEP = 0x9e3779b97f4a7c15n;
const WORDS_OF_A_STATE = 2n;

/**
 * The start of a row of random numbers.
 *
 * The seed and the number of the row are spread over the four words by SplitMix64, as the authors of the generator advise;
 * rows of one seed start from different words, so that one more row leaves the others as they were. No clock and no other
 * source of chance takes part: one seed, one row.
 *
 * @throws RangeError when the seed or the row is not a whole number from 0 to 2⁵³ - 1
 * @source (b) Steele, Lea & Flood 2014, Fast splittable pseudorandom number generators, OOPSLA, recalled
 * @example
 * nextRandom(seededRandom({ seed: 0 })).word // → nextRandom(seededRandom({ seed: 0, row: 0 })).word
 */
export function seededRandom({
  seed,
  row = 0,
}: {
  /** Any whole number from 0; the same one gives the same row [-]. */
  readonly seed: number;
  /** Number of the row under this seed, from 0 [-]. */
  readonly row?: number;
}): RandomState {
  requireWhole("seed", seed);
  requireWhole("row", row);
  const from = BigInt(seed) + WORDS_OF_A_STATE * BigInt(row) * SPLIT_STEP;
  const [one, other] = [splitMix(from + SPLIT_STEP), splitMix(from + 2n * SPLIT_STEP)];
  const state: RandomState = [lower(one), upper(one), lower(other), upper(other)];
  // The generator stands still on four zeros; SplitMix64 never gives zero twice running, so this cannot be one.
  return state;
}

/**
 * The next random number of a row: xoshiro128**, period 2¹²⁸ - 1.
 *
 * @source (b) Blackman & Vigna 2018, Scrambled linear pseudorandom number generators, recalled; known outputs in the test
 * @example
 * nextRandom([1, 2, 3, 4]).word // → 11520
 */
export function nextRandom([s0, s1, s2, s3]: RandomState): RandomDraw {
  const word = Math.imul(turned(Math.imul(s1, 5), 7), 9) >>> 0;
  const shifted = s1 << 9;
  const t2 = s2 ^ s0;
  const t3 = s3 ^ s1;
  return { word, state: [(s0 ^ t3) >>> 0, (s1 ^ t2) >>> 0, (t2 ^ shifted) >>> 0, turned(t3, 11) >>> 0] };
}

/**
 * A random number as a share between 0 and 1, neither end ever reached.
 *
 * u = (word + 1/2) / 2³².
 *
 * @returns share [-]
 * @throws RangeError when the word does not lie in 0 to 2³² - 1
 * @source (d) the middle of each of 2³² equal steps
 * @example
 * randomShare(2 ** 31) // → 0.5
 */
export function randomShare(word: number): number {
  requireBetween("word", word, 0, HALF - 1);
  return (word + 0.5) / HALF;
}

function requireWhole(name: string, value: number): void {
  if (!(Number.isSafeInteger(value) && value >= 0)) {
    throw new RangeError(`${name} must be a whole number from 0, got ${value}`);
  }
}

/** The word with its 32 bits turned round to the left. */
function turned(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}

/** The output of SplitMix64 in a state, as 64 bits. */
function splitMix(state: bigint): bigint {
  let z = BigInt.asUintN(64, state);
  z = BigInt.asUintN(64, (z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n);
  z = BigInt.asUintN(64, (z ^ (z >> 27n)) * 0x94d049bb133111ebn);
  return z ^ (z >> 31n);
}

const lower = (bits: bigint): number => Number(BigInt.asUintN(32, bits));
const upper = (bits: bigint): number => Number(bits >> 32n);
