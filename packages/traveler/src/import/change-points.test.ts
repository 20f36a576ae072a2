import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changePoints } from "./change-points.ts";

const run = (...pieces: readonly (readonly [number, number])[]): Float64Array =>
  Float64Array.from(pieces.flatMap(([level, bins]) => Array.from({ length: bins }, () => level)));

/** A fixed ripple, so that bins scatter without chance. */
const rippled = (levels: Float64Array): Float64Array =>
  levels.map((level, at) => level + 0.1 * Math.sin(12.9898 * at * at));

describe("changePoints", () => {
  it("finds true steps and no others", () => {
    const levels = rippled(run([1, 40], [3, 30], [2, 50]));
    expect(changePoints({ levels, leastBins: 5, mostPieces: 12, forced: [] }).starts).toEqual([0, 40, 70]);
  });

  it("leaves an even run whole", () => {
    const levels = rippled(run([2, 120]));
    expect(changePoints({ levels, leastBins: 5, mostPieces: 12, forced: [] }).starts).toEqual([0]);
  });

  it("keeps to the most pieces, taking the largest steps", () => {
    const levels = rippled(run([1, 40], [9, 40], [8.5, 40]));
    expect(changePoints({ levels, leastBins: 5, mostPieces: 2, forced: [] }).starts).toEqual([0, 40]);
  });

  it("cuts where it is told, however thin, and passes over empty bins", () => {
    const levels = rippled(run([1, 40], [Number.NaN, 20], [1, 40]));
    const { starts } = changePoints({ levels, leastBins: 10, mostPieces: 12, forced: [3, 50] });
    expect(starts).toEqual([0, 3, 50]);
  });

  it("is the best of all ways to part a short run", () => {
    const levels = fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: 4, maxLength: 11 });
    fc.assert(
      fc.property(
        levels,
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 1, max: 4 }),
        (list, leastBins, mostPieces) => {
          const found = changePoints({ levels: Float64Array.from(list), leastBins, mostPieces, forced: [] });
          const score = (starts: readonly number[]) => squares(list, starts) + found.penalty * starts.length;
          const best = allPartitions(list.length, leastBins, mostPieces).map(score);
          expect(score(found.starts)).toBeLessThanOrEqual(Math.min(...best) + 1e-9);
        },
      ),
    );
  });

  it("does not care for the zero of the levels", () => {
    const levels = rippled(run([1, 40], [3, 30], [2, 50]));
    const shifted = levels.map((level) => level + 7);
    const starts = (of: Float64Array) => changePoints({ levels: of, leastBins: 5, mostPieces: 12, forced: [] }).starts;
    expect(starts(shifted)).toEqual(starts(levels));
  });

  it("throws on a least piece of nothing", () => {
    expect(() => changePoints({ levels: run([1, 4]), leastBins: 0, mostPieces: 2, forced: [] })).toThrow(/leastBins/);
  });
});

/** Sum of squares about the pieces' means, added up without running sums. */
function squares(levels: readonly number[], starts: readonly number[]): number {
  return starts.reduce((sum, start, at) => {
    const piece = levels.slice(start, starts[at + 1] ?? levels.length);
    const mean = piece.reduce((total, level) => total + level, 0) / piece.length;
    return sum + piece.reduce((total, level) => total + (level - mean) ** 2, 0);
  }, 0);
}

function allPartitions(bins: number, leastBins: number, mostPieces: number): number[][] {
  const further = (starts: number[]): number[][] => {
    const last = starts.at(-1) ?? 0;
    if (starts.length === mostPieces) return [starts];
    const next = Array.from({ length: bins }, (_, at) => at).filter(
      (at) => at >= last + leastBins && at <= bins - leastBins,
    );
    return [starts, ...next.flatMap((at) => further([...starts, at]))];
  };
  return further([0]);
}
