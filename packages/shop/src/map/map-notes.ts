import type { RateLimitName, RunningMapPoint } from "@bitwright/engine";
import { type BedMap, formatQuantity, type QuantityKind, type UnitSystem } from "@bitwright/traveler";
import { INK, linesWithin, SOFT_INK, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { LIMIT_NAMES, LIMIT_SHORT } from "./limit-words.ts";
import { MAP_UNITS } from "./map-frame.ts";

const ROW = 4.7;
const KINDS: Readonly<Record<RateLimitName, QuantityKind>> = {
  weight: "force",
  torque: "torque",
  power: "power",
  advance: "advance",
  exposure: "length",
  rate: "rate",
  contactTemperature: "temperature",
};

/** Column of a table under the map: where it ends or begins, and to which side it is set. */
interface Column {
  readonly head: string;
  /** [mm] */
  readonly x: number;
  readonly side: "start" | "end";
}

/** The two tables under a map: where each limit stands at the speed of the card, and the points beside each other. */
export function mapNotes(
  bed: BedMap,
  edges: { readonly left: number; readonly right: number; readonly top: number },
  units: UnitSystem,
): Svg {
  const figure = (kind: QuantityKind, si: number) =>
    formatQuantity(kind, si, units, { figures: 3, ...(kind === "force" ? { unit: MAP_UNITS[units].force } : {}) });
  const speed = (si: number) => formatQuantity("rotary speed", si, units, { figures: 3 });
  const { left } = edges;
  const points = pointRows(bed, figure, speed);
  const pointColumns: Column[] = [
    { head: "", x: left, side: "start" },
    { head: "weight on bit", x: left + 62, side: "end" },
    { head: "rotary", x: left + 84, side: "end" },
    { head: "rate", x: left + 101, side: "end" },
    { head: "what ends it", x: left + 106, side: "start" },
  ];
  const limitColumns: Column[] = [
    { head: `limits at ${speed(bed.run.rotarySpeed)}, tightest first`, x: left, side: "start" },
    { head: "limit set at", x: left + 62, side: "end" },
    { head: "weight there", x: left + 84, side: "end" },
    { head: "rate", x: left + 101, side: "end" },
    { head: "", x: left + 106, side: "start" },
  ];
  const limits = limitRows(bed, figure);
  const limitsTop = edges.top + (points.length + 2) * ROW;
  return element(
    "g",
    { class: "map-notes" },
    ...table(pointColumns, points, edges.top, edges.right),
    ...table(limitColumns, limits, limitsTop, edges.right),
    ...keptOut(bed.map, speed, edges).map((text) => textAt([left, limitsTop - ROW], text, TYPE.caption)),
  );
}

/** Speeds in view that the best point keeps out of, in one line between the tables. */
function keptOut(
  { avoid, rotarySpeeds }: BedMap["map"],
  speed: (si: number) => string,
  { left, right }: { readonly left: number; readonly right: number },
): string[] {
  const slowest = rotarySpeeds[0];
  const fastest = rotarySpeeds[rotarySpeeds.length - 1];
  const told = avoid
    .filter(({ from, to }) => to > slowest && from < fastest)
    .map(({ from, to, why }) => `${speed(from).replace(/ [^ ]+$/, "")} to ${speed(to)}, ${why}`);
  return told.length === 0 ? [] : linesWithin(`Kept out of: ${told.join("; ")}.`, TYPE.caption, right - left, 1);
}

type Figure = (kind: QuantityKind, si: number) => string;

function pointRows(bed: BedMap, figure: Figure, speed: (si: number) => string): string[][] {
  const row = (name: string, point: RunningMapPoint, ends: string) => [
    name,
    figure("force", point.weight),
    speed(point.rotarySpeed),
    figure("rate", point.rate),
    ends,
  ];
  const { run, rule, rulePoint, rulePasses } = bed;
  const { best } = bed.map;
  const range = (kind: QuantityKind, low: number, high: number) =>
    low === high ? figure(kind, high) : `${figure(kind, low).replace(/ [^ ]+$/, "")} to ${figure(kind, high)}`;
  const fasterEnds = {
    rotary: "rig turns no faster",
    avoided: "faster is kept out of",
    rate: "faster gains nothing",
  } as const;
  return [
    ...(best
      ? [row("best inside all limits", best, `${LIMIT_NAMES[best.binds]}; ${fasterEnds[best.fasterEndsAt]}`)]
      : []),
    row("on the card", run, endsCard(bed)),
    rulePoint
      ? row(
          "middle of the rule of thumb",
          rulePoint,
          rulePasses.length > 0
            ? `passes ${rulePasses.map((name) => LIMIT_SHORT[name]).join(", ")}`
            : "inside all limits",
        )
      : [
          "middle of the rule of thumb",
          figure("force", rule.weight.mid),
          speed(rule.rotarySpeed.mid),
          "",
          "the bit buries",
        ],
    [
      "its box, common practice",
      range("force", rule.weight.low, rule.weight.high),
      range("rotary speed", rule.rotarySpeed.low, rule.rotarySpeed.high),
      "",
      "1,000 lb per inch, give or take a quarter",
    ],
  ];
}

/** What settled the weight of the card: a limit, the rule of thumb, or a hand. */
function endsCard({ run, rule, atRun: [tightest] }: BedMap): string {
  const same = (one: number, other: number) => Math.abs(one - other) <= 1e-6 * other;
  if (same(run.weight, rule.weight.mid)) return "weight of the rule of thumb";
  return tightest && same(run.advance, tightest.points[0].advance) ? LIMIT_NAMES[tightest.limit] : "set by hand";
}

function limitRows({ limits, atRun, map, run }: BedMap, figure: Figure): string[][] {
  const met = atRun.map(({ limit, points: [point] }) => [
    LIMIT_NAMES[limit],
    figure(KINDS[limit], limits[limit] ?? 0),
    figure("force", point.weight),
    figure("rate", point.rate),
    point.weight > map.mostWeight ? "off the map" : point.advance <= run.advance * (1 + 1e-6) ? "binds" : "",
  ]);
  const named = new Set(atRun.map(({ limit }) => limit));
  const never = (Object.keys(LIMIT_NAMES) as RateLimitName[]).filter(
    (name) => limits[name] !== undefined && !named.has(name),
  );
  return [
    ...met,
    ...never.map((name) => [
      LIMIT_NAMES[name],
      figure(KINDS[name], limits[name] ?? 0),
      "",
      "",
      "met at no weight at this speed",
    ]),
  ];
}

function table(columns: readonly Column[], rows: readonly (readonly string[])[], top: number, right: number): Svg[] {
  const set = (text: string, { x, side }: Column, y: number, head: boolean) => {
    const [line = ""] = side === "start" ? linesWithin(text, TYPE.caption, right - x, 1) : [text];
    return textAt([x, y], line, TYPE.caption, { "text-anchor": side, fill: head ? SOFT_INK : INK });
  };
  return [
    ...columns.flatMap((column) => (column.head === "" ? [] : [set(column.head, column, top, true)])),
    element("path", {
      d: linePath([
        [columns[0].x, top + 1.4],
        [right, top + 1.4],
      ]),
      stroke: SOFT_INK,
      "stroke-width": 0.2,
    }),
    ...rows.flatMap((row, k) =>
      columns.flatMap((column, c) => (row[c] === "" ? [] : [set(row[c], column, top + (k + 1) * ROW + 0.6, false)])),
    ),
  ];
}
