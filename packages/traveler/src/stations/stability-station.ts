import {
  type CrossingToReview,
  type Finding,
  type NamedBed,
  STANDARD_GRAVITY,
  type StabilityReview,
  stabilityReview,
  type Working,
} from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import type { BitStation } from "./bit-station.ts";
import type { BedCut, CutStation } from "./cut-station.ts";
import { overBeds } from "./over-beds.ts";
import { sectionsOf } from "./string-of.ts";

/** How steadily the bit drills one bed. */
export interface BedStability {
  readonly name: string;
  /** Depth where the bit comes into it [m]. */
  readonly top: number;
  /** Depth where the bit leaves it [m]. */
  readonly bottom: number;
  /** Weight of the run [N]. */
  readonly weight: number;
  /** Rotary speed of the run [rad/s]. */
  readonly rotarySpeed: number;
  /** The string as long as when the bit is half-way through the bed. */
  readonly review: StabilityReview;
}

/** How steadily the bit drills: its balance, the boundaries it crosses, the string it hangs on. */
export interface StabilityStation {
  readonly beds: readonly BedStability[];
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** What the look at stability needs beside the traveler. */
export interface StabilityQuestion {
  readonly bit: Pick<BitStation, "review">;
  readonly cut: CutStation;
}

/** Beds this near to each other meet [m]; (c) a rounding of feet to metres, no source. */
const SAME_DEPTH = 0.01;

/** Looks at the balance of the bit in each bed, at each boundary it comes to, and at the string it hangs on. */
export function stabilityStation(traveler: ResolvedTraveler, { bit, cut }: StabilityQuestion): StabilityStation {
  const beds = cut.beds.map((one, at) => bedStability(traveler, { bit, cut }, one, cut.beds[at - 1]));
  return {
    beds,
    findings: [
      ...overBeds(beds.map(({ name, review }) => ({ name, findings: review.findings }))),
      ...beds.flatMap(({ review }) => review.boundaryFindings),
    ],
    working: beds.flatMap(({ name, review }) =>
      review.working.map((one) => (one.name.includes(name) ? one : { ...one, name: `${one.name}, ${name}` })),
    ),
  };
}

function bedStability(
  { inquiry }: ResolvedTraveler,
  { bit, cut }: StabilityQuestion,
  one: BedCut,
  above: BedCut | undefined,
): BedStability {
  const { bed, weight, rotarySpeed } = one;
  const { exposure, wingThickness } = bit.review.body;
  const { jointLength } = inquiry.pipe;
  // No bit hangs on less than a joint.
  const shortest = Math.max(bed.top, jointLength);
  const longest = Math.max(bed.bottom, shortest);
  return {
    name: bed.name,
    top: bed.top,
    bottom: bed.bottom,
    weight,
    rotarySpeed,
    review: stabilityReview({
      trace: cut.trace,
      bed: namedBed(one),
      weight,
      rotarySpeed,
      crossings: crossingsOf(one, above),
      body: { exposure, wingThickness },
      string: {
        sections: sectionsOf(inquiry, (shortest + longest) / 2),
        lengths: { shortest, longest },
        topHeadMass: inquiry.rig.topHeadWeight / STANDARD_GRAVITY,
      },
    }),
  };
}

/** The boundaries of a bed: from the bed above at the weight that was held there, and into the hard bands within it. */
function crossingsOf(one: BedCut, above: BedCut | undefined): CrossingToReview[] {
  const { stringer } = one.ground;
  const meets = above !== undefined && Math.abs(above.bed.bottom - one.bed.top) < SAME_DEPTH;
  return [
    ...(meets ? [{ from: namedBed(above), to: namedBed(one), weight: above.weight }] : []),
    ...(stringer
      ? [
          {
            from: namedBed(one),
            to: { name: `its ${stringer.rock.name} bands`, response: stringer.response.mid },
            weight: one.weight,
          },
        ]
      : []),
  ];
}

function namedBed({ bed, ground }: BedCut): NamedBed {
  return { name: bed.name, response: ground.response.mid };
}
