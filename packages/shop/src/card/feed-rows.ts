import type { CardContent, CardFeed } from "@bitwright/engine";

/**
 * The joints worth printing where not all fit: the first and last of the hole, the first of every change of act with the
 * one before it, and evenly spread ones between, so many in all. What is left out lies between two that say the same thing
 * to do; where the changes alone are too many, each is told by its first joint only, and then by every so many of them.
 */
export function feedRows(content: CardContent, most: number): CardFeed[] {
  const all = content.rows.flatMap(({ feed }) => feed);
  if (all.length <= most) return all;
  const changes = all.flatMap(({ act }, k) => (k > 0 && act !== all[k - 1].act ? [k] : []));
  const ends = [0, all.length - 1];
  const bothSides = new Set([...ends, ...changes.flatMap((k) => [k - 1, k])]);
  const kept = bothSides.size <= most ? bothSides : new Set([...ends, ...everyNth(changes, most - ends.length)]);
  // The widest stretch that is still without a row gets the next one.
  while (kept.size < most) {
    const shown = [...kept].sort((a, b) => a - b);
    let widest = 0;
    for (let k = 1; k < shown.length; k++) {
      if (shown[k] - shown[k - 1] > shown[widest + 1] - shown[widest]) widest = k - 1;
    }
    kept.add(Math.floor((shown[widest] + shown[widest + 1]) / 2));
  }
  return [...kept].sort((a, b) => a - b).map((k) => all[k]);
}

/** At most so many of a list, evenly taken. */
function everyNth(of: readonly number[], most: number): number[] {
  const step = Math.ceil(of.length / Math.max(1, most));
  return of.filter((_, at) => at % step === 0);
}
