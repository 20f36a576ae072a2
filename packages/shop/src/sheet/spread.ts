/**
 * Places on a line as near as can be (in the sum of squares) to where each would stand, none closer than `gap` to the
 * next, in the order given (rising). Pools neighbours that push each other.
 */
export function spread(wanted: readonly number[], gap: number): number[] {
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((place, k) => {
    let pool = { sum: place - k * gap, count: 1 };
    for (let before = pools.at(-1); before && mean(before) > mean(pool); before = pools.at(-1)) {
      pool = { sum: before.sum + pool.sum, count: before.count + pool.count };
      pools.pop();
    }
    pools.push(pool);
  });
  return pools.flatMap((pool) => Array<number>(pool.count).fill(mean(pool))).map((base, k) => base + k * gap);
}

const mean = ({ sum, count }: { sum: number; count: number }): number => sum / count;
