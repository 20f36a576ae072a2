import type { EdgeTrace, HeatConditions, RateLimits, SpeedWindow } from "@bitwright/engine";
import { type BedCut, heatOf, limitsOf } from "../stations/cut-station.ts";
import { cleaningRate, type WashedBit, washedBit } from "../stations/flow-station.ts";
import { coolingOf } from "../stations/heat-curves.ts";
import type { BedStability } from "../stations/stability-station.ts";
import type { Workup } from "../workup.ts";

/** One drilled bed as the cut station worked it, with the limits and the heat it worked with. */
export interface StudiedBed {
  /** Number among the beds that the bit drills, from 1 [-]. */
  readonly number: number;
  /** As the driller would say it. */
  readonly name: string;
  readonly cut: BedCut;
  readonly limits: RateLimits;
  readonly heat: HeatConditions;
  /** Speeds in step with the string half-way through the bed. */
  readonly inStep: readonly SpeedWindow[];
  readonly stability: BedStability;
}

/** What a study of a workup looks at. */
export interface StudiedBit {
  readonly trace: EdgeTrace;
  readonly washed: WashedBit;
  readonly beds: readonly StudiedBed[];
}

/**
 * The drilled beds of a workup with the limits of its stations, so that a study and the workup can never part.
 *
 * `bed` picks by number from 1, or by a part of the name; left out, all are taken.
 */
export function studiedBeds(workup: Workup, bed?: string): StudiedBit {
  const { inquiry: traveler, bit, advice, cut, stability } = workup;
  const washed = washedBit(advice, bit);
  const ceiling = cleaningRate(traveler, washed);
  const limited = {
    exposure: bit.review.body.leastExposure,
    ...(ceiling === undefined ? {} : { cleaningRate: ceiling }),
  };
  const films = coolingOf(traveler, workup);
  const all = cut.beds.map((one, at) => ({
    number: at + 1,
    name: one.bed.name,
    cut: one,
    limits: limitsOf(traveler, limited, one),
    heat: heatOf(traveler, one, films),
    inStep: (stability.beds[at].review.string?.avoid ?? []).map((window) => ({
      ...window,
      why: `${window.why}, half-way down the bed`,
    })),
    stability: stability.beds[at],
  }));
  return { trace: cut.trace, washed, beds: bed === undefined ? all : picked(all, bed) };
}

function picked(beds: readonly StudiedBed[], asked: string): StudiedBed[] {
  const words = asked.trim().toLowerCase();
  const byName = (test: (name: string) => boolean) => beds.filter(({ name }) => test(name.toLowerCase()));
  const whole = byName((name) => name === words);
  if (whole.length > 0) return whole;
  const numbered = beds.filter(({ number }) => String(number) === words);
  return numbered.length > 0 ? numbered : byName((name) => words !== "" && name.includes(words));
}
