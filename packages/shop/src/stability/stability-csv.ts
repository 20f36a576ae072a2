import {
  type BedStability,
  inUnit,
  type QuantityKind,
  type StudiedStability,
  type UnitSystem,
} from "@bitwright/traveler";
import { csvFigure } from "../table/csv-figure.ts";
import { csvText } from "../table/csv-text.ts";

const UNITS = {
  field: { length: "in", force: "lbf", advance: "in/rev", torque: "ft-lbf" },
  metric: { length: "mm", force: "N", advance: "mm/rev", torque: "N m" },
} as const satisfies Record<UnitSystem, Partial<Record<QuantityKind, string>>>;

type Kind = keyof (typeof UNITS)["field"];

/**
 * The way across every boundary as CSV text: place after place, with the feed held and with the weight held, and the
 * force on each cutter with the weight held.
 */
export function crossingsCsv(beds: readonly Pick<BedStability, "review">[], units: UnitSystem): string {
  const unit = UNITS[units];
  const head = (name: string, kind: Kind) => `${name} [${unit[kind]}]`;
  const cell = (kind: Kind, si: number) => csvFigure(kind, si, unit[kind]);
  const crossings = beds.flatMap(({ review }) => review.crossings);
  const cutters = crossings[0]?.crossing.before.cutterForces.length ?? 0;
  return csvText([
    [
      "from",
      "into",
      head("way in", "length"),
      head("weight with the feed held", "force"),
      head("torque with the feed held", "torque"),
      "side force with the feed held [% of weight]",
      head("advance with the weight held", "advance"),
      "side force with the weight held [% of weight]",
      ...Array.from({ length: cutters }, (_, k) => head(`cutter ${k + 1}`, "force")),
    ],
    ...crossings.flatMap(({ from, to, crossing }) =>
      crossing.curve.map(({ entered, heldAdvance, heldWeight }) => [
        from,
        to,
        cell("length", entered),
        cell("force", heldAdvance.weight),
        cell("torque", heldAdvance.torque),
        (100 * heldAdvance.lateralShare).toFixed(2),
        cell("advance", heldWeight.advance),
        (100 * heldWeight.lateralShare).toFixed(2),
        ...heldWeight.cutterForces.map((force) => cell("force", force)),
      ]),
    ),
  ]);
}

/** What becomes of the bit at every speed tried in every bed, as CSV text. */
export function speedsCsv(
  beds: readonly (Pick<BedStability, "name"> & Pick<StudiedStability, "speeds">)[],
  units: UnitSystem,
): string {
  const unit = UNITS[units].torque;
  return csvText([
    [
      "bed",
      "rotary [rpm]",
      "what becomes of it",
      "at rest [% of the time]",
      "off bottom [% of the time]",
      "fastest over the top",
      `mean torque [${unit}]`,
    ],
    ...beds.flatMap(({ name, speeds }) =>
      (speeds?.tried ?? []).map((one) => [
        name,
        inUnit("rotary speed", one.rotarySpeed, "rpm").toFixed(1),
        one.regime,
        (100 * one.stickShare).toFixed(1),
        (100 * one.bounceShare).toFixed(1),
        one.fastestRatio.toFixed(2),
        inUnit("torque", one.meanTorque, unit).toFixed(0),
      ]),
    ),
  ]);
}
