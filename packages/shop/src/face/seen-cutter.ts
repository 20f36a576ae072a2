import { type CutterFrame, cutterFrame, minus, type PlacedCutter, plus, times, type Vector } from "@bitwright/engine";
import { type PagePoint, pair, svgNumber } from "../svg/index.ts";

/** From the bit frame [m] to the page [mm]. */
export type ToPage = (point: Vector) => PagePoint;

/** A cutter as it is seen along the bit axis from below. */
export interface SeenCutter {
  /** Middle of its face on the page. */
  readonly at: PagePoint;
  /** Direction of travel on the page, as an angle (0 right, clockwise) [rad]. */
  readonly travel: number;
  /** Outline of the whole cylinder. */
  readonly cylinder: string;
  /** Outline of the back end. */
  readonly back: string;
  /** Outline of the diamond face, its worn part cut off. */
  readonly face: string;
  /** Whether the diamond looks toward the viewer; else the back end does. */
  readonly faceInView: boolean;
  /** How far the face reaches ahead on the page [mm]. */
  readonly reach: number;
  /** Points within the outline, for keeping labels off. */
  readonly points: readonly PagePoint[];
  /** The outline as corners, for telling what hides what. */
  readonly outline: readonly PagePoint[];
}

/** A disc of the cutter as an ellipse of the page. */
interface SeenDisc {
  readonly at: PagePoint;
  /** Half of the longer axis, as a step on the page. */
  readonly long: PagePoint;
  /** Half of the shorter axis; it points where the face looks. */
  readonly short: PagePoint;
}

/** A cutter seen along the bit axis: its discs become ellipses of half axes R and R |n_z|, its cylinder their hull. */
export function seenCutter(cutter: PlacedCutter, toPage: ToPage): SeenCutter {
  const frame = cutterFrame(cutter);
  const step = (direction: Vector, size: number) => stepOnPage(frame.centre, times(size, direction), toPage);
  const faceRadius = cutter.faceDiameter / 2;
  const normal = frame.faceNormal;
  const level = Math.hypot(normal[0], normal[1]);
  const ahead: Vector = level > 0 ? [normal[0] / level, normal[1] / level, 0] : frame.travel;
  const across: Vector = [-ahead[1], ahead[0], 0];
  const front: SeenDisc = {
    at: toPage(frame.centre),
    long: step(across, faceRadius),
    short: step(ahead, faceRadius * Math.abs(normal[2])),
  };
  const back: SeenDisc = { ...front, at: toPage(minus(frame.centre, times(cutter.length, normal))) };
  const [tx, ty] = step(frame.travel, 1);
  return {
    at: front.at,
    travel: Math.atan2(ty, tx),
    cylinder: hullOf(front, back),
    back: ellipse(back),
    face: wornFace(frame, cutter, front, toPage),
    // Edge-on to the last digit counts as seen, so that rounding does not decide how a gauge cutter is drawn.
    faceInView: normal[2] > -1e-9,
    reach: Math.hypot(...front.short),
    points: pointsOf(front, back),
    outline: cornersOf(front, back),
  };
}

function stepOnPage(from: Vector, step: Vector, toPage: ToPage): PagePoint {
  const [x0, y0] = toPage(from);
  const [x1, y1] = toPage(plus(from, step));
  return [x1 - x0, y1 - y0];
}

const moved = ([x, y]: PagePoint, [dx, dy]: PagePoint, times = 1): PagePoint => [x + times * dx, y + times * dy];

/** The beginning of an arc command: half axes and the turn of the longer one. */
function arcOf({ long, short }: SeenDisc): string {
  const turn = (Math.atan2(long[1], long[0]) * 180) / Math.PI;
  return `A${svgNumber(Math.hypot(...long))} ${svgNumber(Math.hypot(...short))} ${svgNumber(turn)}`;
}

const turnsClockwise = (from: PagePoint, to: PagePoint): 0 | 1 => (from[0] * to[1] - from[1] * to[0] > 0 ? 1 : 0);

function ellipse(disc: SeenDisc): string {
  const one = pair(moved(disc.at, disc.long));
  const other = pair(moved(disc.at, disc.long, -1));
  return `M${one}${arcOf(disc)} 0 1 ${other}${arcOf(disc)} 0 1 ${one}Z`;
}

/** Both discs and what lies between: half of each ellipse, joined where the longer axes end. */
function hullOf(front: SeenDisc, back: SeenDisc): string {
  const towardBack = turnsClockwise(front.long, moved([0, 0], front.short, -1));
  return [
    `M${pair(moved(front.at, front.long))}`,
    `L${pair(moved(back.at, back.long))}`,
    `${arcOf(back)} 0 ${towardBack} ${pair(moved(back.at, back.long, -1))}`,
    `L${pair(moved(front.at, front.long, -1))}`,
    `${arcOf(front)} 0 ${towardBack} ${pair(moved(front.at, front.long))}Z`,
  ].join("");
}

/** The face less what is worn off it: the arc that is left and the chord of the flat. */
function wornFace(frame: CutterFrame, cutter: PlacedCutter, disc: SeenDisc, toPage: ToPage): string {
  if (!(cutter.wornHeight > 0)) return ellipse(disc);
  const faceRadius = cutter.faceDiameter / 2;
  const down = faceRadius - cutter.wornHeight;
  const half = Math.sqrt(Math.max(0, faceRadius ** 2 - down ** 2));
  const end = (across: number) =>
    toPage(plus(frame.centre, plus(times(across, frame.faceAcross), times(down, frame.faceDown))));
  const across = stepOnPage(frame.centre, frame.faceAcross, toPage);
  const clockwise = turnsClockwise(across, stepOnPage(frame.centre, frame.faceDown, toPage));
  return `M${pair(end(-half))}${arcOf(disc)} ${down > 0 ? 1 : 0} ${clockwise} ${pair(end(half))}Z`;
}

function pointsOf(front: SeenDisc, back: SeenDisc): PagePoint[] {
  const points: PagePoint[] = [];
  for (const share of [0, 0.33, 0.67, 1]) {
    const middle: PagePoint = [
      front.at[0] + share * (back.at[0] - front.at[0]),
      front.at[1] + share * (back.at[1] - front.at[1]),
    ];
    for (const across of [-1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1])
      points.push(moved(middle, front.long, across));
  }
  return points;
}

function cornersOf(front: SeenDisc, back: SeenDisc): PagePoint[] {
  const half = (disc: SeenDisc, from: number) =>
    Array.from({ length: 13 }, (_, k): PagePoint => {
      const angle = from + (k * Math.PI) / 12;
      return moved(moved(disc.at, disc.long, Math.cos(angle)), disc.short, Math.sin(angle));
    });
  return [...half(front, 0), ...half(back, Math.PI)];
}
