import type { PagePoint } from "../svg/index.ts";

/** The frame that numbers have to stay in [mm]. */
export interface NumberFrame {
  /** [mm] */
  readonly left: number;
  /** [mm] */
  readonly right: number;
  /** [mm] */
  readonly top: number;
  /** [mm] */
  readonly bottom: number;
}

/** Room of a number of two figures [mm]. */
export const NUMBER_ROOM = { width: 5, height: 4.2 } as const;
const { width: WIDE, height: HIGH } = NUMBER_ROOM;
/** How far from its point a number may stand, nearest first [mm]. */
const DISTANCES = [4.2, 6.5, 9, 12, 16] as const;
/** Directions tried at each distance, in eighths of a turn from straight up. */
const EIGHTHS = [0, 1, 7, 2, 6, 4, 3, 5] as const;

/** Where the number of each point may stand: near it, over no other point and no other number. */
export function numberedPlaces(points: readonly PagePoint[], frame: NumberFrame): PagePoint[] {
  const taken: PagePoint[] = [];
  for (const point of points) {
    const tried = DISTANCES.flatMap((distance) =>
      EIGHTHS.map((eighth): PagePoint => {
        const turn = (eighth * Math.PI) / 4;
        return [point[0] + distance * Math.sin(turn), point[1] - distance * Math.cos(turn)];
      }),
    );
    taken.push(tried.find((place) => isFree(place, points, taken, frame)) ?? tried[0]);
  }
  return taken;
}

function isFree(
  [x, y]: PagePoint,
  points: readonly PagePoint[],
  taken: readonly PagePoint[],
  { left, right, top, bottom }: NumberFrame,
): boolean {
  const inside = x > left + WIDE / 2 && x < right - WIDE / 2 && y > top + HIGH / 2 && y < bottom - HIGH / 2;
  const clearOfPoints = points.every(
    ([px, py]) => Math.abs(px - x) > WIDE / 2 + 0.8 || Math.abs(py - y) > HIGH / 2 + 0.8,
  );
  const clearOfNumbers = taken.every(([px, py]) => Math.abs(px - x) > WIDE || Math.abs(py - y) > HIGH);
  return inside && clearOfPoints && clearOfNumbers;
}
