const MS = 1e-3;
const SHORTEST_BLOCK_MS = 0.5;

/**
 * The shortest time one run takes, of many blocks of runs [s]. On a machine that others use too, the mean tells more of
 * them than of the run; the best comes back from day to day.
 */
export function bestTime(run: () => void, { forMs = 400 } = {}): number {
  let runs = 1;
  while (timeOf(run, runs) < SHORTEST_BLOCK_MS) runs *= 2;
  let best = Number.POSITIVE_INFINITY;
  const end = performance.now() + forMs;
  while (performance.now() < end) best = Math.min(best, timeOf(run, runs) / runs);
  return best * MS;
}

function timeOf(run: () => void, runs: number): number {
  const start = performance.now();
  for (let n = 0; n < runs; n++) run();
  return performance.now() - start;
}
