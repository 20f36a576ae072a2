import { wrapped } from "../geometry/index.ts";

/**
 * The wings by their places in the list, in the sense of rotation, from the one with the least azimuth in 0 to 2π on:
 * azimuths may be counted in any turn.
 *
 * @source (d) order of directions
 */
export function wingsAround(wingAngles: readonly number[]): number[] {
  const inTurn = wingAngles.map(wrapped);
  return [...wingAngles.keys()].sort((a, b) => inTurn[a] - inTurn[b]);
}

/**
 * Gaps between neighbouring wings: the first from the first of `wingsAround` to the second, the last from the last one on
 * to the first.
 *
 * @source (d) differences of azimuths; they add up to a full turn
 */
export function gapsBetweenWings(wingAngles: readonly number[]): number[] {
  const inTurn = wingsAround(wingAngles).map((wing) => wrapped(wingAngles[wing]));
  return inTurn.map((angle, at) => (inTurn[at + 1] ?? inTurn[0] + 2 * Math.PI) - angle);
}
