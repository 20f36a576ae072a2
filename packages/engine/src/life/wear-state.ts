import type { BitLayout } from "../bit/index.ts";
import { type EdgeWear, edgeReach } from "../cutting/index.ts";
import { deepestWear, levelEdgeWear } from "./edge-wear.ts";

/** How a bit is worn, in the figures that a life is judged by. */
export interface WearState {
  /** Height worn off each cutter where it has lost most [m]. */
  readonly wornHeights: readonly number[];
  /** Mean wear grade of the cutters within two thirds of the radius; 0 where there are none [-]. */
  readonly innerGrade: number;
  /** Mean wear grade of the cutters beyond; 0 where there are none [-]. */
  readonly outerGrade: number;
  /** Diameter lost at the gauge, which pads hold where they stand out beyond the gauge cutters [m]. */
  readonly undergauge: number;
  /** Diameter that the gauge cutters by themselves have lost [m]. */
  readonly cutterUndergauge: number;
}

/** Part of the radius whose cutters count as inner ones: (a) IADC dull grading 1992 [-]. */
const INNER_SHARE = 2 / 3;
/** Cutters that start out within this part of the hole radius never hold the gauge [-]. */
const GAUGE_SHARE = 0.9;

/**
 * Wear heights, zone grades and gauge loss of a bit from the wear of its edges.
 *
 * Grade 8 h/D of each cutter, the mean over the cutters within 2/3 of the hole radius and over those beyond. Gauge loss is
 * twice what the edge that stands farthest out has lost of its reach; what was ground off to gauge when the bit was made
 * does not count, and what pads and side force do is left to the march.
 *
 * @source (b) IADC dull grading 1992 (SPE/IADC 23939), recalled; (d) geometry of the worn edges
 */
export function wearStateOf(layout: BitLayout): (wear: readonly EdgeWear[]) => WearState {
  const { cutters, holeDiameter } = layout;
  const holeRadius = holeDiameter / 2;
  const reachOf = (wear: readonly EdgeWear[]) =>
    onGauge.reduce((farthest, i) => Math.max(farthest, Math.min(holeRadius, edgeReach(cutters[i], wear[i]))), 0);
  const onGauge = cutters.flatMap((cutter, i) =>
    edgeReach({ ...cutter, wornHeight: 0 }) >= GAUGE_SHARE * holeRadius ? [i] : [],
  );
  const whole = reachOf(cutters.map(levelEdgeWear));
  const inner = cutters.map(({ radius }) => radius <= INNER_SHARE * holeRadius);
  return (wear) => {
    const wornHeights = cutters.map(({ faceDiameter }, i) => deepestWear({ faceDiameter, wear: wear[i] }));
    const grades = wornHeights.map((height, i) => (8 * height) / cutters[i].faceDiameter);
    const cutterUndergauge = Math.max(0, 2 * (whole - reachOf(wear)));
    return {
      wornHeights,
      innerGrade: mean(grades.filter((_, i) => inner[i])),
      outerGrade: mean(grades.filter((_, i) => !inner[i])),
      undergauge: cutterUndergauge,
      cutterUndergauge,
    };
  };
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
