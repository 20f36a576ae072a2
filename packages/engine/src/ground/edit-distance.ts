/**
 * How many letters apart two words are: letters put in, left out, changed, or two neighbours swapped count one each.
 *
 * @returns count of single-letter edits [-]
 * @source (b) Damerau 1964 / Levenshtein 1966, optimal string alignment, recalled
 * @example
 * editDistance("daycite", "dacite") // → 1
 */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let least = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        least = Math.min(least, (beforeLast[column - 2] ?? 0) + 1);
      }
      current.push(least);
    }
    beforeLast = last;
    last = current;
  }
  return last[b.length] ?? 0;
}

/**
 * The `count` entries of `known` nearest in spelling to `word`, nearest first; one that holds the word counts as near.
 *
 * @source (d) sorting by the edit distance
 */
export function nearestWords(word: string, known: readonly string[], count = 3): string[] {
  const score = (entry: string) =>
    word !== "" && (entry.includes(word) || word.includes(entry)) ? 0.5 : editDistance(word, entry);
  return [...known].sort((one, other) => score(one) - score(other)).slice(0, count);
}
