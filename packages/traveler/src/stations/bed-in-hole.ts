import type { AdvisedBed, BedFit, GroundBed } from "@bitwright/engine";
import type { AdviceStation } from "./advice-station.ts";
import type { GroundStation } from "./ground-station.ts";

/** One bed as far as this bit drills it. */
export interface BedInHole {
  readonly ground: GroundBed;
  readonly fit: BedFit;
  /** The bed clipped to the stretch that the bit drills. */
  readonly bed: AdvisedBed;
}

/** The beds that the bit drills, each clipped to the bit's stretch of it, from the top down. */
export function bedsInHole(ground: GroundStation, { fits, casing }: AdviceStation): BedInHole[] {
  return ground.beds.flatMap((groundBed, at) =>
    casing.bitIntervals.flatMap(({ top, bottom }) => {
      const fit = fits[at];
      const bed = { ...fit.bed, top: Math.max(fit.bed.top, top), bottom: Math.min(fit.bed.bottom, bottom) };
      return bed.bottom > bed.top && fit.verdict !== "unfit" ? [{ ground: groundBed, fit, bed }] : [];
    }),
  );
}
