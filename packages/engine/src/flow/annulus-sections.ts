import { requireBetween, requirePositive } from "../quantity/index.ts";
import type { Annulus } from "./conduit.ts";

/** The thick ends by which a run of pipe is screwed together. */
export interface PipeJoints {
  /** Outer diameter [m]. */
  readonly outerDiameter: number;
  /** Bore [m]. */
  readonly bore: number;
  /** Share of the length of the run that they take [-]. */
  readonly share: number;
}

/** A run of pipe or collars of one size. */
export interface BoreSection {
  readonly name: string;
  /** Outer diameter [m]. */
  readonly outerDiameter: number;
  /** Bore [m]. */
  readonly bore: number;
  /** Length of the run, joints and all [m]. */
  readonly length: number;
  /** Left out where the joints are no wider than the tube. */
  readonly joints?: PipeJoints;
}

/** A stretch of casing or open hole of one size. */
export interface HoleSection {
  readonly name: string;
  /** Diameter of the hole, or bore of the casing [m]. */
  readonly diameter: number;
  /** Depth of its lower end [m]. */
  readonly bottom: number;
}

/** What `annulusSections` needs. */
export interface AnnulusSectionsInput {
  /** Pipe and collars from the top down to the bit. */
  readonly string: readonly BoreSection[];
  /** Casing and open hole from the top down; the last one reaches to the bit wherever that is. */
  readonly hole: readonly HoleSection[];
}

/** The annulus around the joints of a run of pipe. */
export interface JointAnnulus {
  readonly name: string;
  readonly annulus: Annulus;
  /** Share of the length of the stretch that they take [-]. */
  readonly share: number;
}

/** A stretch of annulus of one size. */
export interface AnnulusSection {
  readonly name: string;
  readonly annulus: Annulus;
  /** Length of the stretch [m]. */
  readonly length: number;
  /** The joints of the pipe in it, whose annulus is narrower; the rest of the length is the tube's. */
  readonly joints?: JointAnnulus;
}

/**
 * The annuli between a string and its hole, from the top down: a new one wherever pipe or hole changes size.
 *
 * @throws RangeError when string or hole is empty, a length is not positive, or hole sections do not go down
 * @source (d) geometry
 */
export function annulusSections({ string, hole }: AnnulusSectionsInput): AnnulusSection[] {
  requirePositive({ "string sections": string.length, "hole sections": hole.length });
  const sections: AnnulusSection[] = [];
  let top = 0;
  let holeIndex = 0;
  for (const run of string) {
    requirePositive({ "length of a string section": run.length });
    const runBottom = top + run.length;
    while (top < runBottom) {
      const within = hole[holeIndex];
      const last = holeIndex === hole.length - 1;
      const bottom = last ? runBottom : Math.min(runBottom, within.bottom);
      if (bottom > top) {
        const annulus = { shape: "annulus", holeDiameter: within.diameter, pipeDiameter: run.outerDiameter } as const;
        const joints = jointsIn(run, within);
        sections.push({ name: `${run.name} in ${within.name}`, annulus, length: bottom - top, ...joints });
        top = bottom;
      }
      if (!last && top >= within.bottom) {
        requirePositive({ "fall from one hole section to the next": hole[holeIndex + 1].bottom - within.bottom });
        holeIndex += 1;
      }
    }
  }
  return sections;
}

function jointsIn({ joints }: BoreSection, { name, diameter }: HoleSection): Pick<AnnulusSection, "joints"> {
  if (!joints) return {};
  requireBetween("share of a run that its joints take", joints.share, 0, 1);
  const annulus = { shape: "annulus", holeDiameter: diameter, pipeDiameter: joints.outerDiameter } as const;
  return { joints: { name: `joints in ${name}`, annulus, share: joints.share } };
}
