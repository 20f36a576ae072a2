import { commonPractice, given, INCH, type Working } from "../quantity/index.ts";
import { type CutterSize, cuttersAbreast, PLANNING_WALL } from "./cutter-size-for-ground.ts";
import { COUNTING_SHARE, type GroundMix } from "./ground-mix.ts";
import type { Choice, Reason } from "./reason.ts";

/**
 * Footage-weighed strength under which ground counts as soft for the number of wings [Pa].
 *
 * @source (c) common practice, no source
 */
export const SOFT_WINGS_STRENGTH = 25e6;

/**
 * Footage-weighed strength from which a large bit takes a sixth wing [Pa].
 *
 * @source (c) common practice, no source
 */
export const SIX_WINGS_STRENGTH = 60e6;

/**
 * Hole up to which small bits go with one wing less [m].
 *
 * @source (c) common practice, no source: 3 to 4 wings on bits to 4 in
 */
export const SMALL_HOLE = 4 * INCH;

/**
 * Hole up to which five wings are one too many: their cutters leave each other no wall [m].
 *
 * @source (c) common practice, no source: 3 to 4 wings on the smallest bits; 5 in is our border
 */
export const NARROW_HOLE = 5 * INCH;

/**
 * Hole from which there is room for one wing more [m].
 *
 * @source (c) common practice, no source: 8 in
 */
export const LARGE_HOLE = 8 * INCH;

/**
 * How often, on average, each radius of the bottom is swept by a cutter [-].
 *
 * @source (c) common practice, no source: five wings of three in a 6 1/8 in hole come to this
 */
export const USUAL_REDUNDANCY = 2.75;

/** Wings and what each carries. */
export interface WingsChoice {
  /** Number of wings [-]. */
  readonly wings: number;
  /** Face cutters on each wing [-]. */
  readonly cuttersPerWing: number;
}

/**
 * Face cutters on one wing that sweep the bottom often enough, between 3 and what the wing can seat.
 *
 * k = n (D/2) / (d w) to the nearest whole, n the usual redundancy, D the hole, d the cutter, w the wings.
 *
 * @returns cutters on a wing [-]
 * @throws RangeError when an input is not positive
 * @source (c) common practice, no source: the redundancy of five wings of three
 * @example
 * cuttersOnWing({ holeDiameter: 0.155575, cutterDiameter: 0.01344, wings: 5 }) // → 3
 */
export function cuttersOnWing({
  holeDiameter,
  cutterDiameter,
  wings,
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  /** Diameter of the diamond face [m]. */
  readonly cutterDiameter: number;
  /** Number of wings [-]. */
  readonly wings: number;
}): number {
  const seats = Math.floor(cuttersAbreast({ holeDiameter, cutterDiameter }));
  const wanted = Math.round((USUAL_REDUNDANCY * holeDiameter) / (2 * cutterDiameter * wings));
  return Math.max(1, Math.min(Math.max(3, wanted), seats));
}

/** The wings chosen and the count behind the cutters on each. */
export interface WingsForGround extends Choice<WingsChoice> {
  readonly working: Working;
}

/**
 * Wings by hole and ground: three or four in soft ground and small holes, five of three offset from wing to wing as the
 * usual bit, six only in large bits for firm ground.
 *
 * @throws RangeError when an input is not positive
 * @source (c) common practice, no source
 */
export function wingsForGround({
  holeDiameter,
  cutter,
  mix,
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly cutter: CutterSize;
  readonly mix: GroundMix;
}): WingsForGround {
  const source = commonPractice();
  const mean = mix.meanStrength.mid;
  const sticky = mix.stickyShare >= 2 * COUNTING_SHARE;
  const soft = (mean < SOFT_WINGS_STRENGTH || sticky) && mix.impactBeds.length === 0;
  const base = soft ? 4 : 5;
  const roomy = soft ? SMALL_HOLE : NARROW_HOLE;
  const less = holeDiameter <= roomy ? 1 : 0;
  const more = holeDiameter >= LARGE_HOLE && !sticky && (soft || mean >= SIX_WINGS_STRENGTH) ? 1 : 0;
  const wings = base - less + more;
  const cuttersPerWing = cuttersOnWing({ holeDiameter, cutterDiameter: cutter.faceDiameter, wings });
  const reasons: Reason[] = [
    soft
      ? {
          sentence: sticky
            ? "Sticky ground over half of the footage: fewer wings leave wide slots that do not ball."
            : "Soft ground: fewer wings leave wide slots for the thick chips.",
          rule: "wings by ground",
          value: sticky ? mix.stickyShare : mean,
          limit: sticky ? 2 * COUNTING_SHARE : SOFT_WINGS_STRENGTH,
          unit: sticky ? "-" : "Pa",
          source,
        }
      : {
          sentence:
            "Five wings, cutters offset from wing to wing, share the load and leave room for big ports that rarely plug.",
          rule: "wings by ground",
          value: mean,
          limit: SOFT_WINGS_STRENGTH,
          unit: "Pa",
          source,
        },
  ];
  if (less > 0) {
    const sentence = "One wing less, because the hole is too small for more slots and ports.";
    reasons.push({ sentence, rule: "wings by hole", value: holeDiameter, limit: roomy, unit: "m", source });
  }
  if (more > 0) {
    const sentence = "One wing more, because a hole this large has room for its slot and port.";
    reasons.push({ sentence, rule: "wings by hole", value: holeDiameter, limit: LARGE_HOLE, unit: "m", source });
  }
  reasons.push({
    sentence: `${cuttersPerWing} face cutters on each wing sweep every radius often enough; the layout shows whether any ring stays uncut.`,
    rule: "cutters on a wing",
    value: cuttersPerWing,
    unit: "-",
    source,
  });
  return {
    value: { wings, cuttersPerWing },
    reasons,
    alternatives: [3, 4, 5, 6]
      .filter((count) => count !== wings)
      .map((count) => ({
        what: `${count} wings`,
        why:
          count < wings
            ? "wider slots and more weight on each cutter; for softer ground than this"
            : "smoother, with less slot and port for each wing: plugs and balls more",
      })),
    working: {
      name: "face cutters on one wing",
      relation: "k = n (D/2)/(d w), to the nearest whole between 3 and what fits",
      inputs: [
        given("n", "times each radius is swept", USUAL_REDUNDANCY, "-", "common practice, no source"),
        given("D", "hole diameter", holeDiameter, "m", "hole"),
        given("d", `face of a ${cutter.code} cutter`, cutter.faceDiameter, "m", "catalog"),
        given("w", "wings", wings, "-", "wings by ground"),
        given("s", "wall between two cutters", PLANNING_WALL, "m", "common practice, no source"),
      ],
      value: cuttersPerWing,
      unit: "-",
      source,
    },
  };
}
