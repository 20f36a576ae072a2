import { commonPractice, derivedFrom, type Finding, recalledFrom } from "../quantity/index.ts";
import type { BitLoads } from "./bit-loads.ts";
import type { CutterLoad } from "./cutter-load.ts";
import { COBALT_TABLE_LIMIT, WEAR_QUICKENS_TEMPERATURE } from "./flat-temperature.ts";

/**
 * Side force, as a share of the weight, below which a bit counts as well balanced [-].
 *
 * @source (c) common practice, no source
 */
export const GOOD_LATERAL_SHARE = 0.05;

/**
 * Side force, as a share of the weight, above which a bit is not accepted as balanced [-].
 *
 * @source (c) common practice, no source
 */
export const ACCEPTED_LATERAL_SHARE = 0.1;

/**
 * Volume of one cutter against the mean of all above which the load counts as uneven [-].
 *
 * @source (c) common practice, no source
 */
export const UNEVEN_VOLUME_MULTIPLE = 2.5;

/**
 * Remarks on a bit in steady drilling: idle and overloaded cutters, side force, exposure used up, heat, and a specific
 * energy that no whole hole can have.
 *
 * @source (d) from the loads of `cutterLoads` and `bitLoads`; each limit names its own
 */
export function drillingFindings({
  bit,
  cutters,
  efficiency,
  bevelRubs,
  exposure,
}: {
  readonly bit: BitLoads;
  readonly cutters: readonly CutterLoad[];
  /** Intrinsic over drilling specific energy [-]. */
  readonly efficiency: number;
  /** Whether some cutter's bevel rubs instead of cutting in this rock. */
  readonly bevelRubs: boolean;
  /** Height of the cutter tips over the wing [m]. */
  readonly exposure?: number;
}): Finding[] {
  return [
    ...energyFindings(efficiency, bevelRubs),
    ...lateralFindings(bit),
    ...cutters.flatMap((cutter) => [
      ...shareFindings(cutter, cutters.length),
      ...exposureFindings(cutter, exposure),
      ...heatFindings(cutter),
    ]),
  ];
}

// Rounding of some thousand sums stays well below this.
const ROUNDING = 1e-6;

function energyFindings(efficiency: number, bevelRubs: boolean): Finding[] {
  if (!(efficiency > 1 + ROUNDING)) return [];
  if (bevelRubs) {
    return [
      {
        code: "torque-low-under-bevels",
        severity: "note",
        where: "bit",
        message:
          "The law of a rubbing bevel counts friction but no work for the rock that leaves under it: torque and specific energy read low by about this much.",
        value: efficiency,
        limit: 1,
        unit: "-",
        source: derivedFrom("intrinsic specific energy over that of the summed cutters"),
      },
    ];
  }
  return [
    {
      code: "left-of-cutting-point",
      severity: "stop",
      where: "bit",
      message:
        "The work is less than cutting the whole hole takes: part of the hole is not being cut. The rate is not real.",
      value: efficiency,
      limit: 1,
      unit: "-",
      source: recalledFrom("Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, friction line"),
    },
  ];
}

function lateralFindings({ lateralShare }: BitLoads): Finding[] {
  if (!(lateralShare > GOOD_LATERAL_SHARE)) return [];
  const refused = lateralShare > ACCEPTED_LATERAL_SHARE;
  return [
    {
      code: "side-force",
      severity: refused ? "caution" : "note",
      where: "bit",
      message: refused
        ? "The cutters push the bit sideways by more than is accepted as balanced: it will tend to whirl and cut over size."
        : "The cutters push the bit sideways by more than counts as well balanced.",
      value: lateralShare,
      limit: refused ? ACCEPTED_LATERAL_SHARE : GOOD_LATERAL_SHARE,
      unit: "-",
      source: commonPractice(),
    },
  ];
}

function shareFindings({ cutter, volumeShare }: CutterLoad, count: number): Finding[] {
  const where = `cutter ${cutter}`;
  if (volumeShare === 0) {
    return [
      {
        code: "idle-cutter",
        severity: "note",
        where,
        message: "This cutter is shadowed by others and takes no rock at this advance.",
        value: 0,
        unit: "-",
        source: derivedFrom("engagement of the traced edges"),
      },
    ];
  }
  const limit = UNEVEN_VOLUME_MULTIPLE / count;
  if (!(count > UNEVEN_VOLUME_MULTIPLE && volumeShare > limit)) return [];
  return [
    {
      code: "uneven-share",
      severity: "caution",
      where,
      message: "This cutter takes far more rock than the mean of all: it will wear and heat first.",
      value: volumeShare,
      limit,
      unit: "-",
      source: commonPractice(),
    },
  ];
}

function exposureFindings({ cutter, deepest }: CutterLoad, exposure: number | undefined): Finding[] {
  if (exposure === undefined || !(deepest > exposure * (1 + ROUNDING))) return [];
  return [
    {
      code: "exposure-used-up",
      severity: "caution",
      where: `cutter ${cutter}`,
      message:
        "The cut is deeper than the cutter stands out of the wing: the wing rubs and takes weight that is not in this figure.",
      value: deepest,
      limit: exposure,
      unit: "m",
      source: derivedFrom("depth of cut against exposure"),
    },
  ];
}

function heatFindings({ cutter, contactTemperature }: CutterLoad): Finding[] {
  if (contactTemperature === undefined || !(contactTemperature > WEAR_QUICKENS_TEMPERATURE * (1 + ROUNDING))) return [];
  const ruined = contactTemperature > COBALT_TABLE_LIMIT;
  return [
    {
      code: ruined ? "diamond-too-hot" : "wear-quickens",
      severity: ruined ? "stop" : "caution",
      where: `cutter ${cutter}`,
      message: ruined
        ? "The rubbing surface passes what an ordinary diamond table bears: ease the weight or the speed, or raise the flow."
        : "The rubbing surface is hot enough that wear quickens: ease the weight or the speed, or raise the flow.",
      value: contactTemperature,
      limit: ruined ? COBALT_TABLE_LIMIT : WEAR_QUICKENS_TEMPERATURE,
      unit: "K",
      source: recalledFrom("Glowka & Stone 1986, SPE Drilling Engineering"),
    },
  ];
}
