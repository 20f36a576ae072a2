import { nextRandom, randomShare, seededRandom } from "./seeded-random.ts";

/**
 * The shares of one row of random numbers, the next with every call; the same seed and row give the same shares.
 *
 * @throws RangeError when the seed or the row is not a whole number from 0 to 2⁵³ - 1
 * @source (d) see `nextRandom`
 */
export function randomShares(from: {
  /** Any whole number from 0 [-]. */
  readonly seed: number;
  /** Number of the row under this seed, from 0 [-]. */
  readonly row: number;
}): () => number {
  let state = seededRandom(from);
  return () => {
    const drawn = nextRandom(state);
    state = drawn.state;
    return randomShare(drawn.word);
  };
}
