/** Even steps inside what can be reached, then twice as far each time up to the top of the map. */
export interface RateSteps {
  /** Rates inside the limits, ascending [unit of the axis]. */
  readonly inside: readonly number[];
  /** Rates beyond them, ascending [unit of the axis]. */
  readonly beyond: readonly number[];
}

const MOST_INSIDE = 6;
const MOST_BEYOND = 4;

/** Plain rates for the lines of a map: `best` is the best rate inside all limits, `top` the rate at the upper right corner. */
export function rateSteps(best: number, top: number): RateSteps {
  const step = niceStep(best / MOST_INSIDE);
  const inside = Array.from({ length: Math.floor(best / step + 1e-9) }, (_, k) => (k + 1) * step);
  const beyond: number[] = [];
  for (let rate = niceUp(1.4 * best); rate < top && beyond.length < MOST_BEYOND; rate = niceUp(1.9 * rate))
    beyond.push(rate);
  return { inside, beyond };
}

const STEPS = [1, 2, 2.5, 4, 5, 10];

function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return (STEPS.find((step) => step * power >= least * (1 - 1e-9)) ?? 10) * power;
}

function niceUp(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 1.5, 2, 3, 4, 5, 6, 8, 10].find((step) => step * power >= least * (1 - 1e-9)) ?? 10) * power;
}
