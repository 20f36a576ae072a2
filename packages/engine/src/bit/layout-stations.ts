import { arcOfCentre, type LayoutSetting, type Slot } from "./layout-setting.ts";
import { facesOverlap } from "./relaxed-slots.ts";
import { spreadExponent, spreadStations } from "./station-spread.ts";
import { sweptInterval } from "./swept-interval.ts";
import { cuttersOnWings } from "./wing-plan.ts";

/** Overlap of the outermost face cutter with the gauge cutters under which a bridging cutter is set, as share of a face. */
const BRIDGE_UNDER = 0.05;

/** The two ends of the stations. */
export interface FaceEnds {
  /** Length along the profile of the first station [m]. */
  readonly first: number;
  /** Length along the profile of the last station [m]. */
  readonly last: number;
}

/**
 * Stations that each wing holds besides its gauge cutter, as planned; where the plan names none, enough to overlap as
 * asked, and as a second try one less, if the faces still overlap then.
 */
export function holdsTried(setting: LayoutSetting, { first, last }: FaceEnds): number[][] {
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
export function stationChoices(
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
export function bridgeArc(setting: LayoutSetting, arcs: readonly number[]): number | undefined {
  if (setting.plan.wings < 2) return undefined;
  const gauge = setting.atGauge(0).pose;
  const from = Math.max(...facesAt(setting, arcs).map((slot) => sweptInterval(slot.pose).to));
  const to = sweptInterval(gauge).from;
  return from < to + BRIDGE_UNDER * gauge.faceDiameter ? arcOfCentre(setting, (from + to) / 2) : undefined;
}
