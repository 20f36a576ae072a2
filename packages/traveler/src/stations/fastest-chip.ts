import type { BedCut } from "./cut-station.ts";
import { USUAL_CHIP_SIZE } from "./flow-station.ts";

/** Rate and chip size of the bed that drills fastest: it loads the return most. */
export function fastestChip(beds: readonly BedCut[]): { chipSize: number; rate?: number } {
  const fastest = beds.reduce<BedCut | undefined>(
    (most, bed) => (most === undefined || bed.drilling.rate > most.drilling.rate ? bed : most),
    undefined,
  );
  if (!fastest) return { chipSize: USUAL_CHIP_SIZE };
  const deepest = fastest.drilling.cutters.reduce((most, cutter) => Math.max(most, cutter.deepest), 0);
  return { chipSize: deepest, rate: fastest.drilling.rate };
}
