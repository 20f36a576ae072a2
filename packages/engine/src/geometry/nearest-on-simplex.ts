import { cross, dot, length, minus, plus, times, type Vector } from "./vector.ts";

/** The point of a simplex nearest the origin and the corners it rests on. */
export interface NearestOnSimplex {
  readonly point: Vector;
  readonly corners: readonly Vector[];
  /** True when the origin lies inside a tetrahedron. */
  readonly inside: boolean;
}

/** Height of a triangle or tetrahedron over its reach under which it counts as flat [-]. */
const FLAT = 1e-10;

function onEdge(a: Vector, b: Vector): NearestOnSimplex {
  const along = minus(b, a);
  const size = dot(along, along);
  const share = size > 0 ? -dot(a, along) / size : 0;
  if (share <= 0) return { point: a, corners: [a], inside: false };
  if (share >= 1) return { point: b, corners: [b], inside: false };
  return { point: plus(a, times(share, along)), corners: [a, b], inside: false };
}

function nearer(candidates: readonly NearestOnSimplex[]): NearestOnSimplex | undefined {
  let best: NearestOnSimplex | undefined;
  for (const candidate of candidates) {
    if (!best || dot(candidate.point, candidate.point) < dot(best.point, best.point)) best = candidate;
  }
  return best;
}

function onTriangle(a: Vector, b: Vector, c: Vector): NearestOnSimplex {
  const [ab, ac] = [minus(b, a), minus(c, a)];
  const normal = cross(ab, ac);
  const size = dot(normal, normal);
  const edges = [onEdge(a, b), onEdge(b, c), onEdge(c, a)];
  if (size > FLAT ** 2 * dot(ab, ab) * dot(ac, ac)) {
    // The foot of the origin on the plane lies within the triangle when it is on the inner side of all three edges.
    const foot = times(dot(a, normal) / size, normal);
    const within = (p: Vector, q: Vector) => dot(cross(minus(q, p), minus(foot, p)), normal) >= 0;
    if (within(a, b) && within(b, c) && within(c, a)) return { point: foot, corners: [a, b, c], inside: false };
  }
  return nearer(edges) ?? { point: a, corners: [a], inside: false };
}

/**
 * The point nearest the origin on a simplex of one to four corners.
 *
 * @source (b) Ericson 2005, Real-Time Collision Detection, ch. 5 (nearest point on simplices), recalled; own form
 */
export function nearestOnSimplex(corners: readonly Vector[]): NearestOnSimplex {
  const [a, b, c, d] = corners;
  if (!a) throw new RangeError("a simplex needs a corner, got none");
  if (!b) return { point: a, corners: [a], inside: false };
  if (!c) return onEdge(a, b);
  if (!d) return onTriangle(a, b, c);
  const faces: readonly (readonly [Vector, Vector, Vector, Vector])[] = [
    [a, b, c, d],
    [a, c, d, b],
    [a, d, b, c],
    [b, d, c, a],
  ];
  const outside: NearestOnSimplex[] = [];
  for (const [p, q, r, opposite] of faces) {
    const normal = cross(minus(q, p), minus(r, p));
    const reach = minus(opposite, p);
    const depth = dot(reach, normal);
    // Beyond this face when the origin and the fourth corner lie on opposite sides of it. A tetrahedron so flat that
    // rounding decides the side has no inside: each of its faces is looked at.
    const flat = Math.abs(depth) <= FLAT * length(reach) * length(normal);
    if (flat || -dot(p, normal) * depth <= 0) outside.push(onTriangle(p, q, r));
  }
  return nearer(outside) ?? { point: [0, 0, 0], corners: [a, b, c, d], inside: true };
}
