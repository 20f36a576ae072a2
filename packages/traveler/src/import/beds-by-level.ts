import { requirePositive } from "@bitwright/engine";
import { changePoints } from "./change-points.ts";
import type { ChannelUnit } from "./channel-unit.ts";
import { depthBins } from "./depth-bins.ts";
import { depthText, figuresText, type NamedRock, phraseAt } from "./ground-section.ts";
import { counted } from "./report.ts";

export interface BedsByLevelInput {
  /** Depth of each reading [m]. */
  readonly depths: readonly number[];
  /** Natural logarithm of each reading [-]. */
  readonly levels: readonly number[];
  /** What the readings are, for the report: `drilling strength`. */
  readonly noun: string;
  /** Top of the first bed [m]. */
  readonly first: number;
  /** Bottom of the last bed [m]. */
  readonly last: number;
  /** Unit of the file's depth. */
  readonly unit: ChannelUnit;
  readonly rocks: readonly NamedRock[];
  /** Least thickness of a bed [m]. */
  readonly minimumThickness?: number | undefined;
  /** Most beds to make [-]. */
  readonly mostBeds?: number | undefined;
}

/** A bed found: where its level is even and its rock the same. */
export interface LevelBed {
  /** Depth of the top [m]. */
  readonly top: number;
  /** Depth of the bottom [m]. */
  readonly bottom: number;
  /** The user's words for the rock there; absent where none was named. */
  readonly phrase?: string;
  /** Places of its readings in the lists [-]. */
  readonly readings: readonly number[];
}

const USUAL_MOST_BEDS = 12;
/** Least thickness of a bed where nobody says, as a share of the length read [-]. */
const THINNEST_SHARE = 1 / 50;
/** Least thickness of a bed where nobody says [m]. */
const THINNEST = 3;

/** Beds of even level, parted too where the user names another rock, from the top down without gaps. */
export function bedsByLevel(input: BedsByLevelInput): { beds: LevelBed[]; lines: string[] } {
  const { depths, levels, first, last, unit, rocks } = input;
  const thinnest = input.minimumThickness ?? Math.max(THINNEST, THINNEST_SHARE * (last - first));
  const mostBeds = input.mostBeds ?? USUAL_MOST_BEDS;
  requirePositive({ minimumThickness: thinnest, mostBeds });

  const bins = depthBins(depths, levels);
  const leastBins = bins.height > 0 ? Math.max(1, Math.round(thinnest / bins.height)) : 1;
  const borders = [...new Set(rocks.map((rock) => rock.from))].filter((from) => from > first && from < last);
  const binOf = (depth: number) => Math.round((depth - bins.top) / bins.height);
  const forced = [...new Set(borders.map(binOf))].sort((a, b) => a - b);
  const found = changePoints({ levels: bins.medians, leastBins, mostPieces: mostBeds, forced });

  // A bed begins at its first reading, to a whole foot or a tenth of a metre; where the user names a rock, at that depth.
  const grain = unit.factor < 1 ? unit.factor : unit.factor / 10;
  const firstReadingFrom = (depth: number) =>
    depths.reduce((least, reading) => (reading >= depth && reading < least ? reading : least), last);
  const cuts = found.starts
    .filter((bin) => bin > 0 && !forced.includes(bin))
    .map((bin) => Math.round(firstReadingFrom(bins.top + bin * bins.height) / grain) * grain)
    .filter((cut) => cut > first && cut < last && !borders.includes(cut));
  const tops = [first, ...[...cuts, ...borders].sort((a, b) => a - b)];
  const beds = tops.map((top, at): LevelBed => {
    const bottom = tops[at + 1] ?? last;
    const isLast = at === tops.length - 1;
    const inside = depths.flatMap((depth, place) => (depth >= top && (depth < bottom || isLast) ? [place] : []));
    const phrase = phraseAt(rocks, top);
    return { top, bottom, ...(phrase === undefined ? {} : { phrase }), readings: inside };
  });
  const binText = `${counted(bins.medians.length, "depth bin")} of ${figuresText(bins.height / unit.factor)} ${unit.name}`;
  return {
    beds,
    lines: [
      `${counted(depths.length, "reading")} gathered into ${binText}; a bin scatters by a factor ${figuresText(Math.exp(found.spread))} about its bed.`,
      `A further bed was made only where it lowers the sum of squares of the logarithm of ${input.noun} by ${figuresText(found.penalty)}; no bed thinner than ${depthText(thinnest, unit)} unless a named rock is, at most ${mostBeds}.`,
      `${counted(beds.length, "bed")} from ${depthText(first, unit)} to ${depthText(last, unit)}.`,
    ],
  };
}
