import { commonPractice, type Source } from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import type { Trouble } from "./fit-remark.ts";
import { isOverburden } from "./overburden.ts";

/** Tools of the trade that take over where a PDC bit should not go. */
export type OtherTool = "auger" | "casing advance" | "down-hole hammer" | "drag blade" | "roller bit";

/** Another tool and why it suits the bed. */
export interface InsteadUse {
  readonly tool: OtherTool;
  readonly why: string;
  readonly source: Source;
}

/**
 * Depth to which augers are still a quick way through overburden [m].
 *
 * @source (c) common practice, no source
 */
export const AUGER_DEPTH = 30;

type Offer = readonly [tool: OtherTool, why: string];

const BY_TROUBLE: Readonly<Record<Trouble, readonly Offer[]>> = {
  lumps: [
    ["casing advance", "the casing follows the tool and keeps stones from rolling back under it"],
    [
      "roller bit",
      "its teeth crush stones and roll over those that turn; slow, with mud thick enough to hold the wall",
    ],
    ["down-hole hammer", "it breaks boulders and chert in place, where the wall stands or is cased"],
  ],
  hard: [
    ["down-hole hammer", "it breaks hard rock by blows and needs little weight; it does need air"],
    ["roller bit", "with carbide inserts it crushes hard rock where there is no compressor; slower"],
  ],
  abrasive: [
    ["down-hole hammer", "its buttons stand abrasive rock and can be ground again"],
    ["roller bit", "with carbide inserts it wears slowly where there is no compressor"],
  ],
  loose: [
    ["casing advance", "the wall is held while the ground is drilled"],
    ["drag blade", "quick through loose sand on mud, ahead of the casing"],
  ],
  soil: [["drag blade", "it cuts soft ground as fast and costs a fraction of a PDC bit"]],
  unknown: [["roller bit", "it survives most ground while nobody knows what this is"]],
};

const PRESSING_FIRST: readonly Trouble[] = ["lumps", "loose", "hard", "abrasive", "unknown", "soil"];

/**
 * What a trouble comes to in rock: nodules are broken like hard rock, and rock that sheds pieces needs neither the
 * casing nor the blade of loose ground.
 */
const IN_ROCK: Readonly<Record<Trouble, Trouble | undefined>> = {
  lumps: "hard",
  loose: undefined,
  hard: "hard",
  abrasive: "abrasive",
  unknown: "unknown",
  soil: "soil",
};

/**
 * Which tools to use in a bed in place of a PDC bit, the one for the most pressing trouble first, each once; empty where none is better.
 *
 * @source (c) common practice, no source
 */
export function insteadOfPdc({
  bed,
  troubles,
}: {
  readonly bed: AdvisedBed;
  readonly troubles: readonly Trouble[];
}): readonly InsteadUse[] {
  const overburden = isOverburden(bed);
  const offers = PRESSING_FIRST.filter((trouble) => troubles.includes(trouble))
    .map((trouble) => (overburden ? trouble : IN_ROCK[trouble]))
    .flatMap((trouble) => (trouble === undefined ? [] : BY_TROUBLE[trouble]));
  if (overburden && bed.rock.id !== "boulders" && bed.bottom <= AUGER_DEPTH) {
    offers.push(["auger", "quick through shallow ground without large stones"]);
  }
  const seen = new Set<OtherTool>();
  return offers.flatMap(([tool, why]) => {
    if (seen.has(tool)) return [];
    seen.add(tool);
    return [{ tool, why, source: commonPractice() }];
  });
}
