import { commonPractice, derivedFrom, type Finding, given, requirePositive, type Working } from "../quantity/index.ts";
import type { BitMaterial } from "./bit-material.ts";
import { exposure } from "./exposure.ts";
import type { BitLayout } from "./placed-cutter.ts";
import { sayLength } from "./say-length.ts";
import { portRoom, slotArea, type WingedCore } from "./slot-area.ts";

/**
 * Radius of the solid middle of a bit body as a share of the hole radius [-]: it holds bore, ports and pin.
 *
 * @source (c) no source: half, our choice; the shop's own bodies differ
 */
export const CORE_SHARE = 0.5;

/**
 * Metal behind a cutter as a share of its length, by body [-].
 *
 * @source (c) common practice, no source: backing of two thirds of the cutter's length or more; more in brittle matrix
 */
export const BACKING_SHARE: Readonly<Record<BitMaterial, number>> = { steel: 2 / 3, matrix: 1 };

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
 * Smallest port that is not soon plugged on water-well mud [m].
 *
 * @source (c) common practice, no source: 3/8 in
 */
export const SMALLEST_SOUND_PORT = 9.525e-3;

/** What the body is reckoned from. */
export interface BodyInput {
  readonly layout: BitLayout;
  readonly material: BitMaterial;
  /** Number of wings; counted from the layout where not given [-]. */
  readonly wings?: number;
  /** Thickness of a wing along travel; cutter, backing and lip where not given [m]. */
  readonly wingThickness?: number;
  /** Radius of the solid middle; of its usual share where not given [m]. */
  readonly coreRadius?: number;
  /** Share of the face diameter that stands out beyond the wing [-]. */
  readonly exposureShare?: number;
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
  readonly ports: BodyInput["ports"];
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
  /** Height of each cutter's tip over its wing along the profile normal, in the order of the layout [m]. */
  readonly exposure: readonly number[];
  /** Least of the exposures [m]. */
  readonly leastExposure: number;
  /** Advance per revolution at which the first wing rubs, for tracks cut once a revolution [m]. */
  readonly rubbingAdvance: number;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * Slots, room for ports and exposure of a bit from its wings and cutters. More wings at the same size leave smaller slots
 * and smaller ports.
 *
 * @throws RangeError when the hole or a port has no size, or there is no cutter
 * @source (d) geometry of straight wings on a round core; their sizes are common practice
 */
export function bitBody(input: BodyInput): BitBody {
  const { layout, material, wings = wingsOf(layout), ports } = input;
  const { holeDiameter, cutters } = layout;
  requirePositive({ holeDiameter, "number of cutters": cutters.length, portDiameter: ports.diameter });
  const coreRadius = input.coreRadius ?? (CORE_SHARE * holeDiameter) / 2;
  const longest = Math.max(...cutters.map(({ length }) => length));
  const wingThickness = input.wingThickness ?? longest * (1 + BACKING_SHARE[material]) + WING_LIP;
  const { exposureShare } = input;
  const exposed = exposure({ layout, ...(exposureShare === undefined ? {} : { share: exposureShare }) });
  const heights = exposed.cutters.map(({ alongNormal }) => alongNormal);
  const common = {
    material,
    wings,
    ports,
    wingThickness,
    coreRadius,
    exposure: heights,
    leastExposure: Math.min(...heights),
    rubbingAdvance: exposed.rubbingAdvance,
  };
  if (wings === 0) return { ...common, findings: exposed.findings, working: exposed.working };
  const core = { wings, wingThickness, coreRadius };
  const area = slotArea({ holeDiameter, ...core });
  const largestPort = portRoom({ ...core, wall: PORT_WALL });
  return {
    ...common,
    slotArea: area,
    slotShare: area / ((Math.PI / 4) * holeDiameter ** 2),
    largestPort,
    findings: [...portFindings({ ports, largestPort, wings }), ...exposed.findings],
    working: [...slotWorkings({ holeDiameter, core, area, largestPort }), ...exposed.working],
  };
}

/** Wings that carry cutters; 0 where none is known. */
function wingsOf({ cutters }: BitLayout): number {
  return new Set(cutters.map(({ wing }) => wing).filter((wing) => wing > 0)).size;
}

function slotWorkings({
  holeDiameter,
  core,
  area,
  largestPort,
}: {
  readonly holeDiameter: number;
  readonly core: WingedCore;
  readonly area: number;
  readonly largestPort: number;
}): Working[] {
  const source = derivedFrom("straight wings on a round core; their sizes are common practice");
  const wings = [
    given("n", "wings", core.wings, "-", "layout"),
    given("t", "wing thickness", core.wingThickness, "m", "cutter length, backing and lip"),
    given("r_c", "core radius", core.coreRadius, "m", "share of the hole radius, our choice"),
  ];
  return [
    {
      name: "slot area",
      relation: "A = π (R² - r_c²) - n (S(R) - S(r_c)), S(ρ) = (t/2) √(ρ² - t²/4) + ρ² asin(t/2ρ)",
      inputs: [given("R", "hole radius", holeDiameter / 2, "m", "hole"), ...wings],
      value: area,
      unit: "m²",
      source,
    },
    {
      name: "largest port between two wings",
      relation: "d = min(2 r_c sin(π/n) - t - 2 w, r_c/2)",
      inputs: [...wings, given("w", "wall beside the port", PORT_WALL, "m", "our choice, no source")],
      value: largestPort,
      unit: "m",
      source,
    },
  ];
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
  const findings: Finding[] = [];
  if (ports.diameter > largestPort) {
    findings.push({
      code: "port-too-large-for-slot",
      severity: "caution",
      where: "ports",
      message: `A port this wide does not fit between ${wings} wings of this thickness without cutting into them. Fewer wings or smaller ports.`,
      value: ports.diameter,
      limit: largestPort,
      unit: "m",
      source: derivedFrom("room between two wings at the core"),
    });
  }
  if (ports.count > wings) {
    findings.push({
      code: "more-ports-than-slots",
      severity: "caution",
      where: "ports",
      message: `${ports.count} ports in ${wings} slots: some share a slot and weaken the core.`,
      value: ports.count,
      limit: wings,
      unit: "-",
      source: commonPractice(),
    });
  }
  if (largestPort < SMALLEST_SOUND_PORT) {
    findings.push({
      code: "no-room-for-ports",
      severity: "caution",
      where: "ports",
      message: `The slots leave room for ports of ${sayLength(largestPort)} at most, which plug. Take fewer or thinner wings.`,
      value: largestPort,
      limit: SMALLEST_SOUND_PORT,
      unit: "m",
      source: commonPractice(),
    });
  }
  return findings;
}
