/**
 * Largest value of a row that has none below zero.
 *
 * @returns the value, 0 of an empty row [unit]
 * @source (d) comparison
 * @example
 * largest([0.2, 0.7, 0.4]) // → 0.7
 * largest([]) // → 0
 */
export function largest(row: ArrayLike<number>): number {
  let most = 0;
  for (let i = 0; i < row.length; i++) most = Math.max(most, row[i]);
  return most;
}
