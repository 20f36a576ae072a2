import { type BitProfile, profileAtArc } from "@bitwright/engine";
import type { PlaneLine } from "./passing-plane.ts";

/** A part of the face by its name in the trade. */
export interface NamedZone {
  readonly name: string;
  /** Inner radius [m]. */
  readonly from: number;
  /** Outer radius [m]. */
  readonly to: number;
}

/** A profile as the drawing needs it. */
export interface DrawnProfile {
  readonly line: PlaneLine;
  /** From the axis outward; the gauge comes last and has no width. */
  readonly zones: readonly NamedZone[];
}

const POINTS = 160;

/** The line of a profile and its zones, read off in even steps from the axis up the gauge. */
export function drawnProfile(profile: BitProfile): DrawnProfile {
  const length = profile.pieces.reduce((sum, piece) => sum + piece.length, 0);
  const points = Array.from({ length: POINTS + 1 }, (_, k) => profileAtArc(profile, (length * k) / POINTS));
  const zones: { name: string; from: number; to: number }[] = [];
  for (const { zone, radius } of points) {
    const last = zones.at(-1);
    if (last) last.to = radius;
    if (last?.name !== zone) zones.push({ name: zone, from: radius, to: radius });
  }
  return { line: { radius: points.map(({ radius }) => radius), height: points.map(({ height }) => height) }, zones };
}
