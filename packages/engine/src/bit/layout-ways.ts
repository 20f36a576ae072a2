import type { LayoutSetting, Slot } from "./layout-setting.ts";
import { bridgeArc } from "./layout-stations.ts";
import { wingOrders, wingsOfStations } from "./wing-order.ts";

/** Centres nearer in radius than this share one track [m]. */
const ONE_TRACK = 1e-6;

/** One way to hand the stations out to the wings. */
export interface LayoutWay {
  /** Wing of each station, from the centre outward, from 0. */
  readonly wingOf: readonly number[];
  /** Wings that carry a bridging cutter in place of their gauge cutter, from 0. */
  readonly bridging: readonly number[];
  /** Length along the profile where bridging cutters stand; absent where none is needed [m]. */
  readonly bridge?: number;
}

/**
 * All ways to hand the stations out to the wings, and the gauge or a bridging place to each wing, the steadiest first.
 *
 * @source (d) search of all orders, rated by how far the drag of the cutters falls short of cancelling out
 */
export function waysToHandOut(
  setting: LayoutSetting,
  { arcs, holds }: { readonly arcs: readonly number[]; readonly holds: readonly number[] },
): LayoutWay[] {
  const { wings } = setting.plan;
  const bridge = bridgeArc(setting, arcs);
  const sets = bridgingWings(wings, bridge !== undefined);
  const lean = leanOfWays(setting, arcs, bridge);
  return wingOrders(wings)
    .flatMap((order) => {
      const wingOf = wingsOfStations({ order, holds, stations: arcs.length });
      return sets.map((bridging): LayoutWay => ({ wingOf, bridging, ...(bridge === undefined ? {} : { bridge }) }));
    })
    .map((way) => ({ way, lean: lean(way) }))
    .sort((a, b) => a.lean - b.lean)
    .map(({ way }) => way);
}

/**
 * The slots of one way: stations from the centre outward, then the outermost place of each wing.
 *
 * @source (d) bookkeeping, no relation
 */
export function slotsOfWay(
  setting: LayoutSetting,
  arcs: readonly number[],
  { wingOf, bridging, bridge }: LayoutWay,
): Slot[] {
  const face = arcs.map((arc, at) => {
    const wing = wingOf[at] ?? 0;
    return at === 0 ? setting.centre(wing) : setting.onFace(wing, arc);
  });
  const outermost = Array.from({ length: setting.plan.wings }, (_, wing) =>
    bridge !== undefined && bridging.includes(wing) ? setting.onFace(wing, bridge) : setting.atGauge(wing),
  );
  return [...face, ...outermost];
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

/** A cutter as its drag is weighed: where it stands, and on which wing. */
interface Weighed {
  readonly radius: number;
  readonly wing: number;
}

/**
 * How far the drag of all cutters falls short of cancelling out, each taken as its share of the width between the tracks
 * beside its own, as a share of the hole radius. A first measure for choosing among ways to hand out the stations; the
 * forces proper are computed from the engagement.
 */
function leanOfWays(
  setting: LayoutSetting,
  arcs: readonly number[],
  bridge: number | undefined,
): (way: LayoutWay) => number {
  const { wings } = setting.plan;
  const { holeRadius } = setting.profile;
  const face = arcs.map((arc, at) => (at === 0 ? setting.centre(0) : setting.onFace(0, arc)).pose.radius);
  const gauge = setting.atGauge(0).pose.radius;
  const bridged = bridge === undefined ? gauge : setting.onFace(0, bridge).pose.radius;
  return ({ wingOf, bridging }) => {
    const weighed: Weighed[] = face.map((radius, at) => ({ radius, wing: wingOf[at] ?? 0 }));
    for (let wing = 0; wing < wings; wing++) weighed.push({ radius: bridging.includes(wing) ? bridged : gauge, wing });
    return leanOf(setting, weighed) / holeRadius;
  };
}

function leanOf(setting: LayoutSetting, weighed: readonly Weighed[]): number {
  const tracks: Weighed[][] = [];
  for (const each of [...weighed].sort((a, b) => a.radius - b.radius)) {
    const last = tracks.at(-1);
    if (last?.[0] && each.radius - last[0].radius < ONE_TRACK) last.push(each);
    else tracks.push([each]);
  }
  const border = (at: number) => {
    const [inner, outer] = [tracks[at - 1]?.[0]?.radius, tracks[at]?.[0]?.radius];
    if (inner === undefined) return 0;
    return outer === undefined ? setting.profile.holeRadius : (inner + outer) / 2;
  };
  let [x, y] = [0, 0];
  for (const [at, track] of tracks.entries()) {
    const width = (border(at + 1) - border(at)) / track.length;
    for (const { wing, radius } of track) {
      const azimuth = setting.azimuth(wing, radius);
      x -= width * Math.sin(azimuth);
      y += width * Math.cos(azimuth);
    }
  }
  return Math.hypot(x, y);
}
