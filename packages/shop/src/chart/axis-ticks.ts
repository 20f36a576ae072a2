/** Even steps of an axis that come to at most `most` ticks: 1, 2 or 5 times a power of ten. */
export function tickStep(length: number, most: number): number {
  const least = length / most;
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 5].find((step) => step * power >= least) ?? 10) * power;
}

/** An axis from zero to the first of at most some `most` even steps past `largest`, with its ticks. */
export function evenAxis(largest: number, most: number): { readonly end: number; readonly ticks: number[] } {
  const step = tickStep(largest, most);
  const end = step * Math.ceil(largest / step);
  return { end, ticks: ticks(end, step) };
}

/** The ticks from zero to `length`. */
export function ticks(length: number, step: number): number[] {
  return Array.from({ length: Math.floor(length / step + 1e-9) + 1 }, (_, k) => k * step);
}
