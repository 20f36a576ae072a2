import type { CardContent, CardFeed } from "@bitwright/engine";

/**
 * The feed depths worth printing: the first and last of the hole, each side of a change of act, and evenly spread ones
 * between, so many in all. What is left out lies between two that are printed and that say the same thing to do.
 */
export function feedRows(content: CardContent, most: number): CardFeed[] {
  const all = content.rows.flatMap(({ feed }) => feed);
  if (all.length <= most) return all;
  const needed = new Set([0, all.length - 1]);
  all.forEach(({ act }, k) => {
    if (k > 0 && act !== all[k - 1].act) needed.add(k - 1).add(k);
  });
  const kept = new Set(needed);
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
