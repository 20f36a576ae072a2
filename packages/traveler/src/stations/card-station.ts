import {
  breakInFor,
  type CardContent,
  type CardContentInput,
  type CardFeedInput,
  cardContent,
  safetyCautions,
  stopSigns,
} from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import type { StationFinding, StationName } from "../workup.ts";
import type { AdviceStation } from "./advice-station.ts";
import type { BitStation } from "./bit-station.ts";
import type { BedCut, CutStation } from "./cut-station.ts";
import type { FlowStation } from "./flow-station.ts";
import type { PowerStation } from "./power-station.ts";
import type { StringStation } from "./string-station.ts";

/** The stations that the card is written from. */
export interface CardQuestion {
  readonly advice: AdviceStation;
  readonly bit: BitStation;
  readonly cut: CutStation;
  readonly flow: FlowStation;
  readonly string?: StringStation;
  readonly power?: PowerStation;
  readonly findings: readonly StationFinding[];
}

/** What the driller does with weight, speed and flow comes before what the office knows of ground and bit. */
const DRILLERS_FIRST: readonly StationName[] = ["cut", "stability", "flow", "string", "power"];

/** The driller's card as content. */
export function cardStation({ job, inquiry }: ResolvedTraveler, question: CardQuestion): CardContent {
  const { advice, bit, cut, flow, string, power, findings } = question;
  const { bitHole, fluid } = inquiry;
  const inHole = advice.fits.filter(({ bed }) => bed.bottom > bitHole.from && bed.top < bitHole.to);
  const first = cut.beds[0];
  return cardContent({
    job: job.name,
    customer: job.customer,
    bit: bit.inWords,
    holeDiameter: bitHole.diameter,
    flow: flow.flow,
    beds: inHole.map((fit) => {
      const drilled = cut.beds.find((bed) => bed.fit === fit);
      const { bed } = fit;
      const top = Math.max(bed.top, bitHole.from);
      const clipped = { ...fit, bed: { ...bed, top, bottom: Math.min(bed.bottom, bitHole.to) } };
      if (!drilled) return { fit: clipped };
      const ceiling = flow.beds[cut.beds.indexOf(drilled)]?.rateCeiling.mid;
      return {
        fit: clipped,
        run: drilled.run,
        rate: drilled.rate,
        ...(ceiling === undefined ? {} : { rateCeiling: ceiling }),
        feed: feedIn(drilled, string),
      };
    }),
    casing: advice.casing,
    ...makeUpOf(string, inquiry.rig.torque),
    ...fuelOf(power),
    ...(first ? { breakIn: breakInFor({ fullWeight: first.weight, fullSpeed: first.rotarySpeed }) } : {}),
    stopSigns: stopSigns({ fits: inHole, fluid: fluid.kind }),
    cautions: safetyCautions({ fits: advice.fits, fluid: fluid.kind, mayFlow: false, places: ["rig"] }),
    findings: [
      ...findings.filter(({ station }) => DRILLERS_FIRST.includes(station)),
      ...findings.filter(({ station }) => !DRILLERS_FIRST.includes(station)),
    ],
  });
}

function makeUpOf(string: StringStation | undefined, torqueRating: number): Pick<CardContentInput, "makeUp"> {
  const row = string?.makeUpTorque;
  return row ? { makeUp: { thread: row.thread, normal: row.normal, least: row.least, torqueRating } } : {};
}

function fuelOf(power: PowerStation | undefined): Pick<CardContentInput, "fuel"> {
  if (!power) return {};
  const flows = power.beds.map(({ fuelFlow }) => fuelFlow.mid);
  return {
    fuel: { fuelFlow: { low: Math.min(...flows), high: Math.max(...flows) }, fuelVolume: power.fuelVolume.mid },
  };
}

function feedIn({ bed }: BedCut, string: StringStation | undefined): readonly CardFeedInput[] {
  return (string?.joints ?? []).filter(({ depth }) => depth > bed.top && depth <= bed.bottom);
}
