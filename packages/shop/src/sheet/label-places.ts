import type { PagePoint } from "../svg/index.ts";

/** A label to be set near its anchor. */
export interface Label {
  readonly text: string;
  readonly anchor: PagePoint;
  /** Where it would best stand, from the anchor, as an angle on the page (0 right, clockwise) [rad]. */
  readonly toward: number;
  /** How far the thing at the anchor itself reaches that way [mm]. */
  readonly reach: number;
  /** Room it takes [mm]. */
  readonly width: number;
  /** Room it takes [mm]. */
  readonly height: number;
}

/** Where a label came to stand. */
export interface PlacedLabel {
  readonly text: string;
  /** Middle of the text. */
  readonly at: PagePoint;
  readonly anchor: PagePoint;
  /** Whether it stands so far off that it needs a line to its anchor. */
  readonly leader: boolean;
}

/** A point that a label should not cover. */
export interface Obstacle {
  readonly at: PagePoint;
  /** How much it matters, in millimetres of distance it is worth going round [mm]. */
  readonly weight: number;
}

/** What stands already where labels are to be set. */
export interface Standing {
  readonly points: readonly Obstacle[];
  /** Text that no label and no leader may cross. */
  readonly boxes: readonly StandingBox[];
}

/** The room a piece of text takes. */
export interface StandingBox {
  /** Its middle. */
  readonly at: PagePoint;
  /** [mm] */
  readonly width: number;
  /** [mm] */
  readonly height: number;
}

// From the rim of the thing to the middle of the label [mm]; a label at the first stands so near that it needs no line.
const DISTANCES = [2.4, 3.6, 5, 7, 9.5, 12.5, 16, 20];
const TURNS = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6].map((step) => (step * Math.PI) / 6);
// Once to set each, twice more to let the first make room for the last.
const SWEEPS = 3;
const LABEL_OVERLAP = 1000;
const LEADER_CROSSING = 300;

/**
 * Sets each label at the free place nearest to where it would best stand: over no other label, over as few obstacles as
 * can be, its leader crossing no label. Labels are set in the order given, so the same drawing always comes out the same.
 */
export function placeLabels(labels: readonly Label[], standing: Standing): PlacedLabel[] {
  const set: (Setting | undefined)[] = labels.map(() => undefined);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    labels.forEach((label, k) => {
      const others = set.filter((other, j): other is Setting => j !== k && other !== undefined);
      set[k] = bestSetting(label, others, standing);
    });
  }
  return set.flatMap((setting) => {
    if (!setting) return [];
    const { label, at, leader } = setting;
    return [{ text: label.text, at, anchor: label.anchor, leader }];
  });
}

/** A label at one of its possible places. */
interface Setting {
  readonly label: Label;
  readonly at: PagePoint;
  readonly leader: boolean;
}

function bestSetting(label: Label, others: readonly Setting[], standing: Standing): Setting {
  let best: Setting = { label, at: label.anchor, leader: false };
  let least = Number.POSITIVE_INFINITY;
  for (const distance of DISTANCES) {
    for (const turn of TURNS) {
      const at = along(label.anchor, label.toward + turn, label.reach + distance);
      const setting: Setting = { label, at, leader: distance > DISTANCES[0] };
      const cost = distance + 1.2 * Math.abs(turn) + clutter(setting, others, standing);
      if (cost < least - 1e-9) {
        best = setting;
        least = cost;
      }
    }
  }
  return best;
}

function clutter({ label, at, leader }: Setting, others: readonly Setting[], standing: Standing): number {
  let cost = 0;
  for (const other of others) {
    if (overlap(at, label, other.at, other.label)) cost += LABEL_OVERLAP;
    if (leader && crosses(label.anchor, at, other.at, other.label)) cost += LEADER_CROSSING;
    if (other.leader && crosses(other.label.anchor, other.at, at, label)) cost += LEADER_CROSSING;
    if (leader && other.leader && segmentsMeet(label.anchor, at, other.label.anchor, other.at)) cost += LEADER_CROSSING;
  }
  for (const box of standing.boxes) {
    if (overlap(at, label, box.at, box)) cost += LABEL_OVERLAP;
    if (leader && crosses(label.anchor, at, box.at, box)) cost += LEADER_CROSSING;
  }
  for (const { at: point, weight } of standing.points) if (inside(point, at, label, 0.3)) cost += weight;
  return cost;
}

type Box = Pick<Label, "width" | "height">;

const along = ([x, y]: PagePoint, angle: number, distance: number): PagePoint => [
  x + distance * Math.cos(angle),
  y + distance * Math.sin(angle),
];

/** Whether two boxes come nearer than a hair to each other. */
function overlap(a: PagePoint, one: Box, b: PagePoint, other: Box): boolean {
  const hair = 0.5;
  return (
    Math.abs(a[0] - b[0]) < (one.width + other.width) / 2 + hair &&
    Math.abs(a[1] - b[1]) < (one.height + other.height) / 2 + hair
  );
}

function inside(point: PagePoint, middle: PagePoint, box: Box, margin: number): boolean {
  return (
    Math.abs(point[0] - middle[0]) < box.width / 2 + margin && Math.abs(point[1] - middle[1]) < box.height / 2 + margin
  );
}

function crosses(from: PagePoint, to: PagePoint, middle: PagePoint, box: Box): boolean {
  for (let k = 0; k <= 10; k++) {
    const share = k / 10;
    const point: PagePoint = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    if (inside(point, middle, box, 0.2)) return true;
  }
  return false;
}

function segmentsMeet(a: PagePoint, b: PagePoint, c: PagePoint, d: PagePoint): boolean {
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

function side(from: PagePoint, to: PagePoint, point: PagePoint): boolean {
  return (to[0] - from[0]) * (point[1] - from[1]) > (to[1] - from[1]) * (point[0] - from[0]);
}
