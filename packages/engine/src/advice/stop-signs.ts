import { commonPractice, type Source } from "../quantity/index.ts";
import { type AdvisedFluid, isGasFluid } from "./drilling-fluid.ts";
import type { BedFit } from "./fit-of-bed.ts";

/** Something a driller sees or feels that says: stop and look. */
export interface StopSign {
  readonly sign: string;
  readonly likely: string;
  readonly act: string;
  readonly source: Source;
}

/** What the signs are picked by. */
export interface StopSignsInput {
  /** Fits of the beds that the bit passes. */
  readonly fits: readonly BedFit[];
  readonly fluid: AdvisedFluid;
}

type Sign = readonly [sign: string, likely: string, act: string];

const ALWAYS: readonly Sign[] = [
  [
    "rate dead, weight on, torque low",
    "cutters blunt or rubbing in rock too hard",
    "lift; do not add weight. Look at the bit before it burns",
  ],
  [
    "rotation jumps, string hammers",
    "stones, broken rock or junk in the hole",
    "stop feeding, lift, slow down; find out",
  ],
  ["torque up at a steady feed", "the bit bites too deep or the hole closes in", "ease the feed; wipe the hole"],
  ["metal in the returns", "a cutter, a wing or a joint is going", "pull and look"],
];
const ON_LIQUID: readonly Sign[] = [
  [
    "pump pressure up at the same flow",
    "a port is plugged or the annulus is packed",
    "lift, keep circulating, clear it",
  ],
  ["pump pressure down at the same flow", "a washout in the string or a port lost", "pull before the string parts"],
  ["no returns at the surface", "the ground takes the fluid", "stop turning on bottom; heal the loss first"],
];
const ON_GAS: readonly Sign[] = [
  [
    "air pressure up, cuttings stop",
    "the hole is not cleaning or a mud ring has formed",
    "lift, blow the hole, add foam",
  ],
  ["dust or hot cuttings", "too little mist or foam to wet and cool", "stop; wet the hole before going on"],
];
const WHEN_STICKY: readonly Sign[] = [
  ["rate dead, torque flat, pressure up", "clay has balled the face", "lift, spin, wash; more flow, less weight"],
];
const WHEN_LUMPS: readonly Sign[] = [
  [
    "hard angular chips of stone in the returns",
    "gravel or chert ahead of the log",
    "stop: this is no ground for the bit",
  ],
];
const WHEN_CAVING: readonly Sign[] = [
  ["fill on bottom after a connection", "the wall is falling in", "circulate before touching bottom; thicken or case"],
];
const WHEN_GAS: readonly Sign[] = [
  [
    "bubbles, smell or returns that rise by themselves",
    "gas or water is flowing in",
    "stop, put out flames, move people off; follow the plan for flow, local code and licensed practice",
  ],
];

/**
 * The signs at which a driller should stop, picked for the job.
 *
 * @source (c) common practice, no source
 */
export function stopSigns({ fits, fluid }: StopSignsInput): readonly StopSign[] {
  const any = (hazard: BedFit["bed"]["hazards"][number]) => fits.some(({ bed }) => bed.hazards.includes(hazard));
  const signs: readonly Sign[] = [
    ...ALWAYS,
    ...(isGasFluid(fluid) ? ON_GAS : ON_LIQUID),
    ...(any("sticky") ? WHEN_STICKY : []),
    ...(any("impact") || fits.some(({ verdict }) => verdict === "unfit") ? WHEN_LUMPS : []),
    ...(any("caving") ? WHEN_CAVING : []),
    ...(any("gas") ? WHEN_GAS : []),
  ];
  return signs.map(([sign, likely, act]) => ({ sign, likely, act, source: commonPractice() }));
}
