import { commonPractice, type Finding, INCH, requirePositive, type Working } from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import { type BodyMaterial, bodyForGround } from "./body-for-ground.ts";
import { type ChamferChoice, chamferForGround } from "./chamfer-for-ground.ts";
import { type CutterSize, cutterSizeForGround } from "./cutter-size-for-ground.ts";
import { type AdvisedFluid, isGasFluid } from "./drilling-fluid.ts";
import { fitOfBed } from "./fit-of-bed.ts";
import { type GaugeChoice, gaugeForGround } from "./gauge-for-ground.ts";
import { COUNTING_SHARE, type GroundMix, groundMix } from "./ground-mix.ts";
import { leachedForGround } from "./leached-for-ground.ts";
import type { PortsChoice } from "./port-candidates.ts";
import { portsForPump } from "./ports-for-pump.ts";
import { type AdvisedProfile, profileForGround } from "./profile-for-ground.ts";
import { backRakeForGround, type RakeRange, sideRakeForGround } from "./rakes-for-ground.ts";
import type { Choice } from "./reason.ts";
import { sweepOfWings } from "./sweep-of-wings.ts";
import { type WingsChoice, wingsForGround } from "./wings-for-ground.ts";

/**
 * Smallest hole these rules speak of [m].
 *
 * @source (c) the sizes of the trade this is made for: 3 in
 */
export const SMALLEST_ADVISED_HOLE = 3 * INCH;

/**
 * Largest hole these rules speak of [m].
 *
 * @source (c) the sizes of the trade this is made for: 12 1/4 in
 */
export const LARGEST_ADVISED_HOLE = 12.25 * INCH;

/** What the choice of a bit looks at. */
export interface ChooseBitInput {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  /** The beds of the hole, from the top down; unfit ones do not count in the mix. */
  readonly beds: readonly AdvisedBed[];
  /** Depth where the bit starts, below casing where there is any [m]. */
  readonly from: number;
  /** Depth where the bit ends [m]. */
  readonly to: number;
  readonly fluid: AdvisedFluid;
  /** Density of the fluid [kg/m³]. */
  readonly density: number;
  readonly pump: ChooseBitPump;
}

/** What the pump gives the bit. */
export interface ChooseBitPump {
  /** Flow at the bit [m³/s]. */
  readonly flow: number;
  /** Pressure that the pump can spend at the bit: its rating less what pipe and hole take [Pa]. */
  readonly pressureForBit: number;
  /** Largest lump that suction and valves let through; absent where there is no screen or nobody knows [m]. */
  readonly lumpSize?: number;
  /** Discharge coefficient of the ports, where it was measured [-]. */
  readonly dischargeCoefficient?: number;
}

/** One bit, each choice with its reasons and what else was looked at. */
export interface BitChoice {
  /** The ground the choices rest on. */
  readonly mix: GroundMix;
  readonly cutter: Choice<CutterSize>;
  readonly chamfer: Choice<ChamferChoice>;
  readonly backRake: Choice<RakeRange>;
  readonly sideRake: Choice<RakeRange>;
  readonly wings: Choice<WingsChoice>;
  /** How far the outermost cutter of a wing trails its innermost [rad]. */
  readonly sweep: Choice<number>;
  readonly profile: Choice<AdvisedProfile>;
  readonly body: Choice<BodyMaterial>;
  readonly leached: Choice<boolean>;
  readonly ports: Choice<PortsChoice>;
  readonly gauge: Choice<GaugeChoice>;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * One bit for a stretch of hole, by the rules of the trade: footage sets what cuts fast, the worst bed what holds out.
 * The same input always gives the same bit.
 *
 * @throws RangeError when the hole has no length, no bed lies in it, or an input is not positive
 * @source (c) common practice, no source; single rules name theirs
 */
export function chooseBit({ holeDiameter, beds, from, to, fluid, density, pump }: ChooseBitInput): BitChoice {
  requirePositive({ holeDiameter, "length of hole": to - from });
  const met = bedsBetween({ beds, from, to });
  requirePositive({ "number of beds in the hole": met.length });
  const fits = met.map(fitOfBed);
  const drilled = fits.filter(({ verdict }) => verdict !== "unfit");
  const mix = groundMix(drilled.length > 0 ? drilled : fits);
  const gas = isGasFluid(fluid);
  const cutter = cutterSizeForGround({ holeDiameter, mix });
  const wings = wingsForGround({ holeDiameter, cutter: cutter.value, mix });
  const ports = portsForPump({
    holeDiameter,
    wings: wings.value.wings,
    fluid,
    density,
    sticky: mix.stickyShare >= COUNTING_SHARE,
    ...pump,
  });
  return {
    mix,
    cutter: plain(cutter),
    chamfer: chamferForGround(mix),
    backRake: backRakeForGround(mix),
    sideRake: sideRakeForGround(),
    wings: plain(wings),
    sweep: sweepOfWings(),
    profile: profileForGround({ holeDiameter, mix }),
    body: bodyForGround(mix),
    leached: leachedForGround({ mix, gas }),
    ports: plain(ports),
    gauge: gaugeForGround({ holeDiameter, mix }),
    findings: [
      ...sizeFindings(holeDiameter),
      ...(drilled.length > 0 ? [] : [nothingToDrill()]),
      ...mix.stringerBeds.map(stringer),
      ...ports.findings,
    ],
    working: [cutter.working, wings.working, ...ports.working],
  };
}

/** The parts of the beds that lie in a stretch of hole. */
function bedsBetween({
  beds,
  from,
  to,
}: {
  readonly beds: readonly AdvisedBed[];
  readonly from: number;
  readonly to: number;
}): AdvisedBed[] {
  return beds
    .map((bed) => ({ ...bed, top: Math.max(bed.top, from), bottom: Math.min(bed.bottom, to) }))
    .filter((bed) => bed.bottom > bed.top);
}

function plain<T>({ value, reasons, alternatives }: Choice<T>): Choice<T> {
  return { value, reasons, alternatives };
}

function sizeFindings(holeDiameter: number): Finding[] {
  const small = holeDiameter < SMALLEST_ADVISED_HOLE - 1e-9;
  if (!small && holeDiameter <= LARGEST_ADVISED_HOLE + 1e-9) return [];
  return [
    {
      code: "hole-outside-advice",
      severity: "caution",
      where: "hole",
      message: "The rules behind this choice come from holes of 3 to 12 in; outside them they are a guess.",
      value: holeDiameter,
      limit: small ? SMALLEST_ADVISED_HOLE : LARGEST_ADVISED_HOLE,
      unit: "m",
      source: commonPractice(),
    },
  ];
}

function nothingToDrill(): Finding {
  return {
    code: "no-ground-for-this-bit",
    severity: "stop",
    where: "ground",
    message:
      "No bed of this stretch is ground for a PDC bit. Use another tool; the bit shown is only what would come nearest.",
    source: commonPractice(),
  };
}

function stringer(name: string): Finding {
  return {
    code: "hard-stringer",
    severity: "caution",
    where: name,
    message: "A thin bed much harder than its neighbours. Slow the rotation as the bit goes in and comes out of it.",
    source: commonPractice(),
  };
}
