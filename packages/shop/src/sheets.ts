import { engage } from "@bitwright/engine";
import { type UnitSystem, type Workup, workupJson } from "@bitwright/traveler";
import { cardPaperOf, cardText, phonePage } from "./card/index.ts";
import { faceDrawing } from "./face/index.ts";
import { profileDrawing } from "./profile/index.ts";
import { holeInBoth, type SheetTitle } from "./sheet/index.ts";
import { cutterTableCsv } from "./table/index.ts";

/** One sheet, ready to be written. */
export interface Sheet {
  /** File name: `face.svg`. */
  readonly name: string;
  readonly text: string;
}

/** How sheets are made. */
export interface SheetOptions {
  readonly units: UnitSystem;
  /** Name and version of the program, printed on every sheet. */
  readonly program: string;
}

/** All sheets of a workup: the workup itself, both drawings, the card and the cutter table. */
export function sheetsOf(workup: Workup, { units, program }: SheetOptions): Sheet[] {
  const { bit, cut, card } = workup;
  const { layout } = bit;
  // Drawn for the bed that is cut deepest, where the crescents show best.
  const shown = cut.beds.reduce<(typeof cut.beds)[number] | undefined>(
    (most, bed) => (most === undefined || bed.drilling.advance > most.drilling.advance ? bed : most),
    undefined,
  );
  const title = titleOf(workup, program);
  const cutters = shown?.drilling.cutters;
  return [
    { name: "workup.json", text: workupJson(workup) },
    { name: "face.svg", text: faceDrawing({ layout, units, ports: bit.ports, title: { ...title, sheet: "1 of 2" } }) },
    {
      name: "profile.svg",
      text: profileDrawing({
        trace: cut.trace,
        ...(bit.profile ? { profile: bit.profile } : {}),
        units,
        title: { ...title, sheet: "2 of 2" },
        ...(shown ? { engagement: engage(cut.trace, shown.drilling.advance) } : {}),
        ...(cutters ? { share: { of: "cutting work", perCutter: cutters.map(({ power }) => power) } } : {}),
      }),
    },
    {
      name: "card.txt",
      text: cardText(card, cardPaperOf(workup, { units, program })),
    },
    { name: "card.html", text: phonePage(card, cardPaperOf(workup, { units, program })) },
    {
      name: "cutters.csv",
      text: cutterTableCsv({
        layout,
        units,
        ...(cutters
          ? {
              cutting: { bed: shown.bed.name, weight: shown.weight },
              perCutter: {
                areaOfCut: cutters.map(({ areaOfCut }) => areaOfCut),
                volumePerRevolution: cutters.map(({ volume }) => volume),
                deepestCut: cutters.map(({ deepest }) => deepest),
                drag: cutters.map(({ tangential }) => tangential),
                cuttingNormal: cutters.map(({ cuttingNormal }) => cuttingNormal),
                contactNormal: cutters.map(({ contactNormal }) => contactNormal),
                axial: cutters.map(({ axial }) => axial),
                torque: cutters.map(({ torque }) => torque),
                contactTemperature: cutters.map(({ contactTemperature }) => contactTemperature ?? Number.NaN),
              },
            }
          : {}),
      }),
    },
  ];
}

/** Whether a bit is as large as its hole was typed, to what a drawing can show [m]. */
function sameSize(bit: number, hole: number): boolean {
  return Math.abs(bit - hole) < 1e-5;
}

/** The hole of a workup as it was typed, and in millimetres where it was typed in something else. */
export function holeOf({ inquiry }: Workup): string {
  const { diameter, diameterAsTyped } = inquiry.inquiry.bitHole;
  return holeInBoth(diameterAsTyped, diameter);
}

/** What every sheet of a workup says about itself. */
export function titleOf({ inquiry, bit }: Workup, program: string): SheetTitle {
  const { job, inquiry: asked } = inquiry;
  return {
    job: job.number === undefined ? job.name : `${job.name}, no. ${job.number}`,
    bit: bit.inWords,
    ...(sameSize(bit.layout.holeDiameter, asked.bitHole.diameter) ? { hole: asked.bitHole.diameterAsTyped } : {}),
    shop: job.shop,
    customer: job.customer,
    ...(job.date === undefined ? {} : { date: job.date }),
    program,
  };
}
