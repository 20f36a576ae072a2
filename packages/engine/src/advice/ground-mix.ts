import { type Band, band, requirePositive } from "../quantity/index.ts";
import { CARE_ABRASIVITY, CARE_CERCHAR, WEARING_ABRASIVITY } from "./fit-limits.ts";
import type { BedFit } from "./fit-of-bed.ts";
import { isOverburden } from "./overburden.ts";

/**
 * Share of the footage from which a property of the ground counts for the whole bit [-].
 *
 * @source (c) common practice, no source
 */
export const COUNTING_SHARE = 0.25;

/**
 * Thickness up to which a hard bed between softer ones counts as a stringer [m].
 *
 * @source (c) common practice, no source: 5 ft
 */
export const STRINGER_THICKNESS = 1.524;

/**
 * How many times stronger than both neighbours a thin bed is when it counts as a stringer [-].
 *
 * @source (c) common practice, no source
 */
export const STRINGER_CONTRAST = 2.5;

/** What one bit meets on its way down, beds weighed by their footage. */
export interface GroundMix {
  /** Length of hole in all these beds [m]. */
  readonly footage: number;
  /** Confined strength weighed by footage [Pa]. */
  readonly meanStrength: Band;
  /** Name of the hardest bed. */
  readonly hardestBed: string;
  /** Best single value of the confined strength of the hardest bed [Pa]. */
  readonly hardestStrength: number;
  /** Share of the footage that is soft soil [-]. */
  readonly soilShare: number;
  /** Share of the footage in which the face may ball [-]. */
  readonly stickyShare: number;
  /** Share of the footage that wears cutters, slowly or fast [-]. */
  readonly wearingShare: number;
  /** Share of the footage that wears cutters fast [-]. */
  readonly abrasiveShare: number;
  /** Names of the beds that strike the cutters: stones, nodules, hard bands. */
  readonly impactBeds: readonly string[];
  /** Names of thin beds much harder than their neighbours: they load a few cutters at a time. */
  readonly stringerBeds: readonly string[];
  /** Whether any of the ground is not known. */
  readonly unknownGround: boolean;
}

/**
 * The ground one bit meets, weighed by footage: the mean drives speed, the worst bed drives toughness.
 *
 * @throws RangeError when there is no bed
 * @source (d) footage-weighed means of the beds; abrasive from the classes of Plinninger 2010 and ISRM 2014, recalled
 */
export function groundMix(fits: readonly BedFit[]): GroundMix {
  requirePositive({ "number of beds": fits.length });
  const length = ({ bed }: BedFit) => bed.bottom - bed.top;
  const footage = sum(fits, length);
  const weighed = (of: (fit: BedFit) => number) => sum(fits, (fit) => of(fit) * length(fit)) / footage;
  const share = (is: (fit: BedFit) => boolean) => weighed((fit) => (is(fit) ? 1 : 0));
  const strength = ({ bed }: BedFit) => bed.confinedStrength.mid;
  const hardest = fits.reduce((worst, next) => (strength(next) > strength(worst) ? next : worst));
  return {
    footage,
    meanStrength: ascending(
      weighed(({ bed }) => bed.confinedStrength.low),
      weighed(strength),
      weighed(({ bed }) => bed.confinedStrength.high),
    ),
    hardestBed: hardest.bed.name,
    hardestStrength: strength(hardest),
    soilShare: share((fit) => fit.kind === "soil"),
    stickyShare: share(({ bed }) => bed.hazards.includes("sticky")),
    wearingShare: share((fit) => fit.bed.abrasivityIndex.mid >= WEARING_ABRASIVITY || isAbrasive(fit)),
    abrasiveShare: share(isAbrasive),
    impactBeds: fits.filter(strikes).map(({ bed }) => bed.name),
    stringerBeds: fits.filter((_, at) => isStringer(fits, at)).map(({ bed }) => bed.name),
    unknownGround: fits.some((fit) => fit.kind === "unknown"),
  };
}

/** Sums of bands may part from order by a rounding error where the three are equal. */
function ascending(low: number, mid: number, high: number): Band {
  return band(Math.min(low, mid), mid, Math.max(mid, high));
}

function isAbrasive({ bed }: BedFit): boolean {
  if (bed.abrasivityIndex.mid >= CARE_ABRASIVITY) return true;
  return !isOverburden(bed) && (bed.cerchar?.mid ?? 0) >= CARE_CERCHAR;
}

function strikes({ bed }: BedFit): boolean {
  return bed.hazards.includes("impact") || bed.hazards.includes("hard-stringers");
}

function sum<T>(items: readonly T[], value: (item: T) => number): number {
  return items.reduce((total, item) => total + value(item), 0);
}

function isStringer(fits: readonly BedFit[], at: number): boolean {
  const bed = fits[at]?.bed;
  const neighbours = [fits[at - 1], fits[at + 1]].flatMap((fit) => (fit ? [fit.bed.confinedStrength.mid] : []));
  if (!bed || neighbours.length === 0 || bed.bottom - bed.top > STRINGER_THICKNESS) return false;
  return bed.confinedStrength.mid >= STRINGER_CONTRAST * Math.max(...neighbours);
}
