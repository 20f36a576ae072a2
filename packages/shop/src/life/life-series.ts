import type { Life, LifeStep, WearState } from "@bitwright/engine";

/** A figure along the life, as points of footage and figure [m], [unit of the figure]. */
export type SeriesPoint = readonly [footage: number, value: number];

/** One line of a panel: all beds together, or one bed over many holes. */
export interface LifeSeries {
  /** The bed it is of; absent for one that runs through all. */
  readonly bed?: number;
  readonly points: readonly SeriesPoint[];
}

/** Up to so many holes one line runs through the beds as they come; with more of them each bed has a line of its own. */
const HOLES_AS_ONE_LINE = 3;

/** The lines of a figure that holds over each stretch, as rate, weight, torque, temperature. */
export function stretchSeries(steps: readonly LifeStep[], of: (step: LifeStep) => number): LifeSeries[] {
  if (!manyHoles(steps)) {
    // A figure stands from the start of a stretch to its end: steps, not slopes.
    const points = steps.flatMap((step, k): SeriesPoint[] => [
      [steps[k - 1]?.footage ?? 0, of(step)],
      [step.footage, of(step)],
    ]);
    return [{ points }];
  }
  const beds = new Map<number, SeriesPoint[]>();
  for (const step of steps) {
    const points = beds.get(step.bedIndex) ?? [];
    beds.set(step.bedIndex, points);
    points.push([step.footage, of(step)]);
  }
  return [...beds].sort(([a], [b]) => a - b).map(([bed, points]) => ({ bed, points }));
}

/** The line of a figure that only grows, as a grade. */
export function growingSeries(
  { start, steps }: Pick<Life, "start" | "steps">,
  of: (state: WearState) => number,
): SeriesPoint[] {
  return [[0, of(start)], ...steps.map((step): SeriesPoint => [step.footage, of(step)])];
}

/** Whether the steps run through more holes than one line can show. */
export function manyHoles(steps: readonly LifeStep[]): boolean {
  return (steps.at(-1)?.holeNumber ?? 1) > HOLES_AS_ONE_LINE;
}

/** The stretches of footage in one bed after another, for the ground behind the lines. */
export function bedStretches(steps: readonly LifeStep[]): { bed: number; from: number; to: number }[] {
  const stretches: { bed: number; hole: number; from: number; to: number }[] = [];
  let from = 0;
  for (const { bedIndex, holeNumber, footage } of steps) {
    const last = stretches.at(-1);
    if (last?.bed === bedIndex && last.hole === holeNumber) last.to = footage;
    else stretches.push({ bed: bedIndex, hole: holeNumber, from, to: footage });
    from = footage;
  }
  return stretches;
}
