import {
  advanceWhere,
  type Band,
  type BitLayout,
  type ComputedRun,
  type CoolingFilm,
  type CuttingKernel,
  type EdgeTrace,
  enteredBy,
  type Finding,
  type HeatConditions,
  largestRate,
  practiceRotarySpeed,
  practiceWeight,
  type RateBound,
  type RateLimits,
  type RockResponse,
  type RockResponseBands,
  type RunningPoint,
  rateOfPenetration,
  runningPoint,
  type SteadyDrilling,
  steadyDrilling,
  traceEdges,
  WEAR_QUICKENS_TEMPERATURE,
  type Working,
} from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import type { BedInHole } from "./bed-in-hole.ts";
import { overBeds } from "./over-beds.ts";
import { weightAvailable } from "./string-of.ts";

/** How the bit cuts one bed. */
export interface BedCut extends BedInHole {
  /** The computed running point beside the rule of thumb. */
  readonly run: RunningPoint;
  /** Every limit that some rate meets at the computed speed, tightest first. */
  readonly bounds: readonly RateBound[];
  /** Weight to work with: entered by hand, or the weight to start with [N]. */
  readonly weight: number;
  /** Rotary speed to work with [rad/s]. */
  readonly rotarySpeed: number;
  /** The bit at that weight and speed in the rock at its best single values. */
  readonly drilling: SteadyDrilling;
  /** Rate by the rules of thumb alone, for comparison; absent where the ground cannot carry their weight [m/s]. */
  readonly rateByPractice?: number;
  /** Rate at that weight over the band of the rock's strength, held to what the flow cleans [m/s]. */
  readonly rate: Band;
}

/** What each cutter does and how fast the bit goes, bed by bed. */
export interface CutStation {
  readonly trace: EdgeTrace;
  readonly beds: readonly BedCut[];
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** What the cut needs beside the traveler. */
export interface CutQuestion {
  readonly layout: BitLayout;
  /** Least height of the tips over the wing: where deeper cuts make the body rub [m]. */
  readonly exposure: number;
  /** Cooling of each cutter by the flow past it, in the order of the layout. */
  readonly films: readonly CoolingFilm[];
  readonly beds: readonly BedInHole[];
  /** Rate at which the cuttings reach their limit; absent where no liquid is circulated [m/s]. */
  readonly cleaningRate?: number;
  /** Remarks on the layout that have been made already; they are not made again for each bed. */
  readonly known: readonly Finding[];
  /** What runs the loops; the plain kernel where none is named. No figure depends on it. */
  readonly kernel?: CuttingKernel | undefined;
}

/** Turns per minute that are tried, those of the trade's rule and under it. */
const TRIED_RPM = [60, 70, 80, 90, 100] as const;
const RPM = (2 * Math.PI) / 60;

/** Works the cut up for every bed that the bit drills. */
export function cutStation(traveler: ResolvedTraveler, question: CutQuestion): CutStation {
  const trace = traceEdges(question.layout);
  const beds = question.beds.map((bed) => bedCut(traveler, question, trace, bed));
  return {
    trace,
    beds,
    findings: [
      ...beds.flatMap((bed) => [...bed.run.findings, ...heldWeight(bed, traveler)]),
      ...overBeds(
        beds.map(({ bed, drilling }) => ({ name: bed.name, findings: drilling.findings })),
        question.known,
      ),
    ],
    working: beds.flatMap(({ run, drilling, fit }) =>
      [...run.working, ...drilling.working].map((one) => ({ ...one, name: `${one.name}, ${fit.bed.name}` })),
    ),
  };
}

/** A weight set by hand that the limits do not let through. */
function heldWeight({ bed, weight, run }: BedCut, { overrides }: ResolvedTraveler): Finding[] {
  if (overrides.weight === undefined || overrides.weight <= weight) return [];
  return [
    {
      code: "weight-by-hand-over-limit",
      severity: "caution",
      where: bed.name,
      message: `The weight set by hand is more than the limits of rig, bit and flow let through here (${run.computed.binds}); the lesser weight is worked with.`,
      value: overrides.weight,
      limit: weight,
      unit: "N",
      source: enteredBy("overrides.weight"),
    },
  ];
}

function bedCut(traveler: ResolvedTraveler, question: CutQuestion, trace: EdgeTrace, at: BedInHole): BedCut {
  const { inquiry, overrides } = traveler;
  const { kernel } = question;
  const { ground, bed } = at;
  const { mid, bands } = ground.response;
  const heat = heatOf(traveler, at, question.films);
  const limits = limitsOf(traveler, question, at);
  const holeDiameter = inquiry.bitHole.diameter;
  const tried = speedsToTry(traveler, practiceRotarySpeed(bed.confinedStrength.mid)).map((rotarySpeed) => ({
    rotarySpeed,
    found: largestRate({ trace, response: mid, kernel, rotarySpeed, limits, heat }),
  }));
  const candidates: ComputedRun[] = tried.map(({ rotarySpeed, found }) => ({
    rotarySpeed,
    rate: found.rate,
    weight: found.state.bit.weight,
    binds: found.binds,
  }));
  const run = runningPoint({ holeDiameter, bed, candidates });
  const bounds = tried.find(({ rotarySpeed }) => rotarySpeed === run.computed.rotarySpeed)?.found.bounds ?? [];
  // A weight set by hand is worked with as far as the limits let it through; a remark says where they do not.
  const weight = Math.min(overrides.weight ?? run.startWeight, run.computed.weight);
  const { rotarySpeed } = run.computed;
  const common = { layout: question.layout, trace, response: mid, kernel, heat, exposure: question.exposure };
  const responseFrom = `${ground.rock.name} at its confined strength`;
  const drilling = steadyDrilling({ ...common, weight, rotarySpeed, responseFrom });
  const byRule = advanceWhere(
    { trace, response: mid, kernel },
    (state) => state.bit.weight,
    practiceWeight(holeDiameter),
  );
  const rateByPractice =
    byRule === undefined ? undefined : rateOfPenetration({ advance: byRule, rotarySpeed: run.practice.rotarySpeed });
  const rateIn = (response: RockResponse) =>
    largestRate({ trace, response, kernel, rotarySpeed, limits: { ...limits, weight }, heat }).rate;
  const rate = { low: rateIn(sideOf(bands, "high")), mid: rateIn(mid), high: rateIn(sideOf(bands, "low")) };
  const compared = rateByPractice === undefined ? {} : { rateByPractice };
  return { ...at, run, bounds, weight, rotarySpeed, drilling, rate, ...compared };
}

function sideOf(bands: RockResponseBands, side: "low" | "high"): RockResponse {
  // Strength carries the spread; friction and growth of contact are left at their best values.
  return {
    specificEnergy: bands.specificEnergy[side],
    contactStress: bands.contactStress[side],
    faceFriction: bands.faceFriction.mid,
    flatFriction: bands.flatFriction.mid,
    kappa: bands.kappa.mid,
  };
}

/** How the edges of every cutter are heated by a bed and cooled by the flow past it. */
export function heatOf(
  { inquiry }: ResolvedTraveler,
  { ground }: BedInHole,
  /** Cooling of each cutter, in the order of the layout. */
  film: readonly CoolingFilm[],
): HeatConditions {
  return { rock: rockHeatOf(ground), fluidTemperature: inquiry.fluid.temperature, film };
}

/** How a rock leads heat. */
export function rockHeatOf({ rock }: BedInHole["ground"]): HeatConditions["rock"] {
  return { conductivity: rock.thermalConductivity.mid, diffusivity: rock.thermalDiffusivity.mid };
}

/** Every limit on the rate in a bed: rig, string, wings, heat, flow, and what was set by hand. */
export function limitsOf(
  traveler: ResolvedTraveler,
  { exposure, cleaningRate }: Pick<CutQuestion, "exposure" | "cleaningRate">,
  { bed }: BedInHole,
): RateLimits {
  const { inquiry, overrides } = traveler;
  const { rig } = inquiry;
  const rates = [cleaningRate, overrides.limits.rate].filter((rate) => rate !== undefined);
  return {
    weight: weightAvailable(inquiry, bed.top),
    torque: overrides.limits.torque ?? rig.torque,
    exposure,
    contactTemperature: WEAR_QUICKENS_TEMPERATURE,
    ...(rig.power === undefined ? {} : { power: rig.power }),
    ...(rates.length === 0 ? {} : { rate: Math.min(...rates) }),
  };
}

/** The speeds the rig can hold among those of the trade's rule, and the rule's own where the rig can turn it. */
function speedsToTry({ inquiry, overrides }: ResolvedTraveler, byRule: number): number[] {
  if (overrides.rotarySpeed !== undefined) return [overrides.rotarySpeed];
  const { rotarySpeedMin, rotarySpeedMax, rotarySpeeds } = inquiry.rig;
  const within = (speed: number) => Math.min(Math.max(speed, rotarySpeedMin), rotarySpeedMax);
  const fastest = Math.max(...TRIED_RPM) * RPM;
  if (rotarySpeeds) {
    const slowEnough = rotarySpeeds.filter((speed) => speed <= fastest);
    return slowEnough.length > 0 ? slowEnough : [Math.min(...rotarySpeeds)];
  }
  return [...new Set([...TRIED_RPM.map((rpm) => rpm * RPM), byRule].map(within))];
}
