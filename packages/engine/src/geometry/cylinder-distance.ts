import { requirePositive } from "../quantity/index.ts";
import { nearestOnSimplex } from "./nearest-on-simplex.ts";
import { dot, length, minus, plus, times, unit, type Vector } from "./vector.ts";

/** A solid cylinder with flat ends, square to its axis. */
export interface Cylinder {
  /** Centre of one end. */
  readonly from: Vector;
  /** Centre of the other end. */
  readonly to: Vector;
  /** Radius [m]. */
  readonly radius: number;
}

/** A cylinder with its axis ready for many look-ups. */
interface Prepared extends Cylinder {
  readonly axis: Vector;
}

function prepared(cylinder: Cylinder): Prepared {
  requirePositive({ radius: cylinder.radius });
  return { ...cylinder, axis: unit(minus(cylinder.to, cylinder.from)) };
}

/** The point of the cylinder that lies farthest along `direction`. */
function farthest(cylinder: Prepared, direction: Vector): Vector {
  const along = dot(direction, cylinder.axis);
  const end = along > 0 ? cylinder.to : cylinder.from;
  const across = minus(direction, times(along, cylinder.axis));
  const size = length(across);
  // Along the axis every point of the end lies equally far; rounding must not pick a random one.
  return size > 1e-14 * length(direction) ? plus(end, times(cylinder.radius / size, across)) : end;
}

const MOST_STEPS = 200;
/** The gap between the bounds at which the search ends, as a share of the bodies' size [-]. */
const CLOSE_ENOUGH = 1e-10;

/**
 * Least distance between two solid cylinders of finite length, by the search of Gilbert, Johnson & Keerthi on the set of
 * differences of their points. Each step bounds the distance from above by |v| and from below by v·w/|v|; the search ends
 * when the two agree to 1e-10 of the bodies' size, or rounding stops the gain. It also ends once the lower bound passes
 * `enough`, and gives that bound: most of the steps go into figures that a caller who only asks for room does not need.
 *
 * @returns distance, 0 when they touch or run into each other; only a lower bound where it passes `enough` [m]
 * @throws RangeError when a radius is not positive or a cylinder has no length
 * @source (b) Gilbert, Johnson & Keerthi 1988, IEEE J. Robotics Autom. 4:193-203, recalled
 * @example
 * cylinderDistance({ from: [0, 0, 0], to: [0, 0, 8], radius: 6 }, { from: [20, 0, 2], to: [20, 9, 2], radius: 5 }) // → 9
 */
export function cylinderDistance(a: Cylinder, b: Cylinder, enough = Number.POSITIVE_INFINITY): number {
  const first = prepared(a);
  const second = prepared(b);
  const size =
    length(minus(a.to, a.from)) + length(minus(b.to, b.from)) + a.radius + b.radius + length(minus(a.from, b.from));
  let corners: readonly Vector[] = [];
  let nearest = minus(farthest(first, minus(b.from, a.from)), farthest(second, minus(a.from, b.from)));
  let distance = length(nearest);
  for (let step = 0; step < MOST_STEPS; step++) {
    if (distance <= CLOSE_ENOUGH * size) return 0;
    const support = minus(farthest(first, times(-1, nearest)), farthest(second, nearest));
    const atLeast = dot(nearest, support) / distance;
    if (distance - atLeast <= CLOSE_ENOUGH * size) return distance;
    if (atLeast > enough) return atLeast;
    const next = nearestOnSimplex([...corners, support]);
    if (next.inside) return 0;
    const nextDistance = length(next.point);
    // Rounding ends the gain a few figures short of the bounds meeting; what is left is far below any shop tolerance.
    if (step > 0 && nextDistance >= distance) return distance;
    corners = next.corners;
    nearest = next.point;
    distance = nextDistance;
  }
  return distance;
}

/**
 * How far two cylinders run into each other sideways: the least cut that must come off their radii, both together, before
 * they are apart. Continues the distance below zero for cylinders side by side.
 *
 * @returns overlap, 0 when they are apart, at most twice the smaller radius [m]
 * @throws RangeError when a radius is not positive or a cylinder has no length
 * @source (d) bisection on the distance of thinned cylinders
 * @example
 * cylinderOverlap({ from: [0, 0, 0], to: [0, 0, 8], radius: 6 }, { from: [10, 0, 0], to: [10, 0, 8], radius: 6 }) // → 2
 */
export function cylinderOverlap(a: Cylinder, b: Cylinder): number {
  if (cylinderDistance(a, b, 0) > 0) return 0;
  const most = Math.min(a.radius, b.radius);
  const apart = (cut: number) =>
    cylinderDistance({ ...a, radius: a.radius - cut }, { ...b, radius: b.radius - cut }, 0) > 0;
  let low = 0;
  let high = most * (1 - 1e-9);
  if (!apart(high)) return 2 * most;
  while (high - low > 1e-9 * most) {
    const middle = (low + high) / 2;
    if (apart(middle)) high = middle;
    else low = middle;
  }
  return high + low;
}
