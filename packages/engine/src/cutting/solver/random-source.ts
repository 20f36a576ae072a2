import { randomShares } from "../../quantity/index.ts";

/** A row of random numbers that goes on with every call; the same seed and row give the same numbers. */
export interface RandomSource {
  /** Between 0 and 1, neither end reached [-]. */
  readonly share: () => number;
  /** A whole number from 0 up to, not including, `below` [-]. */
  readonly whole: (below: number) => number;
  /** Normally spread about 0 with deviation 1 [-]. */
  readonly normal: () => number;
}

/**
 * Random numbers for one chunk of a search.
 *
 * Normal numbers by z = √(-2 ln u₁) cos 2πu₂.
 *
 * @source (b) Box & Muller 1958, Ann. Math. Stat. 29:610, recalled
 */
export function randomSource(from: {
  /** Seed of the search [-]. */
  readonly seed: number;
  /** Number of the chunk [-]. */
  readonly row: number;
}): RandomSource {
  const share = randomShares(from);
  return {
    share,
    whole: (below) => Math.floor(share() * below),
    normal: () => Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share()),
  };
}
