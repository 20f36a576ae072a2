import { commonPractice, type Source } from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import type { Trouble } from "./fit-remark.ts";
import { groundKind } from "./ground-kind.ts";

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

/**
 * Which tools to use in a bed in place of a PDC bit, the likeliest first, each once; empty where none is better.
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
  const kind = groundKind(bed);
  const overburden = kind === "soil" || kind === "sand" || kind === "gravel";
  // Rock that sheds pieces is no loose ground: neither the casing nor the blade of loose ground is an answer to it.
  const offers: Offer[] = troubles
    .filter((trouble) => overburden || trouble !== "loose")
    .flatMap((trouble) => BY_TROUBLE[trouble])
    .filter(([tool]) => overburden || tool !== "casing advance");
  if (overburden && bed.rock?.id !== "boulders" && bed.bottom <= AUGER_DEPTH) {
    offers.push(["auger", "quick through shallow ground without large stones"]);
  }
  const seen = new Set<OtherTool>();
  return offers.flatMap(([tool, why]) => {
    if (seen.has(tool)) return [];
    seen.add(tool);
    return [{ tool, why, source: commonPractice() }];
  });
}
