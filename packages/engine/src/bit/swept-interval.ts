import { dot, type Interval } from "../geometry/index.ts";
import { requireBetween, requirePositive } from "../quantity/index.ts";
import { cutterFrame } from "./cutter-frame.ts";
import type { CutterPose } from "./placed-cutter.ts";

/** A pose, and what is worn off its edge where anything is. */
export interface SweepingFace extends CutterPose {
  /** Height worn off the edge, along the face [m]. */
  readonly wornHeight?: number;
}

const SAMPLES = 128;
const HALVINGS = 52;

/** Angle where `value` is largest between two ends, from its slope; sampled first so that no second hill is missed. */
function crest(value: (phi: number) => number, slope: (phi: number) => number, from: number, to: number): number {
  const step = (to - from) / SAMPLES;
  let best = from;
  for (let at = 1; at <= SAMPLES; at++) {
    const phi = from + at * step;
    if (value(phi) > value(best)) best = phi;
  }
  let low = Math.max(from, best - step);
  let high = Math.min(to, best + step);
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (low + high) / 2;
    if (slope(middle) > 0) low = middle;
    else high = middle;
  }
  const polished = (low + high) / 2;
  return value(polished) > value(best) ? polished : best;
}

/**
 * The radii that a tilted face sweeps as the bit turns: the nearest and the farthest point of its edge from the bit axis,
 * taken in space and not in a flat projection.
 *
 * With c the face centre, ρ(φ) = |c + (D/2)(cos φ u + sin φ v)| across the axis, least and greatest over φ; a worn edge
 * ends at the chord of its flat. A face whose edge crosses the axis starts at 0; one that merely leans past it leaves a
 * core of the radius at which its edge passes.
 *
 * @throws RangeError when the face has no size, its centre lies at a negative radius, or more is worn than there is
 * @source (d) geometry of a tilted circle
 */
export function sweptInterval(face: SweepingFace): Interval {
  const { radius, faceDiameter, wornHeight = 0 } = face;
  requirePositive({ faceDiameter });
  requireBetween("radius", radius, 0, Number.MAX_VALUE);
  requireBetween("wornHeight", wornHeight, 0, faceDiameter);
  const { outward, travel, faceAcross, faceDown } = cutterFrame(face);
  const reach = faceDiameter / 2;
  const [acrossOut, acrossOn] = [reach * dot(faceAcross, outward), reach * dot(faceAcross, travel)];
  const [downOut, downOn] = [reach * dot(faceDown, outward), reach * dot(faceDown, travel)];
  const out = (phi: number) => radius + Math.cos(phi) * acrossOut + Math.sin(phi) * downOut;
  const on = (phi: number) => Math.cos(phi) * acrossOn + Math.sin(phi) * downOn;
  const rho = (phi: number) => Math.hypot(out(phi), on(phi));
  // Half the slope of ρ².
  const slope = (phi: number) =>
    out(phi) * (Math.cos(phi) * downOut - Math.sin(phi) * acrossOut) +
    on(phi) * (Math.cos(phi) * downOn - Math.sin(phi) * acrossOn);
  const flatAt = Math.asin(Math.min(1, Math.max(-1, 1 - wornHeight / reach)));
  const from = wornHeight > 0 ? Math.PI - flatAt : 0;
  const to = wornHeight > 0 ? 2 * Math.PI + flatAt : 2 * Math.PI;
  const farthest = rho(crest(rho, slope, from, to));
  const nearest = rho(
    crest(
      (phi) => -rho(phi),
      (phi) => -slope(phi),
      from,
      to,
    ),
  );
  return { from: wornHeight > 0 ? Math.min(nearest, nearestOnChord()) : nearest, to: farthest };

  /** The chord of the flat can pass nearer the axis than both its ends. */
  function nearestOnChord(): number {
    const [a, b] = [from, to];
    const [runOut, runOn] = [out(b) - out(a), on(b) - on(a)];
    const size = runOut ** 2 + runOn ** 2;
    const share = size > 0 ? Math.min(1, Math.max(0, -(out(a) * runOut + on(a) * runOn) / size)) : 0;
    return Math.hypot(out(a) + share * runOut, on(a) + share * runOn);
  }
}
