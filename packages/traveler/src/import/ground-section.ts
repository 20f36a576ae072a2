import type { ChannelUnit } from "./channel-unit.ts";
import type { ImportReport } from "./report.ts";

/** One bed as the traveler holds it: quantities as text with their unit. */
export interface ImportedBed {
  readonly top: string;
  readonly bottom: string;
  readonly phrase?: string;
  readonly rock?: string;
  readonly strength?: { readonly low: string; readonly mid: string; readonly high: string };
  readonly strengthFrom?: { readonly correlation: string; readonly reading: string };
  readonly notes?: string;
}

/** The ground section of a traveler, ready to be written into one. */
export interface ImportedGround {
  readonly beds: readonly ImportedBed[];
  readonly source: string;
}

/** Ground made from a file, and how. */
export interface GroundImport {
  readonly refused: false;
  readonly ground: ImportedGround;
  readonly report: ImportReport;
}

/** A rock that the user names from a depth downward, to the next one named. */
export interface NamedRock {
  /** Depth it begins at [m]. */
  readonly from: number;
  /** In the driller's words: `granite`, `grey shale`. */
  readonly phrase: string;
}

/** Decimals that a depth of a log is worth [-]: a hundredth of a foot or of a metre. */
const DEPTH_DECIMALS = 2;

/** A depth in the file's own unit, as text: `85.18 ft`. */
export function depthText(depth: number, unit: ChannelUnit): string {
  return `${plainNumber(depth / unit.factor, DEPTH_DECIMALS)} ${unit.name}`;
}

/** A number with so many decimals at most, no zeros left hanging. */
function plainNumber(value: number, decimals: number): string {
  const fixed = value.toFixed(decimals);
  return fixed.includes(".") ? fixed.replace(/\.?0+$/, "").replace(/^-0$/, "0") : fixed;
}

/** A number with so many significant figures, in plain digits. */
export function figuresText(value: number, figures = 3): string {
  return String(Number(value.toPrecision(figures)));
}

/** The phrase that the user gave for a depth; undefined above the first. */
export function phraseAt(rocks: readonly NamedRock[], depth: number): string | undefined {
  const above = rocks.filter((rock) => rock.from <= depth).sort((a, b) => a.from - b.from);
  return above.at(-1)?.phrase;
}
