import type { MarchRegime, ReviewedString, SteadySpeeds } from "@bitwright/engine";
import { formatQuantity, inUnit, type UnitSystem } from "@bitwright/traveler";
import {
  CHART_ROOM,
  type ChartPanel,
  onPanel,
  panelAxes,
  panelLine,
  rangeFromZero,
  stackedPanels,
} from "../chart/index.ts";
import {
  CUT_RAMP,
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  INK,
  linesWithin,
  PAPER,
  type SheetTitle,
  SOFT_INK,
  STEEL,
  TYPE,
  textAt,
} from "../sheet/index.ts";
import { element, linePath, pair, type Svg } from "../svg/index.ts";

/** What the sheet of steady speeds is made from. */
export interface SpeedsDrawingInput {
  /** The string of a stability review. */
  readonly string: ReviewedString;
  /** The speeds that were scanned, two at least. */
  readonly speeds: SteadySpeeds;
  /** Speed to work with [rad/s]. */
  readonly rotarySpeed: number;
  /** Weight held [N]. */
  readonly weight: number;
  /** Name of the bed. */
  readonly bed: string;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** Start of every id in the drawing; `speeds` where not given. */
  readonly id?: string;
}

/** Regimes by how bad they are: a fill that also darkens in grey, and a letter that stands in each column. */
const REGIMES: Readonly<Record<MarchRegime, { fill: string; ink: string; letter: string; words: string }>> = {
  steady: { fill: STEEL.tint, ink: INK, letter: "S", words: "steady" },
  "axial vibration": { fill: CUT_RAMP[1], ink: INK, letter: "A", words: "chatters along the hole" },
  "torsional vibration": { fill: CUT_RAMP[1], ink: INK, letter: "T", words: "turning swings" },
  "bit bounce": { fill: CUT_RAMP[3], ink: PAPER, letter: "B", words: "leaves the bottom" },
  "stick-slip": { fill: CUT_RAMP[4], ink: PAPER, letter: "X", words: "stops and spins" },
};

/**
 * What becomes of the bit over the rotary's speeds as a sheet of SVG: a column for each speed tried, the share of time it
 * stands or flies, how fast it spins, the mean torque; speeds in step with the string hatched.
 */
export function speedsDrawing(input: SpeedsDrawingInput): string {
  const { string, speeds, rotarySpeed, weight, bed, title, units, id = "speeds" } = input;
  const { tried } = speeds;
  if (tried.length < 2) throw new RangeError(`speeds to draw must be two at least, got ${tried.length}`);
  const rpm = (speed: number) => inUnit("rotary speed", speed, "rpm");
  const torqueUnit = units === "field" ? "ft-lbf" : "N m";
  const half = (rpm(tried[1].rotarySpeed) - rpm(tried[0].rotarySpeed)) / 2;
  const x = { from: rpm(tried[0].rotarySpeed) - half, to: rpm(tried[tried.length - 1].rotarySpeed) + half };
  const room = { left: CHART_ROOM.left, right: CHART_ROOM.right };
  const strip: ChartPanel = {
    ...room,
    top: DRAWING_ROOM.top + 12,
    bottom: DRAWING_ROOM.top + 30,
    x,
    y: { from: 0, to: 1 },
  };
  const frames = stackedPanels(3, { ...room, top: strip.bottom + 10, bottom: DRAWING_ROOM.bottomOfChart - 50, gap: 9 });
  const row = (of: (one: (typeof tried)[number]) => number) =>
    tried.map((one) => [rpm(one.rotarySpeed), of(one)] as const);
  const stands = row(({ stickShare }) => 100 * stickShare);
  const flies = row(({ bounceShare }) => 100 * bounceShare);
  const spins = row(({ fastestRatio }) => fastestRatio);
  const torques = row(({ meanTorque }) => inUnit("torque", meanTorque, torqueUnit));
  const panel = (k: number, ...rows: readonly (readonly (readonly [number, number])[])[]): ChartPanel => ({
    ...frames[k],
    x,
    y: rangeFromZero(
      rows.flatMap((points) => points.map(([, up]) => up)),
      4,
    ),
  });
  const [shares, spinning, twisting] = [panel(0, stands, flies), panel(1, spins), panel(2, torques)];
  const force = formatQuantity("force", weight, units, { figures: 3, unit: units === "field" ? "lbf" : "kN" });
  const sub = [`${force} in ${bed}. ${steadyWords(speeds, rpm)}`, feedWords(string)];
  const line = { stroke: CUT_RAMP[4], width: 0.6 };
  return drawingSheet({
    id,
    heading: "Speeds that keep the bit steady",
    subheading: sub,
    description: `What becomes of the bit at ${tried.length} speeds from ${Math.round(rpm(tried[0].rotarySpeed))} to ${Math.round(rpm(tried[tried.length - 1].rotarySpeed))} rpm. ${sub.join(" ")}`,
    title,
    view: "steadiness over speed",
    units: `rpm, ${torqueUnit}`,
    hole: title.hole ?? "",
    definitions: [hatch(id)],
    drawing: [
      textAt([strip.left, strip.top - 1.6], "What becomes of the bit, a column for each speed tried", TYPE.note),
      ...tried.map(({ rotarySpeed: speed, regime }) => column(strip, rpm(speed), half, regime)),
      panelAxes(shares, { up: "% of the time", heading: "Bit stands (full line), whole bit off bottom (dashed)" }),
      panelAxes(spinning, { up: "times the top", heading: "Fastest turning of the bit over that of the top" }),
      panelAxes(twisting, { up: torqueUnit, heading: "Mean torque", across: "rotary speed, rpm" }),
      ...[strip, shares, spinning, twisting].flatMap((each) => avoided(each, string, rpm, id)),
      panelLine(shares, stands, { ...line, class: "stands" }),
      panelLine(shares, flies, { ...line, dash: "1.6 1", class: "flies" }),
      panelLine(spinning, spins, { ...line, class: "spins" }),
      panelLine(twisting, torques, { stroke: STEEL.face, width: 0.6, class: "torque" }),
      ...uprights([strip, shares, spinning, twisting], string, rpm(rotarySpeed), rpm),
      ...notes(
        string,
        { left: DRAWING_ROOM.left, top: twisting.bottom + 16, x },
        rpm,
        units,
        id,
        new Set(tried.map(({ regime }) => regime)),
      ),
    ],
  });
}

function steadyWords({ steady }: SteadySpeeds, rpm: (speed: number) => number): string {
  const spans = steady.map(({ slowestSpeed, fastestSpeed }) => {
    const [from, to] = [Math.round(rpm(slowestSpeed)), Math.round(rpm(fastestSpeed))];
    return from === to ? `at ${from} rpm` : `from ${from} to ${to} rpm`;
  });
  return spans.length === 0 ? "No speed tried keeps it steady." : `Steady ${spans.join(" and ")}.`;
}

function feedWords({ feedHolds }: ReviewedString): string {
  return feedHolds
    ? "Reckoned under a constant feed force. This string is short: a feed held still keeps the bit from bouncing."
    : "Reckoned under a constant weight, one mass on one spring: where a string may swing, not how far.";
}

function column(panel: ChartPanel, speed: number, half: number, regime: MarchRegime): Svg {
  const { fill, ink, letter, words } = REGIMES[regime];
  const [left, top] = onPanel(panel, speed - half, 1);
  const [right, bottom] = onPanel(panel, speed + half, 0);
  const size = Math.min(TYPE.number, (right - left) * 0.8);
  return element(
    "g",
    { class: "speed-tried" },
    element("title", {}, `${Math.round(speed)} rpm: ${words}`),
    element("rect", {
      x: left,
      y: top,
      width: right - left,
      height: bottom - top,
      fill,
      stroke: INK,
      "stroke-width": 0.15,
    }),
    textAt([(left + right) / 2, (top + bottom) / 2 + size * 0.36], letter, size, {
      "text-anchor": "middle",
      fill: ink,
    }),
  );
}

function hatch(id: string): Svg {
  return element(
    "pattern",
    { id: `${id}-avoid`, width: 1.4, height: 1.4, patternUnits: "userSpaceOnUse", patternTransform: "rotate(-45)" },
    element("rect", { width: 0.22, height: 1.4, fill: SOFT_INK }),
  );
}

function avoided(panel: ChartPanel, { avoid }: ReviewedString, rpm: (speed: number) => number, id: string): Svg[] {
  return avoid.flatMap(({ from, to }) => {
    const [a, b] = [from, to].map((speed) => Math.min(panel.x.to, Math.max(panel.x.from, rpm(speed))));
    if (!(b > a)) return [];
    const [left] = onPanel(panel, a, panel.y.from);
    const [right] = onPanel(panel, b, panel.y.from);
    return [
      element("rect", {
        class: "avoid",
        x: left,
        y: panel.top,
        width: right - left,
        height: panel.bottom - panel.top,
        fill: `url(#${id}-avoid)`,
        "fill-opacity": 0.55,
      }),
    ];
  });
}

/** Upright lines in all panels: the speed to work with, and the limit under which a bit bounces on its own cut. */
function uprights(
  panels: readonly ChartPanel[],
  { axialLimitSpeed }: ReviewedString,
  working: number,
  rpm: (speed: number) => number,
): Svg[] {
  const lines = [
    { at: working, words: "to work with", dash: undefined },
    { at: rpm(axialLimitSpeed), words: "bounces below this", dash: "3 1" },
  ];
  const last = panels[panels.length - 1];
  return lines.flatMap(({ at, words, dash }) => {
    if (at < last.x.from || at > last.x.to) return [];
    const [x] = onPanel(last, at, last.y.from);
    // Of two lines close together the words stand on the far sides.
    const other = lines.find((line) => line.words !== words)?.at ?? at;
    const spot: readonly [number, number] = [at < other ? x - 0.9 : x + 3, last.bottom - 1.4];
    return [
      element("path", {
        d: panels
          .map(({ top, bottom }) =>
            linePath([
              [x, top],
              [x, bottom],
            ]),
          )
          .join(""),
        stroke: INK,
        "stroke-width": 0.4,
        "stroke-dasharray": dash,
      }),
      textAt(spot, words, TYPE.caption, { transform: `rotate(-90 ${pair(spot)})`, ...HALO }),
    ];
  });
}

function notes(
  string: ReviewedString,
  { left, top, x }: { readonly left: number; readonly top: number; readonly x: ChartPanel["x"] },
  rpm: (speed: number) => number,
  units: UnitSystem,
  id: string,
  met: ReadonlySet<MarchRegime>,
): Svg[] {
  const { mode, avoid, twistDamping, neededDamping, axialLimitSpeed } = string;
  const legend = (Object.keys(REGIMES) as MarchRegime[])
    .filter((regime) => met.has(regime))
    .flatMap((regime, k) => {
      const { fill, ink, letter, words } = REGIMES[regime];
      const at = left + k * 38;
      return [
        element("rect", { x: at, y: top - 3.2, width: 5, height: 4.4, fill, stroke: INK, "stroke-width": 0.15 }),
        textAt([at + 2.5, top], letter, TYPE.caption, { "text-anchor": "middle", fill: ink }),
        textAt([at + 6.4, top], words, TYPE.caption),
      ];
    });
  const shown = (speed: number) => `${Math.round(rpm(speed))}`;
  const inView = avoid.filter(({ from, to }) => rpm(to) > x.from && rpm(from) < x.to);
  const lines = [
    inView.length === 0
      ? "No speed in view is in step with the string's own swing."
      : `Hatched: ${inView.map(({ from, to, why }) => `${shown(from)}–${shown(to)} rpm, ${why}`).join("; ")}.`,
    `A sharp bit bounces on its own cut under ${shown(axialLimitSpeed)} rpm on this string by the linear limit, without damping along the hole.`,
    `Damping of the twist counted on: ${(100 * twistDamping).toFixed(1)} % of critical (our choice, no source)${neededDamping === undefined ? "" : `; steady drilling at the speed to work with needs ${(100 * neededDamping).toFixed(1)} %`}.`,
    `String of ${formatQuantity("depth", mode.length, units, { figures: 3 })}: swings by itself at ${shown(mode.torsionalSpeed)} per minute in twist, ${shown(mode.axialSpeed)} along the hole, the top held.`,
  ];
  const set = lines.flatMap((text) => linesWithin(text, TYPE.caption, 180, 2));
  return [
    element("rect", {
      x: left + 162,
      y: top - 3.2,
      width: 5,
      height: 4.4,
      fill: `url(#${id}-avoid)`,
      stroke: INK,
      "stroke-width": 0.15,
    }),
    textAt([left + 168.4, top], "in step", TYPE.caption),
    ...legend,
    ...set.map((text, k) => textAt([left, top + 6.4 + k * 4], text, TYPE.caption)),
  ];
}
