import { spread } from "../sheet/index.ts";
import type { PagePoint } from "../svg/index.ts";

/** A cutter's tip on the page and the way out of the bit there. */
export interface Tip {
  /** Index of the cutter [-]. */
  readonly cutter: number;
  readonly at: PagePoint;
  /** Step of length one out of the bit. */
  readonly out: PagePoint;
}

/** Where a cutter's number stands. */
export interface NumberPlace {
  /** Index of the cutter [-]. */
  readonly cutter: number;
  readonly tip: PagePoint;
  /** Middle of the number. */
  readonly at: PagePoint;
}

const OFF = 6.5;
const ROW_STEP = 4.6;
const GAP = 5.2;

/**
 * Numbers strung along the outside of the profile, each as near its tip as its neighbours let it; in two or three rows
 * where one is not long enough. The tips come from the axis outward.
 */
export function numberPlaces(tips: readonly Tip[], axis: number): NumberPlace[] {
  if (tips.length === 0) return [];
  const line = tips.map(({ at, out }): PagePoint => [at[0] + OFF * out[0], at[1] + OFF * out[1]]);
  const along = [0];
  for (let k = 1; k < line.length; k++) {
    along.push(along[k - 1] + Math.hypot(line[k][0] - line[k - 1][0], line[k][1] - line[k - 1][1]));
  }
  const length = along[along.length - 1] + 2 * GAP;
  const rows = Math.min(3, Math.max(1, Math.ceil((tips.length * GAP) / length)));
  // The first may not slip past the axis, where another bit would be drawn.
  const first = Math.min(0, axis + GAP / 2 - line[0][0]);
  const places: number[] = [];
  for (const place of spread(along, GAP / rows))
    places.push(Math.max(place, (places.at(-1) ?? first - GAP / rows) + GAP / rows));
  return places.map((place, k) => {
    const [base, out] = pointAlong(line, along, tips, place);
    const row = (k % rows) * ROW_STEP;
    return {
      cutter: tips[k].cutter,
      tip: tips[k].at,
      at: [base[0] + row * out[0], base[1] + row * out[1]],
    };
  });
}

/** The point of the line at a length along it, straight on past its ends, and the way out there. */
function pointAlong(
  line: readonly PagePoint[],
  along: readonly number[],
  tips: readonly Tip[],
  place: number,
): [PagePoint, PagePoint] {
  const last = line.length - 1;
  const next = along.findIndex((at) => at >= place);
  if (last === 0) return [[line[0][0] + place, line[0][1]], tips[0].out];
  if (next > 0) {
    const from = next - 1;
    const share = (place - along[from]) / (along[next] - along[from] || 1);
    return [between(line[from], line[next], share), between(tips[from].out, tips[next].out, share)];
  }
  const end = next === 0 ? 0 : last;
  const [ox, oy] = tips[end].out;
  // Along the profile is a quarter turn from the way out: toward the axis at its start, up the gauge at its end.
  const over = place - along[end];
  return [[line[end][0] + oy * over, line[end][1] - ox * over], tips[end].out];
}

function between(a: PagePoint, b: PagePoint, share: number): PagePoint {
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
}
