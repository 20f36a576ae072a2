import { faceEnds, type LayoutSetting, type Slot } from "./layout-setting.ts";
import { type FaceEnds, holdsTried, stationChoices } from "./layout-stations.ts";
import { slotsOfWay, waysToHandOut } from "./layout-ways.ts";
import { relaxedSlots, thinnestWall } from "./relaxed-slots.ts";

/** Ways to hand out the stations that a judge is shown, the steadiest by the first measure in front [-]. */
const WAYS_JUDGED = 120;
/** Ways that are tried for their walls without a judge [-]. */
const WAYS_TRIED = 24;
/** Pairs of cutters that are looked at over all ways of one choice of stations; bounds the work on very dense bits [-]. */
const MOST_PAIRS = 400_000;

/** Rates slots, the less the better. */
export type SlotsJudge = (slots: readonly Slot[]) => number;

interface Attempt {
  readonly slots: Slot[];
  /** Thinnest wall; beyond the wall asked for only that it is more [m]. */
  readonly wall: number;
}

/**
 * The slots of a bit: the first choice of stations that keeps every wall, in the way that is steadiest or that the judge
 * rates best; else the one with the thickest thinnest wall, moved a little to thicken it.
 *
 * @source (d) search over choices and ways; always the same for the same setting
 */
export function bestSlots(setting: LayoutSetting, judge?: SlotsJudge): Slot[] {
  const ends = faceEnds(setting);
  let best: Attempt | undefined;
  for (const holds of holdsTried(setting, ends)) {
    const found = slotsHolding(setting, { ends, holds, ...(judge ? { judge } : {}) });
    if (found.wall >= setting.wall) return found.slots;
    if (!best || found.wall > best.wall) best = found;
  }
  return best?.slots ?? [];
}

interface Holding {
  readonly ends: FaceEnds;
  readonly holds: readonly number[];
  readonly judge?: SlotsJudge;
}

function slotsHolding(setting: LayoutSetting, { ends, holds, judge }: Holding): Attempt {
  const stations = holds.reduce((sum, count) => sum + count, 0);
  const pairs = (stations + setting.plan.wings) ** 2 / 2;
  const tried = Math.max(1, Math.min(judge ? WAYS_JUDGED : WAYS_TRIED, Math.floor(MOST_PAIRS / pairs)));
  let best: Attempt | undefined;
  for (const arcs of stationChoices(setting, { ...ends, stations })) {
    const sound: Slot[][] = [];
    for (const way of waysToHandOut(setting, { arcs, holds }).slice(0, tried)) {
      const slots = slotsOfWay(setting, arcs, way);
      const wall = thinnestWall(setting, slots, best?.wall ?? Number.NEGATIVE_INFINITY);
      if (wall >= setting.wall) sound.push(slots);
      else if (!best || wall > best.wall) best = { slots, wall };
      if (sound.length > 0 && !judge) break;
    }
    const slots = judge ? leastBy(sound, judge) : sound[0];
    if (slots) return { slots, wall: setting.wall };
  }
  const slots = best ? relaxedSlots(setting, best.slots) : [];
  return { slots, wall: thinnestWall(setting, slots, Number.NEGATIVE_INFINITY) };
}

function leastBy(ways: readonly Slot[][], judge: SlotsJudge): Slot[] | undefined {
  let least: { slots: Slot[]; rating: number } | undefined;
  for (const slots of ways) {
    const rating = judge(slots);
    if (!least || rating < least.rating) least = { slots, rating };
  }
  return least?.slots;
}
