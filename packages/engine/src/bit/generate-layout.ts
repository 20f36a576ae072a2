import { derivedFrom, type Finding } from "../quantity/index.ts";
import type { BitSpec } from "./bit-spec.ts";
import { cuttingTip } from "./face-on-profile.ts";
import {
  arcOfCentre,
  type CutterRole,
  faceEnds,
  type LayoutSetting,
  layoutSetting,
  type Slot,
} from "./layout-setting.ts";
import { placedCutter } from "./new-cutter-on-bit.ts";
import type { BitLayout } from "./placed-cutter.ts";
import type { BitProfile } from "./profile.ts";
import type { ProfileZone } from "./profile-zone.ts";
import { CENTRE_SIDE_RAKE, rakesAt } from "./rake-schedule.ts";
import { facesOverlap, relaxedSlots, thinnestWall } from "./relaxed-slots.ts";
import { spreadExponent, spreadStations } from "./station-spread.ts";
import { sweptInterval } from "./swept-interval.ts";
import { wingOrders, wingsOfStations } from "./wing-order.ts";
import { cuttersOnWings } from "./wing-plan.ts";

/** Where a cutter stands, in the words of the shop. */
export interface CutterPlace {
  /** Number of the cutter, from 1 at the centre outward; the place in the layout plus one [-]. */
  readonly number: number;
  /** Number of the wing, from 1 [-]. */
  readonly wing: number;
  readonly role: CutterRole;
  readonly zone: ProfileZone;
  /** Radius of the cutting tip [m]. */
  readonly tipRadius: number;
  /** Height of the cutting tip, 0 at the nose of the profile, positive down-hole [m]. */
  readonly tipHeight: number;
}

/** Rates a layout, the less the better: what is judged is for the caller to say, as the bit room knows no forces. */
export type LayoutJudge = (layout: BitLayout) => number;

/** A bit laid out from a specification. */
export interface GeneratedBit {
  readonly layout: BitLayout;
  /** One for each cutter, in the order of the layout. */
  readonly places: readonly CutterPlace[];
  readonly profile: BitProfile;
  /** Azimuths of the wings at the bit axis, wing 1 first [rad]. */
  readonly wingAngles: readonly number[];
  readonly findings: readonly Finding[];
}

/** Ways to hand out the stations that a judge is shown, the steadiest by the first measure in front [-]. */
const WAYS_JUDGED = 120;
/** Centres nearer in radius than this share one track [m]. */
const ONE_TRACK = 1e-6;
/** Orders of the wings that are tried for their walls, the steadiest first [-]. */
const ORDERS_TRIED = 24;
/** Overlap of the outermost face cutter with the gauge cutters under which a bridging cutter is set, as share of a face. */
const BRIDGE_UNDER = 0.05;

/**
 * Lays out a bit: the same specification always gives the same bit.
 *
 * One cutter reaches across the bit axis; one on each wing cuts the hole wall, its outermost edge at the hole radius; the
 * others stand in between, closer together outward, the wings taking turns, so that each covers the gaps of another. Where
 * the outermost face cutters cannot reach over to the gauge cutters without thinning the wall between pockets, one wing
 * carries a cutter over that gap in place of its gauge cutter. Of the orders in which wings can take turns, the steadiest
 * that keeps every wall is taken; with a judge, the one it rates best. All tips lie on the profile; wings trail outward by
 * their sweep.
 *
 * @throws RangeError when a size is none, or the plan of the wings does not agree with itself
 * @source (d) geometry; choices of the trade are common practice
 */
export function generateLayout(spec: BitSpec, judge?: LayoutJudge): GeneratedBit {
  const setting = layoutSetting(spec);
  const slots = bestSlots(setting, judge && ((of) => judge(layoutOf(spec, of))));
  const numbered = slots
    .map((slot) => ({ slot, tip: cuttingTip(slot.pose) }))
    .sort((a, b) => order(a.tip.radius, b.tip.radius) || a.slot.wing - b.slot.wing);
  return {
    layout: layoutOf(
      spec,
      numbered.map(({ slot }) => slot),
    ),
    places: numbered.map(({ slot, tip }, at) => ({
      number: at + 1,
      wing: slot.wing + 1,
      role: slot.role,
      zone: slot.zone,
      tipRadius: tip.radius,
      tipHeight: tip.height,
    })),
    profile: setting.profile,
    wingAngles: setting.angles,
    findings: [...setting.profile.findings, ...remarks(spec, slots)],
  };
}

function layoutOf({ holeDiameter, cutter }: BitSpec, slots: readonly Slot[]): BitLayout {
  return { holeDiameter, cutters: slots.map(({ pose, wing }) => placedCutter({ cutter, pose, wing: wing + 1 })) };
}

/** Radii nearer than a nanometre are one radius: rounding must not number the gauge cutters. */
function order(a: number, b: number): number {
  return Math.abs(a - b) < 1e-9 ? 0 : a - b;
}

type SlotsJudge = (slots: readonly Slot[]) => number;

function bestSlots(setting: LayoutSetting, judge?: SlotsJudge): Slot[] {
  const ends = faceEnds(setting);
  const tries = holdsTried(setting, ends).map((holds) => () => slotsHolding(setting, ends, holds, judge));
  let best: Attempt | undefined;
  for (const attempt of tries) {
    const found = attempt();
    if (found.wall >= setting.wall) return found.slots;
    if (!best || found.wall > best.wall) best = found;
  }
  return best?.slots ?? [];
}

interface Attempt {
  readonly slots: Slot[];
  /** Thinnest wall; beyond the wall asked for only that it is more [m]. */
  readonly wall: number;
}

function slotsHolding(setting: LayoutSetting, ends: FaceEnds, holds: readonly number[], judge?: SlotsJudge): Attempt {
  const stations = holds.reduce((sum, count) => sum + count, 0);
  const choices = stationChoices(setting, { ...ends, stations }).map((arcs) => steadiestFirst(setting, arcs, holds));
  let best: Attempt | undefined;
  for (const ways of choices) {
    const sound: Slot[][] = [];
    for (const slots of ways.slice(0, judge ? WAYS_JUDGED : ORDERS_TRIED)) {
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

interface FaceEnds {
  /** Length along the profile of the first station [m]. */
  readonly first: number;
  /** Length along the profile of the last station [m]. */
  readonly last: number;
}

/**
 * Stations that each wing holds besides its gauge cutter, as planned; where the plan names none, enough to overlap as
 * asked, and as a second try one less, if the faces still overlap then.
 */
function holdsTried(setting: LayoutSetting, { first, last }: FaceEnds): number[][] {
  const { plan, widestGap } = setting;
  const needed = Math.max(1, Math.ceil((last - first) / widestGap) + 1);
  const held = (perWing: number) => {
    const holds = cuttersOnWings(plan, perWing).map((count) => count - 1);
    // A bit whose every wing holds but its gauge cutter still needs one at the centre.
    if (Math.max(...holds) === 0) holds[0] = 1;
    return holds;
  };
  const enough = held(Math.ceil(needed / plan.wings) + 1);
  if (plan.cuttersPerWing !== undefined || needed <= plan.wings) return [enough];
  const less = held(Math.ceil(needed / plan.wings));
  const stations = less.reduce((sum, count) => sum + count, 0);
  const covers = stationChoices(setting, { first, last, stations }).some((arcs) =>
    facesOverlap(facesAt(setting, arcs)),
  );
  return covers ? [enough, less] : [enough];
}

/**
 * Stations along the profile, from the most to the least crowded outward; where spacing along a steep profile would leave
 * rings uncut, by the radius of the face centres instead.
 */
function stationChoices(
  setting: LayoutSetting,
  { first, last, stations }: FaceEnds & { stations: number },
): number[][] {
  const { widestGap } = setting;
  const alongProfile = spreads({ first, last, stations, widestGap });
  const covering = alongProfile.filter((arcs) => facesOverlap(facesAt(setting, arcs)));
  if (covering.length > 0) return covering;
  const outer = setting.onFace(0, last).pose.radius;
  const inner = Math.min(setting.centre(0).pose.radius, outer);
  return spreads({ first: inner, last: outer, stations, widestGap }).map((radii) =>
    radii.map((radius, at) => (at === 0 ? first : at === stations - 1 ? last : arcOfCentre(setting, radius))),
  );
}

function spreads(between: FaceEnds & { readonly stations: number; readonly widestGap: number }): number[][] {
  const gentlest = spreadExponent(between);
  return [gentlest, (1 + gentlest) / 2, 1].map((exponent) => spreadStations({ ...between, exponent }));
}

function facesAt(setting: LayoutSetting, arcs: readonly number[]): Slot[] {
  return arcs.map((arc, at) => (at === 0 ? setting.centre(0) : setting.onFace(0, arc)));
}

/**
 * Where a cutter has to stand to cover the ring between the outermost face cutter and the gauge cutters, as a length
 * along the profile; nothing where they reach over each other [m].
 */
function bridgeArc(setting: LayoutSetting, arcs: readonly number[]): number | undefined {
  if (setting.plan.wings < 2) return undefined;
  const gauge = setting.atGauge(0).pose;
  const from = Math.max(...facesAt(setting, arcs).map((slot) => sweptInterval(slot.pose).to));
  const to = sweptInterval(gauge).from;
  return from < to + BRIDGE_UNDER * gauge.faceDiameter ? arcOfCentre(setting, (from + to) / 2) : undefined;
}

/** All ways to hand the stations out to the wings, and the gauge or a bridging place to each wing, the steadiest first. */
function steadiestFirst(setting: LayoutSetting, arcs: readonly number[], holds: readonly number[]): Slot[][] {
  const { wings } = setting.plan;
  const bridge = bridgeArc(setting, arcs);
  const ways = wingOrders(wings, () => 0).flatMap((turns) => {
    const wingOf = wingsOfStations({ order: turns, holds, stations: arcs.length });
    const face = arcs.map((arc, at) => {
      const wing = wingOf[at] ?? 0;
      return at === 0 ? setting.centre(wing) : setting.onFace(wing, arc);
    });
    return bridgingWings(wings, bridge !== undefined).map((bridging) => [
      ...face,
      ...Array.from({ length: wings }, (_, wing) =>
        bridge !== undefined && bridging.includes(wing) ? setting.onFace(wing, bridge) : setting.atGauge(wing),
      ),
    ]);
  });
  return ways
    .map((slots) => ({ slots, lean: leanOf(setting, slots) }))
    .sort((a, b) => a.lean - b.lean)
    .map(({ slots }) => slots);
}

/**
 * Sets of wings that may carry a bridging cutter in place of their gauge cutter: evenly spread round the bit, at most
 * every second wing, so that the ring is shared and the rest hold the diameter.
 */
function bridgingWings(wings: number, needed: boolean): number[][] {
  if (!needed) return [[]];
  const sets: number[][] = [];
  for (let count = Math.floor(wings / 2); count >= 1; count--) {
    for (let first = 0; first < wings; first++) {
      sets.push(Array.from({ length: count }, (_, k) => (first + Math.round((k * wings) / count)) % wings));
    }
  }
  return sets;
}

/**
 * How far the drag of all cutters falls short of cancelling out, each taken as its share of the width between the tracks
 * beside its own, as a share of the hole radius. A first measure for choosing among ways to hand out the stations; the
 * forces proper are computed from the engagement.
 */
function leanOf(setting: LayoutSetting, slots: readonly Slot[]): number {
  const tracks: Slot[][] = [];
  for (const slot of [...slots].sort((a, b) => a.pose.radius - b.pose.radius)) {
    const last = tracks.at(-1);
    if (last?.[0] && slot.pose.radius - last[0].pose.radius < ONE_TRACK) last.push(slot);
    else tracks.push([slot]);
  }
  const radius = (at: number) => tracks[at]?.[0]?.pose.radius;
  const border = (at: number) => {
    const [inner, outer] = [radius(at - 1), radius(at)];
    if (inner === undefined) return 0;
    return outer === undefined ? setting.profile.holeRadius : (inner + outer) / 2;
  };
  let [x, y] = [0, 0];
  tracks.forEach((track, at) => {
    const each = (border(at + 1) - border(at)) / track.length;
    for (const { wing, pose } of track) {
      const azimuth = setting.azimuth(wing, pose.radius);
      x -= each * Math.sin(azimuth);
      y += each * Math.cos(azimuth);
    }
  });
  return Math.hypot(x, y) / setting.profile.holeRadius;
}

function remarks(spec: BitSpec, slots: readonly Slot[]): Finding[] {
  const findings: Finding[] = [];
  const { sideRake } = rakesAt(spec.rakes, { zone: "centre", radiusShare: 0 });
  const source = derivedFrom("geometry of the centre cutter and the gauge cutters");
  if (sideRake < CENTRE_SIDE_RAKE) {
    findings.push({
      code: "centre-cutter-turned",
      severity: "note",
      where: "cutter 1",
      message: "The centre cutter is turned outward so that its edge crosses the bit axis and leaves no core.",
      value: CENTRE_SIDE_RAKE,
      limit: sideRake,
      unit: "rad",
      source,
    });
  }
  const carrying = new Set(slots.filter((slot) => slot.role === "gauge").map((slot) => slot.wing));
  for (const wing of new Set(slots.map((slot) => slot.wing))) {
    if (carrying.has(wing)) continue;
    findings.push({
      code: "wing-without-gauge-cutter",
      severity: "note",
      where: `wing ${wing + 1}`,
      message:
        "This wing's outermost cutter covers the ring between the face and the gauge cutters of the others, where no other could keep its pocket wall. The other wings hold the diameter.",
      source,
    });
  }
  return findings;
}
