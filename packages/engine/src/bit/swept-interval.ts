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

/** A figure that runs with the angle around an edge, and its slope. */
interface AroundEdge {
  readonly value: (phi: number) => number;
  readonly slope: (phi: number) => number;
}

/**
 * Angles between two ends where a figure is least and where it is greatest, from its slope; sampled first so that no
 * second hill is missed.
 */
function extremes({ value, slope }: AroundEdge, from: number, to: number): { least: number; greatest: number } {
  const step = (to - from) / SAMPLES;
  let lowest = { phi: from, value: value(from) };
  let highest = lowest;
  for (let at = 1; at <= SAMPLES; at++) {
    const phi = from + at * step;
    const here = value(phi);
    if (here > highest.value) highest = { phi, value: here };
    if (here < lowest.value) lowest = { phi, value: here };
  }
  const crest = (rough: number, uphill: (phi: number) => boolean) => {
    let low = Math.max(from, rough - step);
    let high = Math.min(to, rough + step);
    for (let n = 0; n < HALVINGS; n++) {
      const middle = (low + high) / 2;
      if (uphill(middle)) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const greatest = crest(highest.phi, (phi) => slope(phi) > 0);
  const least = crest(lowest.phi, (phi) => slope(phi) < 0);
  return {
    greatest: value(greatest) > highest.value ? greatest : highest.phi,
    least: value(least) < lowest.value ? least : lowest.phi,
  };
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
  // ρ² and half its slope: they turn where ρ does and need no root.
  const squared: AroundEdge = {
    value: (phi) => {
      const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
      const [outHere, onHere] = [radius + cos * acrossOut + sin * downOut, cos * acrossOn + sin * downOn];
      return outHere * outHere + onHere * onHere;
    },
    slope: (phi) => {
      const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
      return (
        (radius + cos * acrossOut + sin * downOut) * (cos * downOut - sin * acrossOut) +
        (cos * acrossOn + sin * downOn) * (cos * downOn - sin * acrossOn)
      );
    },
  };
  const flatAt = Math.asin(Math.min(1, Math.max(-1, 1 - wornHeight / reach)));
  const from = wornHeight > 0 ? Math.PI - flatAt : 0;
  const to = wornHeight > 0 ? 2 * Math.PI + flatAt : 2 * Math.PI;
  const { least, greatest } = extremes(squared, from, to);
  const nearest = rho(least);
  return { from: wornHeight > 0 ? Math.min(nearest, nearestOnChord()) : nearest, to: rho(greatest) };

  /** The chord of the flat can pass nearer the axis than both its ends. */
  function nearestOnChord(): number {
    const [a, b] = [from, to];
    const [runOut, runOn] = [out(b) - out(a), on(b) - on(a)];
    const size = runOut ** 2 + runOn ** 2;
    const share = size > 0 ? Math.min(1, Math.max(0, -(out(a) * runOut + on(a) * runOn) / size)) : 0;
    return Math.hypot(out(a) + share * runOut, on(a) + share * runOn);
  }
}
