import type { Finding, Working } from "../quantity/index.ts";
import { type BitBody, bitBody } from "./bit-body.ts";
import type { BitMaterial } from "./bit-material.ts";
import { classificationCode, classificationMeaning } from "./classification-code.ts";
import { type Coverage, coverage } from "./coverage.ts";
import { type GrindWindow, grindWindow } from "./gauge-tolerance.ts";
import type { BitLayout } from "./placed-cutter.ts";
import { type PocketWalls, pocketWalls } from "./pocket-wall.ts";
import type { ProfileShape } from "./profile.ts";

/** What is reviewed. */
export interface BitReviewInput {
  readonly layout: BitLayout;
  readonly material: BitMaterial;
  /** Shape of the profile; of a bit of unknown make what it comes nearest to. */
  readonly profile: ProfileShape;
  /** Number of wings; counted from the layout where not given [-]. */
  readonly wings?: number;
  readonly ports: {
    /** How many [-]. */
    readonly count: number;
    /** Diameter of one [m]. */
    readonly diameter: number;
  };
}

/** A bit looked over before it is computed with. */
export interface BitReview {
  readonly coverage: Coverage;
  readonly walls: PocketWalls;
  readonly body: BitBody;
  /** Outside diameter to grind to. */
  readonly grindWindow: GrindWindow;
  /** Four characters of the 1992 IADC classification, for example `S132`. */
  readonly classification: string;
  /** What they mean, in words. */
  readonly classificationMeaning: string;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * Looks a layout over: what it sweeps, what stands between its pockets, its slots and exposure, its gauge and its code.
 *
 * @throws RangeError when the hole has no size or there is no cutter
 * @source (d) each part names its own
 */
export function reviewBit({ layout, material, profile, wings, ports }: BitReviewInput): BitReview {
  const covered = coverage(layout);
  const walls = pocketWalls({ layout, material });
  const body = bitBody({ layout, material, ports, ...(wings === undefined ? {} : { wings }) });
  const classified = { body: material, cutters: layout.cutters, profile };
  return {
    coverage: covered,
    walls,
    body,
    grindWindow: grindWindow(layout.holeDiameter),
    classification: classificationCode(classified),
    classificationMeaning: classificationMeaning(classified),
    findings: [...covered.findings, ...walls.findings, ...body.findings],
    working: [...covered.working, ...walls.working, ...body.working],
  };
}
