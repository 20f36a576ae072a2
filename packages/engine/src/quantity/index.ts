export { type Band, band, exactBand, mapBand } from "./band.ts";
export { type BracketedRootInput, bracketedRoot } from "./bracketed-root.ts";
export { FRESH_WATER_DENSITY, INCH, STANDARD_GRAVITY } from "./constants.ts";
export { type Finding, gravestFirst, type Severity } from "./finding.ts";
export { largest } from "./largest.ts";
export { percentile } from "./percentile.ts";
export { type BandLaw, bandPercentile, FARTHEST_SHARE } from "./percentile-of-band.ts";
export { normalPercentile } from "./percentile-of-normal.ts";
export { randomShares } from "./random-shares.ts";
export { requireBetween, requireFinite, requireNotNegative, requirePositive } from "./require.ts";
export { runToEnd } from "./run-to-end.ts";
export { nextRandom, type RandomDraw, type RandomState, randomShare, seededRandom } from "./seeded-random.ts";
export {
  commonPractice,
  derivedFrom,
  enteredBy,
  readIn,
  recalledFrom,
  SOURCE_KIND_WORDS,
  type Source,
  type SourceKind,
} from "./source.ts";
export { given, type Working, type WorkingInput, working } from "./working.ts";
