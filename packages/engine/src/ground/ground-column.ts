import {
  commonPractice,
  derivedFrom,
  type Finding,
  given,
  requireNotNegative,
  requirePositive,
  type Working,
} from "../quantity/index.ts";
import type { Bed } from "./bed.ts";
import { DEFAULT_WATER_LEVEL } from "./bottom-hole-pressure-difference.ts";
import type { GroundBed } from "./ground-bed.ts";
import type { Rock } from "./rock.ts";
import { workedBed } from "./worked-bed.ts";

/** The beds of a hole and the fluid that stands in it. */
export interface GroundColumnInput {
  /** From the top down, without overlaps. */
  readonly beds: readonly Bed[];
  /** Density of the drilling fluid [kg/m³]. */
  readonly fluidDensity: number;
  /** Depth of the standing water level [m]; default `DEFAULT_WATER_LEVEL`. */
  readonly waterLevel?: number;
  /** Depth of the top of the fluid in the hole [m]; default 0, a full hole. */
  readonly fluidLevel?: number;
  /** Rocks of the shop's own; they win over those of the table. */
  readonly shopRocks?: readonly Rock[];
}

/** The ground, bed by bed. */
export interface GroundColumn {
  readonly beds: readonly GroundBed[];
  /** Depth of the standing water level that was used [m]. */
  readonly waterLevel: number;
  /** Findings on the column as a whole; each bed has its own beside. */
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** Beds closer than this are taken to meet [m]; (c) a rounding of feet to metres, no source. */
const GAP_THAT_COUNTS = 0.01;

/**
 * What each bed is, how strong under the pressure at its middle, how it answers a cutter, how it wears and harms.
 *
 * @throws RangeError when beds are upside down, out of order or overlap, or a rock id is not known
 * @source (d) the relations named in the workings of each bed
 */
export function groundColumn(input: GroundColumnInput): GroundColumn {
  const { beds, fluidDensity, waterLevel = DEFAULT_WATER_LEVEL, fluidLevel = 0, shopRocks = [] } = input;
  requireNotNegative({ fluidDensity, waterLevel, fluidLevel });
  requireOrder(beds);
  const findings: Finding[] = gapFindings(beds);
  if (input.waterLevel === undefined) {
    findings.push({
      code: "water-level-assumed",
      severity: "note",
      where: "ground",
      message: "No standing water level was given; one was assumed. It matters little in rock, more in soft ground.",
      value: waterLevel,
      unit: "m",
      source: commonPractice(),
    });
  }
  return {
    beds: beds.map((bed) => workedBed({ bed, fluidDensity, waterLevel, fluidLevel, shopRocks })),
    waterLevel,
    findings,
    working: beds.length > 0 ? [thicknessWorking(beds)] : [],
  };
}

function requireOrder(beds: readonly Bed[]): void {
  let above = 0;
  for (const { name, top, bottom } of beds) {
    requireNotNegative({ [`top of ${name}`]: top });
    requirePositive({ [`thickness of ${name}`]: bottom - top });
    if (top < above - GAP_THAT_COUNTS) {
      throw new RangeError(`top of ${name} must not lie above the bottom of the bed before, ${above}, got ${top}`);
    }
    above = bottom;
  }
}

function gapFindings(beds: readonly Bed[]): Finding[] {
  let above = 0;
  return beds.flatMap((bed): Finding[] => {
    const gap = bed.top - above;
    above = bed.bottom;
    if (gap <= GAP_THAT_COUNTS) return [];
    return [
      {
        code: "gap-between-beds",
        severity: "caution",
        where: bed.name,
        message:
          "The log says nothing of the ground right above this bed. Nothing is worked out for it; ask the driller.",
        value: gap,
        unit: "m",
        source: derivedFrom("depths of the beds"),
      },
    ];
  });
}

function thicknessWorking(beds: readonly Bed[]): Working {
  const logged = beds.reduce((sum, bed) => sum + bed.bottom - bed.top, 0);
  const deepest = beds.at(-1)?.bottom ?? 0;
  return {
    name: "depth covered by the log",
    relation: "sum of (bottom - top)",
    inputs: [
      given("n", "beds", beds.length, "-", "ground"),
      given("z", "bottom of the deepest bed", deepest, "m", "ground"),
    ],
    value: logged,
    unit: "m",
    source: derivedFrom("depths of the beds"),
  };
}
