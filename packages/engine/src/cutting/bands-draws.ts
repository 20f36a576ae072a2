import { randomShares, requirePositive } from "../quantity/index.ts";

/**
 * Draws of one uncertain input as chances of a smaller value: one from each of as many equal steps as there are draws, in
 * random order (Latin hypercube). So even a few hundred draws fill the whole of every input, and any first part of them
 * is still a fair sample.
 *
 * @throws RangeError when the number of draws is not a whole number above 0, or the seed or the row is none
 * @source (b) McKay, Beckman & Conover 1979, Technometrics 21:239-245, recalled; order by Fisher & Yates
 */
export function bandsDraws({
  seed,
  row,
  samples,
}: {
  /** Seed of the whole study [-]. */
  readonly seed: number;
  /** Number of the input, from 0: every input has a row of random numbers of its own [-]. */
  readonly row: number;
  /** How many draws [-]. */
  readonly samples: number;
}): Float64Array {
  requirePositive({ samples });
  if (!Number.isInteger(samples)) throw new RangeError(`samples must be a whole number, got ${samples}`);
  const share = randomShares({ seed, row });
  const draws = Float64Array.from({ length: samples }, (_, step) => (step + share()) / samples);
  for (let last = samples - 1; last > 0; last--) {
    const other = Math.floor(share() * (last + 1));
    const kept = draws[last];
    draws[last] = draws[other];
    draws[other] = kept;
  }
  return draws;
}
