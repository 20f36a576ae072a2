import { derivedFrom, type Finding, given, requirePositive, type Working } from "../quantity/index.ts";
import type { BitMaterial } from "./bit-material.ts";
import type { BitLayout } from "./placed-cutter.ts";

/**
 * Radius of the solid middle of a bit body as a share of the hole radius [-]: it holds bore, ports and pin.
 *
 * @source (c) no source: half, our choice; the shop's own bodies differ
 */
export const CORE_SHARE = 0.5;

/**
 * Metal behind a cutter as a share of its length [-].
 *
 * @source (c) common practice, no source: backing of two thirds of the cutter's length or more
 */
export const BACKING_SHARE = 2 / 3;

/**
 * Metal of a wing ahead of and under the diamond face [m].
 *
 * @source (c) no source: 3 mm, our choice
 */
export const WING_LIP = 3e-3;

/**
 * Wall kept between a port and the wings beside it [m].
 *
 * @source (c) no source: 3 mm, our choice
 */
export const PORT_WALL = 3e-3;

/**
 * Height of a cutter tip over its wing as a share of the face diameter, where the shop names none [-].
 *
 * @source (c) common practice, no source: 0.3 to 0.6
 */
export const ORDINARY_EXPOSURE_SHARE = 0.5;

/** What the body is reckoned from. */
export interface BodyInput {
  readonly layout: BitLayout;
  readonly material: BitMaterial;
  /** Number of wings; counted from the layout where not given [-]. */
  readonly wings?: number;
  /** Round ports of one size. */
  readonly ports: {
    /** How many [-]. */
    readonly count: number;
    /** Diameter of one [m]. */
    readonly diameter: number;
  };
}

/** The body of a bit as far as flow and rubbing ask after it. An estimate: shops shape their bodies as they like. */
export interface BitBody {
  readonly material: BitMaterial;
  /** Number of wings; 0 where they are not known [-]. */
  readonly wings: number;
  /** Thickness of a wing along travel [m]. */
  readonly wingThickness: number;
  /** Radius of the solid middle [m]. */
  readonly coreRadius: number;
  /** Open area of all slots across the hole; absent where the wings are not known [m²]. */
  readonly slotArea?: number;
  /** Slot area over hole area; absent where the wings are not known [-]. */
  readonly slotShare?: number;
  /** Largest round port that fits in a slot by the core; absent where the wings are not known [m]. */
  readonly largestPort?: number;
  /** Height of each cutter's tip over its wing, in the order of the layout [m]. */
  readonly exposure: readonly number[];
  /** Least of the exposures [m]. */
  readonly leastExposure: number;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * Slots, room for ports and exposure of a bit from its wings and cutters.
 *
 * With hole radius R, core c R, n wings of thickness t: slot area A = π R² (1 - c²) - n t R (1 - c); the largest port
 * that fits between two wings at the core is d = 2π c R / n - t - 2 w. So more wings leave smaller slots and ports.
 *
 * @throws RangeError when the hole or a port has no size
 * @source (d) geometry of straight wings on a round core; their sizes are common practice
 */
export function bitBody({ layout, material, wings = wingsOf(layout), ports }: BodyInput): BitBody {
  const { holeDiameter, cutters } = layout;
  requirePositive({ holeDiameter, "number of cutters": cutters.length, portDiameter: ports.diameter });
  const holeRadius = holeDiameter / 2;
  const coreRadius = CORE_SHARE * holeRadius;
  const longest = Math.max(...cutters.map(({ length }) => length));
  const wingThickness = longest * (1 + BACKING_SHARE) + WING_LIP;
  const exposure = cutters.map(({ faceDiameter, wornHeight }) => ORDINARY_EXPOSURE_SHARE * faceDiameter - wornHeight);
  const common = {
    material,
    wings,
    wingThickness,
    coreRadius,
    exposure,
    leastExposure: Math.max(0, Math.min(...exposure)),
  };
  if (wings === 0) return { ...common, findings: [], working: [] };
  const holeArea = Math.PI * holeRadius ** 2;
  const slotArea = Math.max(
    0,
    holeArea - Math.PI * coreRadius ** 2 - wings * wingThickness * (holeRadius - coreRadius),
  );
  const largestPort = Math.max(0, (2 * Math.PI * coreRadius) / wings - wingThickness - 2 * PORT_WALL);
  const source = derivedFrom("straight wings on a round core; their sizes are common practice");
  return {
    ...common,
    slotArea,
    slotShare: slotArea / holeArea,
    largestPort,
    findings: portFindings({ ports, largestPort, wings }),
    working: [
      {
        name: "slot area",
        relation: "A = π R² (1 - c²) - n t R (1 - c)",
        inputs: [
          given("R", "hole radius", holeRadius, "m", "hole"),
          given("c", "core radius over hole radius", CORE_SHARE, "-", "our choice, no source"),
          given("n", "wings", wings, "-", "layout"),
          given("t", "wing thickness", wingThickness, "m", "cutter length, backing and lip"),
        ],
        value: slotArea,
        unit: "m²",
        source,
      },
      {
        name: "largest port between two wings",
        relation: "d = 2π c R / n - t - 2 w",
        inputs: [
          given("R", "hole radius", holeRadius, "m", "hole"),
          given("c", "core radius over hole radius", CORE_SHARE, "-", "our choice, no source"),
          given("n", "wings", wings, "-", "layout"),
          given("t", "wing thickness", wingThickness, "m", "cutter length, backing and lip"),
          given("w", "wall beside the port", PORT_WALL, "m", "our choice, no source"),
        ],
        value: largestPort,
        unit: "m",
        source,
      },
    ],
  };
}

/** Wings that carry cutters; 0 where none is known. */
function wingsOf({ cutters }: BitLayout): number {
  return new Set(cutters.map(({ wing }) => wing).filter((wing) => wing > 0)).size;
}

function portFindings({
  ports,
  largestPort,
  wings,
}: {
  readonly ports: BodyInput["ports"];
  readonly largestPort: number;
  readonly wings: number;
}): Finding[] {
  if (ports.diameter <= largestPort) return [];
  return [
    {
      code: "port-too-large-for-slot",
      severity: "caution",
      where: "ports",
      message: `A port this wide does not fit between ${wings} wings of this thickness without cutting into them. Fewer wings or smaller ports.`,
      value: ports.diameter,
      limit: largestPort,
      unit: "m",
      source: derivedFrom("room between two wings at the core"),
    },
  ];
}
