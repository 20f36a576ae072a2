import { type CatalogSize, catalogCutter } from "../cutter/index.ts";
import { commonPractice, given, INCH, readIn, requirePositive, type Working } from "../quantity/index.ts";
import { CARE_STRENGTH, UNFIT_STRENGTH } from "./fit-limits.ts";
import type { GroundMix } from "./ground-mix.ts";
import { SOFT_STRENGTH } from "./practice-weight-and-speed.ts";
import type { Alternative, Choice, Reason } from "./reason.ts";

/** A cutter size of the trade with the ground and holes it is for. */
export interface CutterSize extends CatalogSize {
  /** Smallest hole in which the trade uses it; 0 where only the room to seat it decides [m]. */
  readonly smallestHole: number;
  /** The ground it is made for. */
  readonly suits: string;
}

function sizeOf(code: string, smallestHole: number, suits: string): CutterSize {
  const { faceDiameter, length } = catalogCutter(code);
  return { code, faceDiameter, length, smallestHole, suits };
}

/** Largest first. */
const SIZES: readonly CutterSize[] = [
  sizeOf("1908", 8 * INCH, "soft shale and clay"),
  sizeOf("1608", 5.5 * INCH, "ground of middling strength"),
  sizeOf("1308", 0, "firm ground and hard stringers"),
  sizeOf("1008", 0, "firm ground in the smallest holes"),
  sizeOf("0808", 0, "very hard ground"),
];

/**
 * Wall of metal between two cutters side by side on a wing, for counting how many fit [m].
 *
 * @source (c) common practice, no source
 */
export const PLANNING_WALL = 0.0015;

/**
 * Fewest cutters that must fit side by side between the axis and the gauge, so that wings can share the radius [-].
 *
 * @source (c) common practice, no source; the 3.75 in laboratory bits with 0.43 to 0.51 in cutters just meet it
 */
export const LEAST_ABREAST = 3;

/**
 * Footage-weighed strength from which 13 mm cutters are taken over 16 mm ones [Pa].
 *
 * @source (c) common practice, no source
 */
export const FIRM_STRENGTH = 70e6;

/**
 * How many cutters fit side by side between the bit axis and the gauge.
 *
 * n = (D/2) / (d + w), D the hole, d the cutter, w the wall between two.
 *
 * @returns number, not rounded [-]
 * @throws RangeError when a diameter is not positive
 * @source (d) geometry of a straight row
 * @example
 * cuttersAbreast({ holeDiameter: 0.155575, cutterDiameter: 0.01344 }) // → 5.2066
 */
export function cuttersAbreast({
  holeDiameter,
  cutterDiameter,
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  /** Diameter of the diamond face [m]. */
  readonly cutterDiameter: number;
}): number {
  requirePositive({ holeDiameter, cutterDiameter });
  return holeDiameter / 2 / (cutterDiameter + PLANNING_WALL);
}

/**
 * The sizes of the trade of which enough fit side by side in a hole, largest first, whatever the ground. The smallest hole
 * in which the trade uses a size is a rule of thumb and does not count here.
 *
 * @throws RangeError when the diameter is not positive
 * @source (d) geometry of a straight row; (c) the least count: common practice, no source
 */
export function cutterSizesThatFit(holeDiameter: number): readonly CutterSize[] {
  const fitting = SIZES.filter((size) => abreast(holeDiameter, size) >= LEAST_ABREAST);
  return fitting.length > 0 ? fitting : SIZES.slice(-1);
}

/** The size chosen, and the count of cutters abreast behind it. */
export interface CutterSizeChoice extends Choice<CutterSize> {
  readonly working: Working;
}

const TRADE_SHEET = readIn("unnamed trade sheet on cutter size by ground");

/**
 * Cutter size by ground, held down by the size of the hole: 19 mm in soft ground, 16 mm in middling ground, 13 mm in
 * firm ground and hard stringers, 8 mm in very hard ground; small holes take 13 mm or less.
 *
 * @throws RangeError when the diameter is not positive
 * @source (a) unnamed trade sheet on cutter size by ground; strengths and hole sizes at the borders common practice
 */
export function cutterSizeForGround({
  holeDiameter,
  mix,
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly mix: GroundMix;
}): CutterSizeChoice {
  const wanted = sizeByGround(mix);
  const from = SIZES.findIndex((size) => size.code === wanted.size.code);
  const fits = (size: CutterSize) => holeDiameter >= size.smallestHole && abreast(holeDiameter, size) >= LEAST_ABREAST;
  const smallest = SIZES[SIZES.length - 1] ?? wanted.size;
  const value = SIZES.slice(from).find(fits) ?? smallest;
  const count = abreast(holeDiameter, value);
  const reasons: Reason[] = [wanted.reason];
  if (value.code !== wanted.size.code) {
    reasons.push({
      sentence: `The ground would take the ${wanted.size.code} size, but the hole is too small to seat enough of them side by side.`,
      rule: "cutter size by hole",
      value: abreast(holeDiameter, wanted.size),
      limit: LEAST_ABREAST,
      unit: "-",
      source: commonPractice(),
    });
  }
  return {
    value,
    reasons,
    alternatives: SIZES.filter((size) => size.code !== value.code).map((size) =>
      alternative({ size, chosen: value, fits: fits(size) }),
    ),
    working: {
      name: "cutters side by side between axis and gauge",
      relation: "n = (D/2)/(d + w)",
      inputs: [
        given("D", "hole diameter", holeDiameter, "m", "hole"),
        given("d", `face of a ${value.code} cutter`, value.faceDiameter, "m", "catalog"),
        given("w", "wall between two cutters", PLANNING_WALL, "m", "common practice, no source"),
      ],
      value: count,
      unit: "-",
      source: commonPractice("count by geometry; the wall is common practice, no source"),
    },
  };
}

function abreast(holeDiameter: number, size: CutterSize): number {
  return cuttersAbreast({ holeDiameter, cutterDiameter: size.faceDiameter });
}

function sizeByGround(mix: GroundMix): { size: CutterSize; reason: Reason } {
  const pick = (code: string): CutterSize => {
    const size = SIZES.find((each) => each.code === code);
    if (!size) throw new RangeError(`cutterCode must be one of the trade sizes, got ${code}`);
    return size;
  };
  const rule = "cutter size by ground";
  const mean = mix.meanStrength.mid;
  const unit = "Pa";
  if (mix.hardestStrength >= UNFIT_STRENGTH) {
    const sentence = `${mix.hardestBed} is very hard: the smallest cutters carry the most load for their size.`;
    const value = mix.hardestStrength;
    return { size: pick("0808"), reason: { sentence, rule, value, limit: UNFIT_STRENGTH, unit, source: TRADE_SHEET } };
  }
  const struckIn = [...mix.impactBeds, ...mix.stringerBeds];
  if (struckIn.length > 0) {
    const sentence = `Blows in ${[...new Set(struckIn)].join(", ")} call for small tough cutters, and more of them.`;
    return { size: pick("1308"), reason: { sentence, rule, source: TRADE_SHEET } };
  }
  if (mix.hardestStrength >= CARE_STRENGTH || mean >= FIRM_STRENGTH) {
    const hard = mix.hardestStrength >= CARE_STRENGTH;
    const sentence = hard
      ? `${mix.hardestBed} is hard: small cutters share the load among more edges.`
      : "The ground is firm over most of the footage: small cutters share the load among more edges.";
    const [value, limit] = hard ? [mix.hardestStrength, CARE_STRENGTH] : [mean, FIRM_STRENGTH];
    return { size: pick("1308"), reason: { sentence, rule, value, limit, unit, source: TRADE_SHEET } };
  }
  if (mean >= SOFT_STRENGTH) {
    const sentence = "Ground of middling strength: 16 mm cutters cut deep without asking too much torque.";
    return {
      size: pick("1608"),
      reason: { sentence, rule, value: mean, limit: FIRM_STRENGTH, unit, source: TRADE_SHEET },
    };
  }
  const sentence = "The ground is soft over most of the footage: big cutters take the deepest cut.";
  return {
    size: pick("1908"),
    reason: { sentence, rule, value: mean, limit: SOFT_STRENGTH, unit, source: TRADE_SHEET },
  };
}

function alternative({
  size,
  chosen,
  fits,
}: {
  readonly size: CutterSize;
  readonly chosen: CutterSize;
  readonly fits: boolean;
}): Alternative {
  const what = `${size.code} cutters`;
  if (!fits) return { what, why: "too large for this hole to seat enough of them" };
  return size.faceDiameter > chosen.faceDiameter
    ? { what, why: `for ${size.suits}; here they would bring more torque and more to lose at one blow` }
    : { what, why: `for ${size.suits}; here they would cut shallower and cost more cutters for nothing` };
}
