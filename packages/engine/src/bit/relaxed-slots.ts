import type { LayoutSetting, Slot } from "./layout-setting.ts";
import { sweptInterval } from "./swept-interval.ts";

/** Steps by which a cutter is moved along the profile, widest first, as shares of a face [-]. */
const STEPS = [0.08, 0.02, 0.005];
/** Moves after which the walls are taken as they are [-]. */
const MOST_MOVES = 60;
/** Overlap that a move must leave between neighbours, as share of a face [-]. */
const LEAST_OVERLAP = 0.08;

/**
 * Thinnest wall of all pairs, or any value not above `hopeless` once one is found; beyond the wall asked for only that it
 * is more.
 *
 * @returns wall [m]
 * @source (d) least of the walls of all pairs
 */
export function thinnestWall(setting: LayoutSetting, slots: readonly Slot[], hopeless: number): number {
  let wall = Number.POSITIVE_INFINITY;
  for (const [at, slot] of slots.entries()) {
    for (const other of slots.slice(0, at)) {
      wall = Math.min(wall, setting.wallBetween(slot, other));
      if (wall <= hopeless) return wall;
    }
  }
  return wall;
}

/**
 * Slots moved along the profile, a little at a time, until every wall is as asked or no single move thickens the thinnest
 * without uncovering a ring. The centre and gauge cutters stay.
 *
 * @source (d) search by single moves
 */
export function relaxedSlots(setting: LayoutSetting, start: readonly Slot[]): Slot[] {
  let slots = [...start];
  let walls = allWalls(setting, slots);
  let step = 0;
  for (let moves = 0; moves < MOST_MOVES && step < STEPS.length; ) {
    const thin = thinnestPair(walls);
    if (!thin || thin.wall >= setting.wall) return slots;
    const better = bestMove(setting, slots, walls, thin, STEPS[step] ?? 0);
    if (better) {
      moves++;
      slots = better.slots;
      walls = better.walls;
    } else step++;
  }
  return slots;
}

interface Pair {
  readonly a: number;
  readonly b: number;
  readonly wall: number;
}

function allWalls(setting: LayoutSetting, slots: readonly Slot[]): Pair[] {
  return slots.flatMap((slot, b) =>
    slots.slice(0, b).map((other, a) => ({ a, b, wall: setting.wallBetween(slot, other) })),
  );
}

function thinnestPair(walls: readonly Pair[]): Pair | undefined {
  return walls.reduce<Pair | undefined>((thin, pair) => (!thin || pair.wall < thin.wall ? pair : thin), undefined);
}

function bestMove(
  setting: LayoutSetting,
  slots: readonly Slot[],
  walls: readonly Pair[],
  thin: Pair,
  share: number,
): { slots: Slot[]; walls: Pair[] } | undefined {
  let best: { slots: Slot[]; walls: Pair[]; wall: number } | undefined;
  for (const at of [thin.a, thin.b]) {
    const slot = slots[at];
    if (slot?.role !== "face") continue;
    for (const sign of [1, -1]) {
      const arc = slot.arc + sign * share * slot.pose.faceDiameter;
      if (arc <= 0 || arc >= setting.profile.gaugeStart) continue;
      const moved = [...slots.slice(0, at), setting.onFace(slot.wing, arc), ...slots.slice(at + 1)];
      if (!facesOverlap(moved)) continue;
      // Only the walls of the moved cutter change.
      const renewed = walls.map((pair) => (pair.a === at || pair.b === at ? renew(setting, moved, pair) : pair));
      const wall = thinnestPair(renewed)?.wall ?? Number.NEGATIVE_INFINITY;
      if (wall > (best?.wall ?? thin.wall)) best = { slots: moved, walls: renewed, wall };
    }
  }
  return best;
}

function renew(setting: LayoutSetting, slots: readonly Slot[], { a, b }: Pair): Pair {
  const [one, other] = [slots[a], slots[b]];
  return { a, b, wall: one && other ? setting.wallBetween(one, other) : Number.POSITIVE_INFINITY };
}

/** Whether the faces overlap one another from the centre outward, by more than a shop's errors take away. */
export function facesOverlap(slots: readonly Slot[]): boolean {
  const sweeps = slots
    .map((slot) => ({ ...sweptInterval(slot.pose), least: LEAST_OVERLAP * slot.pose.faceDiameter }))
    .sort((a, b) => a.from - b.from);
  let reach = sweeps[0]?.to ?? 0;
  for (const { from, to, least } of sweeps.slice(1)) {
    if (from > reach - least) return false;
    reach = Math.max(reach, to);
  }
  return true;
}
