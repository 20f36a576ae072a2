import type { March, ScaledBit } from "@bitwright/engine";
import { formatQuantity, inUnit, type UnitSystem } from "@bitwright/traveler";
import {
  CHART_ROOM,
  type ChartPanel,
  levelLine,
  panelAxes,
  panelLine,
  rangeFromZero,
  stackedPanels,
} from "../chart/index.ts";
import { CUT_RAMP, DRAWING_ROOM, drawingSheet, type SheetTitle, STEEL, TYPE, textAt } from "../sheet/index.ts";
import { REGIME_WORDS } from "./regime-words.ts";

/** What the sheet of a march in time is made from. */
export interface StickSlipDrawingInput {
  readonly march: March;
  readonly scaled: ScaledBit;
  /** Speed at which the top turns [rad/s]. */
  readonly rotarySpeed: number;
  /** Weight held [N]. */
  readonly weight: number;
  /** Name of the bed. */
  readonly bed: string;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** How much of the end is shown, in units of the string's own time; all where not given [-]. */
  readonly shown?: number;
  /** Start of every id in the drawing; `stick-slip` where not given. */
  readonly id?: string;
}

/** Turning, cut, load and torque of a bit on its string over time as a sheet of SVG. */
export function stickSlipDrawing(input: StickSlipDrawingInput): string {
  const { march, scaled, rotarySpeed, weight, bed, title, units, id = "stick-slip" } = input;
  const { series } = march;
  const forceUnit = units === "field" ? "lbf" : "kN";
  const torqueUnit = units === "field" ? "ft-lbf" : "N m";
  const from = input.shown === undefined ? 0 : Math.max(0, march.duration - input.shown);
  const first = series.time.findIndex((time) => time >= from);
  const row = (values: Float64Array, scale: number) =>
    Array.from(series.time.subarray(first), (time, k) => [time * scaled.timeScale, values[first + k] * scale] as const);
  const top = inUnit("rotary speed", rotarySpeed, "rpm");
  const turning = row(series.turningSpeed, top);
  const cuts = row(series.cutRatio, 1);
  const loads = row(series.scaledWeight, inUnit("force", scaled.weightScale, forceUnit));
  const torques = row(series.scaledTorque, inUnit("torque", scaled.torqueScale, torqueUnit));
  const x = { from: from * scaled.timeScale, to: march.duration * scaled.timeScale };
  const frames = stackedPanels(4, { ...CHART_ROOM, bottom: DRAWING_ROOM.bottomOfChart - 16, gap: 9 });
  const panels = [turning, cuts, loads, torques].map(
    (points, k): ChartPanel => ({ ...frames[k], x, y: rangeFromZero(points.map(([, up]) => up)) }),
  );
  const [speeds, cutting, pressing, twisting] = panels;
  const line = { stroke: CUT_RAMP[4], width: 0.4 };
  const force = formatQuantity("force", weight, units, { figures: 3, unit: forceUnit });
  const speed = formatQuantity("rotary speed", rotarySpeed, units, { figures: 3 });
  const percent = (share: number) => `${(100 * share).toFixed(share < 0.0995 ? 1 : 0)} %`;
  const shares = [
    march.stickShare > 0 ? `stands ${percent(march.stickShare)} of the time` : "",
    march.bounceShare > 0 ? `is off bottom ${percent(march.bounceShare)}` : "",
    march.turningSwing > 0.1 ? `spins up to ${march.fastestRatio.toFixed(1)} times as fast as the top` : "",
  ].filter((text) => text !== "");
  const sub = [
    `${force} at ${speed} in ${bed}: it ${REGIME_WORDS[march.regime]}.`,
    shares.length > 0 ? `The bit ${shares.join(", ")}.` : "Nothing stands, flies or spins.",
  ];
  const caution =
    "One mass on one spring under a constant weight, after the published equations: where a string may swing, not how far.";
  return drawingSheet({
    id,
    heading: "The bit on its string",
    subheading: sub,
    description: `Turning speed, cut, load and torque of the bit over ${(x.to - x.from).toFixed(1)} s. ${sub.join(" ")} ${caution}`,
    title,
    view: `march in time, ${march.regime}`,
    units: `s, rpm, ${forceUnit}, ${torqueUnit}`,
    hole: title.hole ?? "",
    drawing: [
      panelAxes(speeds, { up: "rpm", heading: "Turning speed of the bit; dashed: top of the string" }),
      ...levelLine(speeds, top),
      panelLine(speeds, turning, { ...line, class: "turning" }),
      panelAxes(cutting, { up: "times the steady cut", heading: "Cut of one wing; dashed: steady" }),
      ...levelLine(cutting, 1),
      panelLine(cutting, cuts, { ...line, class: "cut" }),
      panelAxes(pressing, { up: forceUnit, heading: "Load of the rock on the bit; dashed: weight held" }),
      ...levelLine(pressing, inUnit("force", weight, forceUnit)),
      panelLine(pressing, loads, { ...line, class: "load" }),
      panelAxes(twisting, {
        up: torqueUnit,
        heading: "Torque of the rock on the bit; dashed: mean of the second half",
        across: "time, s",
      }),
      ...levelLine(twisting, inUnit("torque", march.meanScaledTorque * scaled.torqueScale, torqueUnit)),
      panelLine(twisting, torques, { ...line, stroke: STEEL.face, class: "torque" }),
      textAt([twisting.left, twisting.bottom + 13.4], caution, TYPE.caption),
    ],
  });
}
