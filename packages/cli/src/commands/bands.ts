import { BAND_FIGURES, bandsSheets, bandText, driversText, heldText } from "@bitwright/shop";
import {
  type BandsStudy,
  type BedFigure,
  bandsStudyInSteps,
  formatQuantity,
  type UnitSystem,
  USUAL_SAMPLES,
  USUAL_SEED,
  workUp,
} from "@bitwright/traveler";
import { columns } from "../columns.ts";
import { longWork, STOPPED_EARLY } from "../long-work.ts";
import { noSuchBed } from "../no-such-bed.ts";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { wholeNumber } from "../whole-number.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright bands`. */
export interface BandsOptions {
  readonly bed?: string;
  readonly samples?: string;
  readonly seed?: string;
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

const MOST_SAMPLES = 100_000;

/**
 * The spread of rate, weight, torque and specific energy in the beds of a traveler; gives the status to end with: 0, or 130
 * where Ctrl-C stopped it and what follows is what it had by then.
 */
export async function bandsCommand(file: string, options: BandsOptions, terminal: Terminal): Promise<number> {
  const { bed, out, json, units } = options;
  const samples = wholeNumber("--samples", options.samples, USUAL_SAMPLES, 1, MOST_SAMPLES);
  const seed = wholeNumber("--seed", options.seed, USUAL_SEED, 0, Number.MAX_SAFE_INTEGER);
  const workup = workUp(readTraveler(file));
  const { result: study, stopped } = await longWork(
    (shouldStop) => bandsStudyInSteps(workup, { samples, seed, shouldStop, ...(bed === undefined ? {} : { bed }) }),
    {
      terminal,
      progressLine: ({ bed: at, done, of }) =>
        `bands: ${done} of ${of} samples, at ${at} (${Math.round((100 * done) / of)} %)`,
    },
  );
  const nothing = study.beds.length === 0 && !stopped;
  if (nothing && bed !== undefined) throw noSuchBed(bed, workup.cut.beds);
  const to = study.beds.length === 0 ? undefined : out;
  const wrote = writeSheets(to, () => bandsSheets(workup, study, { units, program: PROGRAM }));
  if (json) terminal.say(JSON.stringify(study, null, 2));
  else {
    terminal.say(nothing ? "No bed of this hole is drilled with this bit." : studyText(study, units));
    if (wrote) terminal.say(wrote);
  }
  return stopped ? STOPPED_EARLY : 0;
}

function studyText({ beds, asked, seed, notReached }: BandsStudy, units: UnitSystem): string {
  const figure = (kind: "depth" | "force" | "rotary speed", si: number) =>
    formatQuantity(kind, si, units, { figures: 3 });
  const bedTexts = beds.map((bed) => {
    const { samples } = bed.bands;
    const rows = (Object.keys(BAND_FIGURES) as BedFigure[]).map((name) => [
      BAND_FIGURES[name].name,
      bandText(name, bed.bands.figures[name].band, units),
      driversText(bed, name) || "-",
    ]);
    return [
      `${bed.name}, ${figure("depth", bed.top)} to ${figure("depth", bed.bottom)}: ${figure("force", bed.weight)} at ${figure("rotary speed", bed.rotarySpeed)}`,
      columns(["", "P10 / P50 / P90", "driven by"], rows, [0, 2]),
      `Rate held by: ${heldText(bed)} of ${samples === asked ? asked : `the ${samples} done of ${asked}`} samples.`,
    ].join("\n");
  });
  return [
    ...bedTexts,
    ...(notReached.length > 0 ? [`Not reached: ${notReached.join("; ")}.`] : []),
    `${asked} samples a bed asked for, seed ${seed}. Strength, ratios and frictions of the rock, cooling and cleaning are drawn from their bands; weight and speed are those of the card.`,
  ].join("\n\n");
}
