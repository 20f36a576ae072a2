import { type Band, type BandLaw, band, bandPercentile, percentile, runToEnd } from "../quantity/index.ts";
import { bandsDraws } from "./bands-draws.ts";
import { type BandDriver, bandDrivers } from "./bands-drivers.ts";

/** An input that is known only within a band, and how it is taken to lie in it. */
export interface UncertainInput {
  /** What is known of it [unit of the input]. */
  readonly band: Band;
  readonly law: BandLaw;
}

/** What one set of drawn inputs came to. */
export interface BandsSample<Figure extends string> {
  /** Each figure in its own unit; NaN where these inputs have none. */
  readonly figures: Readonly<Record<Figure, number>>;
  /** What decided it, in a word, to be counted over all samples: the limit that binds. */
  readonly outcome?: string;
}

/** A study of how uncertain inputs spread the figures that follow from them. */
export interface BandsInput<Name extends string, Figure extends string> {
  readonly inputs: Readonly<Record<Name, UncertainInput>>;
  /** Any whole number from 0; the same one gives the same bands [-]. */
  readonly seed: number;
  /** How many sets of inputs to draw [-]. */
  readonly samples: number;
  /** The figures of one set of inputs; a pure function of them. */
  readonly evaluate: (values: Readonly<Record<Name, number>>) => BandsSample<Figure>;
  /** Told after every sample how many are done, of how many. */
  readonly progress?: (done: number, of: number) => void;
  /** Asked after every sample; true ends the study with what it has. */
  readonly shouldStop?: () => boolean;
}

/** The spread of one figure. */
export interface FigureBands<Name extends string = string> {
  /** Its 10th, 50th and 90th percentile; absent where no sample has the figure [unit of the figure]. */
  readonly band?: Band;
  /** Samples that have no such figure [-]. */
  readonly missing: number;
  /** The inputs, the one that drives the spread most first. */
  readonly drivers: readonly BandDriver<Name>[];
}

/** How often one thing decided. */
export interface OutcomeShare {
  readonly outcome: string;
  /** Its part of all samples [-]. */
  readonly share: number;
}

/** The spread of all figures of a study. */
export interface Bands<Name extends string = string, Figure extends string = string> {
  /** Samples that were drawn and worked out; fewer than asked for where the study was stopped [-]. */
  readonly samples: number;
  /** Samples that were asked for [-]. */
  readonly asked: number;
  /** The seed they were drawn from [-]. */
  readonly seed: number;
  readonly figures: Readonly<Record<Figure, FigureBands<Name>>>;
  /** What decided, the most frequent first. */
  readonly outcomes: readonly OutcomeShare[];
}

/** How far a study has come. */
export interface BandsProgress {
  /** Samples done [-]. */
  readonly done: number;
  /** Samples asked for [-]. */
  readonly of: number;
}

/**
 * P10, P50 and P90 of figures whose inputs are known only within bands, and which input drives each spread.
 *
 * Every input is drawn once from each of as many equal steps of chance as there are samples, in random order; inputs are
 * taken as independent of each other. Deterministic for a seed.
 *
 * @throws RangeError when the number of samples is not a whole number above 0, the seed is none, or a band does not suit its
 *   law
 * @source (b) McKay, Beckman & Conover 1979, Technometrics 21:239-245, recalled; percentiles and ranks as in their functions
 */
export function bandsOf<Name extends string, Figure extends string>(
  input: BandsInput<Name, Figure>,
): Bands<Name, Figure> {
  return runToEnd(bandsInSteps(input), ({ done, of }) => input.progress?.(done, of));
}

/**
 * The same study a sample at a time, for a caller that has other things to look after between the samples: a signal to
 * stop, a screen. Its last value is the result.
 *
 * @throws RangeError as `bandsOf` does
 * @source (d) see `bandsOf`
 */
export function* bandsInSteps<Name extends string, Figure extends string>({
  inputs,
  seed,
  samples,
  evaluate,
  shouldStop,
}: BandsInput<Name, Figure>): Generator<BandsProgress, Bands<Name, Figure>, void> {
  const names = Object.keys(inputs) as Name[];
  const draws = names.map((_, row) => bandsDraws({ seed, row, samples }));
  const drawn = names.map((): number[] => []);
  const results: BandsSample<Figure>[] = [];
  for (let sample = 0; sample < samples; sample++) {
    names.forEach((name, k) => {
      drawn[k].push(bandPercentile({ ...inputs[name], share: draws[k][sample] }));
    });
    results.push(evaluate(recordOf(names, (k) => drawn[k][sample])));
    yield { done: sample + 1, of: samples };
    if (shouldStop?.()) break;
  }
  const figureNames = Object.keys(results[0].figures) as Figure[];
  const figures = recordOf(figureNames, (k) =>
    spreadOf(
      results.map((result) => result.figures[figureNames[k]]),
      names,
      drawn,
    ),
  );
  return { samples: results.length, asked: samples, seed, figures, outcomes: outcomeShares(results) };
}

function spreadOf<Name extends string>(
  values: readonly number[],
  names: readonly Name[],
  drawn: readonly (readonly number[])[],
): FigureBands<Name> {
  const known = values.flatMap((value, sample) => (Number.isFinite(value) ? [sample] : []));
  const missing = values.length - known.length;
  if (known.length === 0) return { missing, drivers: [] };
  const there = known.map((sample) => values[sample]);
  const draws = recordOf(names, (k) => known.map((sample) => drawn[k][sample]));
  return {
    band: band(percentile(there, 0.1), percentile(there, 0.5), percentile(there, 0.9)),
    missing,
    drivers: bandDrivers(draws, there),
  };
}

function outcomeShares(results: readonly BandsSample<string>[]): OutcomeShare[] {
  const counts = new Map<string, number>();
  for (const { outcome } of results) {
    if (outcome !== undefined) counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
  }
  return [...counts]
    .map(([outcome, count]) => ({ outcome, share: count / results.length }))
    .sort((a, b) => b.share - a.share || (a.outcome < b.outcome ? -1 : 1));
}

function recordOf<Name extends string, Value>(names: readonly Name[], value: (at: number) => Value) {
  return Object.fromEntries(names.map((name, k) => [name, value(k)])) as Record<Name, Value>;
}
