import { type BandsStudy, type BedFigure, inUnit, type UnitSystem, unitFor } from "@bitwright/traveler";
import { csvText } from "../table/csv-text.ts";
import { BAND_FIGURES, bandUnit, inBandUnit } from "./band-words.ts";

const DRIVERS = 4;

/** P10, P50 and P90 of every figure of every bed, the figure worked with, and what drives the spread; one row for each. */
export function bandsCsv({ beds, seed }: BandsStudy, units: UnitSystem): string {
  const depthUnit = unitFor("depth", units);
  const depth = (si: number) => inUnit("depth", si, depthUnit).toFixed(1);
  const heads = [
    "bed",
    `from [${depthUnit}]`,
    `to [${depthUnit}]`,
    "figure",
    "unit",
    "P10",
    "P50",
    "P90",
    "worked with",
    "samples",
    "seed",
    ...Array.from({ length: DRIVERS }, (_, k) => [`driver ${k + 1}`, `share ${k + 1} [%]`]).flat(),
  ];
  return csvText([
    heads,
    ...beds.flatMap((bed) =>
      (Object.keys(BAND_FIGURES) as BedFigure[]).map((figure) => {
        const { band, drivers } = bed.bands.figures[figure];
        const cell = (si: number | undefined) => (si === undefined ? "" : threeFigures(inBandUnit(figure, si, units)));
        return [
          bed.name,
          depth(bed.top),
          depth(bed.bottom),
          BAND_FIGURES[figure].name,
          bandUnit(figure, units),
          cell(band?.low),
          cell(band?.mid),
          cell(band?.high),
          cell(bed.worked[figure]),
          String(bed.bands.samples),
          String(seed),
          ...Array.from({ length: DRIVERS }, (_, k) =>
            drivers[k] ? [drivers[k].input, (100 * drivers[k].share).toFixed(1)] : ["", ""],
          ).flat(),
        ];
      }),
    ),
  ]);
}

/** Three figures in plain digits: a band is no finer. */
function threeFigures(value: number): string {
  return String(Number(value.toPrecision(3)));
}
