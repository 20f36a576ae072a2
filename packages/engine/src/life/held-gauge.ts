import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import { type OnWall, padWear, sideLossAtWall } from "./wall-wear.ts";
import type { WearState } from "./wear-state.ts";

/** What gauge cutters and pads have come to against the wall. */
export interface HeldGauge {
  /** Reach that the gauge cutters have lost by their own cut [m]. */
  readonly ownLoss: number;
  /** Reach that they have lost beside that by bearing side force [m]. */
  readonly sideLoss: number;
  /** Thickness of the ring of rock between worn gauge cutters and the pads that stand out beyond them [m]. */
  readonly ring: number;
}

/**
 * The gauge after a length of hole.
 *
 * Where pads stand out beyond the cutters they bear the side force and grind the ring g: g' = a - b - c g, with a the cutters'
 * own loss, b and c of `padWear`. So g comes to rest at (a - b)/c, from where on pads lose as fast as cutters. Where g falls to
 * nothing, or there are no pads, the cutters bear their share of the side force by `sideLossAtWall`. Rates are taken as even over
 * the length.
 *
 * @throws RangeError when a loss or thickness is negative or the length is not positive
 * @source (d) the balance of losses, solved in closed form
 */
export function gaugeAfter(
  before: HeldGauge,
  {
    ownLoss,
    length,
    wall,
    landArea,
  }: {
    /** Reach that the gauge cutters have lost by their own cut at the end [m]. */
    readonly ownLoss: number;
    /** Length of hole [m]. */
    readonly length: number;
    readonly wall: OnWall;
    /** Area of the cutters' lands against the wall [m²]. */
    readonly landArea: number;
  },
): HeldGauge {
  requirePositive({ length });
  requireNotNegative({ ownLoss, landArea, ring: before.ring, sideLoss: before.sideLoss });
  const a = Math.max(0, ownLoss - before.ownLoss) / length;
  const pads = wall.pads ? padWear(wall, wall.pads) : undefined;
  const proud = pads ? standingProud(before.ring, a - pads.bySideForce, pads.byRing, length) : { length: 0, ring: 0 };
  const level = length - proud.length;
  const side = level > 0 ? level * sideLossAtWall({ ...wall, ownLoss: a, landArea }) : 0;
  return { ownLoss, sideLoss: before.sideLoss + side, ring: proud.ring };
}

/** How far along pads stand proud while g' = grows - decays g, and the ring that is left at the end of the length. */
function standingProud(ring: number, grows: number, decays: number, length: number): { length: number; ring: number } {
  const at = (x: number) => {
    const decay = decays * x;
    // (1 - e^-x)/x, one where nothing is ground off the pads.
    const kept = decay > 0 ? -Math.expm1(-decay) / decay : 1;
    return ring * Math.exp(-decay) + grows * x * kept;
  };
  if (at(length) > 0) return { length, ring: at(length) };
  if (!(ring > 0)) return { length: 0, ring: 0 };
  const gone = decays > 0 ? Math.log1p((decays * ring) / -grows) / decays : ring / -grows;
  return { length: Math.min(length, gone), ring: 0 };
}

/** The wear of a bit's edges, with its gauge as cutters and pads hold it. */
export function withGauge(edges: WearState, { ownLoss, sideLoss, ring }: HeldGauge): WearState {
  const cutterUndergauge = 2 * (ownLoss + sideLoss);
  return { ...edges, cutterUndergauge, undergauge: cutterUndergauge - 2 * ring };
}
