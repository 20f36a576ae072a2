import type { BedCut } from "./cut-station.ts";
import { USUAL_CHIP_SIZE } from "./flow-station.ts";
import { chipSizeOf } from "./return-by-bed.ts";

/** Rate and chip size of the bed that drills fastest: it loads the return most. */
export function fastestChip(beds: readonly BedCut[]): { chipSize: number; rate?: number } {
  const fastest = beds.reduce<BedCut | undefined>(
    (most, bed) => (most === undefined || bed.drilling.rate > most.drilling.rate ? bed : most),
    undefined,
  );
  if (!fastest) return { chipSize: USUAL_CHIP_SIZE };
  return { chipSize: chipSizeOf(fastest), rate: fastest.drilling.rate };
}
