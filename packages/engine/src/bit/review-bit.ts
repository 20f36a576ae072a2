import { derivedFrom, type Finding, given, type Working } from "../quantity/index.ts";
import { type BitBody, type BodyInput, bitBody } from "./bit-body.ts";
import type { BitMaterial } from "./bit-material.ts";
import { classificationCode, classificationMeaning, halfInchEquivalents } from "./classification-code.ts";
import { type Coverage, coverage } from "./coverage.ts";
import { type CasingPass, casingPass, type GrindWindow, grindWindow } from "./gauge-tolerance.ts";
import type { BitLayout } from "./placed-cutter.ts";
import { type PocketWalls, pocketWalls } from "./pocket-wall.ts";
import type { ProfileShape } from "./profile.ts";
import type { ProfileZone } from "./profile-zone.ts";
import { type RakeGround, rakeFindings } from "./rake-schedule.ts";
import { zonesOfLayout } from "./zones-of-layout.ts";

/** What is reviewed. */
export interface BitReviewInput extends Omit<BodyInput, "layout" | "material"> {
  readonly layout: BitLayout;
  readonly material: BitMaterial;
  /** Shape of the profile; of a bit of unknown make what it comes nearest to. */
  readonly profile: ProfileShape;
  /** Zone of each cutter, in the order of the layout; read off the layout where not given. */
  readonly zones?: readonly ProfileZone[];
  /** Ground the rakes are judged for; any where not given. */
  readonly ground?: RakeGround;
  /** Drift of the casing that the bit has to pass, or its bore where the drift is not known [m]. */
  readonly casingDrift?: number;
}

/** A bit looked over before it is computed with. */
export interface BitReview {
  readonly coverage: Coverage;
  readonly walls: PocketWalls;
  readonly body: BitBody;
  /** Zone of each cutter, in the order of the layout. */
  readonly zones: readonly ProfileZone[];
  /** Outside diameter to grind to. */
  readonly grindWindow: GrindWindow;
  /** Whether the bit passes its casing; absent where no casing was given. */
  readonly casing?: CasingPass;
  /** Four characters of the 1992 IADC classification, for example `S132`. */
  readonly classification: string;
  /** What they mean, in words. */
  readonly classificationMeaning: string;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * Looks a layout over: what it sweeps, what stands between its pockets, its slots and exposure, its rakes, its gauge and
 * its code.
 *
 * @throws RangeError when the hole has no size or there is no cutter
 * @source (d) each part names its own
 */
export function reviewBit(input: BitReviewInput): BitReview {
  const { layout, material, profile, ground, casingDrift } = input;
  const covered = coverage(layout);
  const walls = pocketWalls({ layout, material });
  const body = bitBody(input);
  const zones = input.zones ?? zonesOfLayout(layout);
  const grind = grindWindow(layout.holeDiameter);
  const casing = casingDrift === undefined ? undefined : casingPass({ bitDiameter: grind.largest, drift: casingDrift });
  const classified = { body: material, cutters: layout.cutters, profile };
  const raked = layout.cutters.map((cutter, at) => ({ ...cutter, number: at + 1, zone: zones[at] ?? "nose" }));
  return {
    coverage: covered,
    walls,
    body,
    zones,
    grindWindow: grind,
    ...(casing ? { casing } : {}),
    classification: classificationCode(classified),
    classificationMeaning: classificationMeaning(classified),
    findings: [
      ...covered.findings,
      ...walls.findings,
      ...rakeFindings(raked, ground),
      ...body.findings,
      ...(casing?.findings ?? []),
    ],
    working: [...covered.working, ...walls.working, ...body.working, grind.working, densityWorking(layout)],
  };
}

function densityWorking({ cutters }: BitLayout): Working {
  const faces = cutters.map(({ faceDiameter }) => faceDiameter);
  return {
    name: "cutters counted as half-inch ones",
    relation: "N = Σ (D/12.7 mm)²",
    inputs: [
      given("n", "cutters", faces.length, "-", "layout"),
      given("D", "largest face", Math.max(...faces), "m", "layout"),
    ],
    value: halfInchEquivalents(faces),
    unit: "-",
    source: derivedFrom("equal face area, our assumption: the rule of the 1992 code was not seen"),
  };
}
