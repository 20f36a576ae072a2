/** Every combination of options, by number, one after another. */
export function* everyPoint(counts: readonly number[]): Generator<readonly number[], undefined, number | undefined> {
  const point = counts.map(() => 0);
  for (;;) {
    yield [...point];
    let at = counts.length - 1;
    while (at >= 0 && ++point[at] === counts[at]) point[at--] = 0;
    if (at < 0) return undefined;
  }
}
