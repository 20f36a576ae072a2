import type { PowerStation } from "@bitwright/traveler";
import type { Figures } from "../summary/figures.ts";
import { textTable, wrapped } from "../summary/text-table.ts";
import { partsOf } from "./engine-parts.ts";

/** What each bed asks of the engine and burns, as lines of text. */
export function powerTable(power: PowerStation, figures: Figures): string[] {
  const { beds } = power;
  const parts = partsOf(power);
  const column = (of: (bed: (typeof beds)[number]) => number) => figures.column("power", beds.map(of));
  const columns = parts.map(({ part }) => column((bed) => bed.parts[part]));
  const loads = column(({ enginePower }) => enginePower.mid);
  const rows = beds.map(({ name, engineShare, fuelFlow, fuelPerLength }, at) => [
    name,
    ...columns.map((one) => one[at]),
    loads[at],
    figures.of("share", engineShare.mid),
    figures.of("fuel flow", fuelFlow.mid),
    fuelPerLength ? figures.of("fuel per length", fuelPerLength.mid) : "-",
  ]);
  const heads = ["ground", ...parts.map(({ name }) => name), "engine gives", "of its rating", "fuel", "by length"];
  return textTable(heads, rows);
}

/** What the engine is, and what the whole hole burns, in sentences. */
export function powerWords(power: PowerStation, figures: Figures, width: number): string[] {
  const { ratedPower, compressorPower, fuelVolume, meanFuelFlow, timeOnBottom, givenFuelFlow, reckonedFuelFlow } =
    power;
  const hardest = power.beds.reduce((most, bed) => (bed.enginePower.mid > most.enginePower.mid ? bed : most));
  const { low, high } = hardest.enginePower;
  const sentences = [
    `The engine is rated ${figures.of("power", ratedPower)}. Most is asked of it in ${hardest.name}, ${figures.range("power", low, high)} over what drives and pump may lose (common practice).`,
    ...(compressorPower === undefined
      ? []
      : [`The compressor takes ${figures.of("power", compressorPower)} at full delivery and rated pressure.`]),
    `The hole takes ${figures.of("duration", timeOnBottom)} on bottom and ${volumes(power, figures)} of fuel with connections and one trip; over all that time ${figures.of("fuel flow", meanFuelFlow.mid)}.`,
    ...(givenFuelFlow === undefined
      ? [
          "Fuel by 0.36 lb for each horsepower and hour (common practice); give rig.fuelBurn to go by the burn of this rig.",
        ]
      : [`That is the burn as given; the load alone would make it ${figures.of("fuel flow", reckonedFuelFlow.mid)}.`]),
  ];
  function volumes({ fuelVolume: all }: PowerStation, { of, range }: Figures): string {
    return all.low === all.high ? of("volume", fuelVolume.mid) : range("volume", all.low, all.high);
  }
  return sentences.flatMap((sentence) => wrapped(sentence, width));
}
