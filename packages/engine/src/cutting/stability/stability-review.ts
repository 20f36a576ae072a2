import { gravestFirst, requireNotNegative, requirePositive } from "../../quantity/index.ts";
import { engage } from "../engage.ts";
import { axialLimitSpeed } from "./axial-limit.ts";
import { bedCrossing } from "./bed-crossing.ts";
import { type BedLoads, bedLoads } from "./bed-loads.ts";
import { bitInBeds } from "./bit-in-beds.ts";
import { bitSlopes } from "./bit-slopes.ts";
import { imbalance } from "./imbalance.ts";
import { marchSelfExcitation } from "./march.ts";
import { neededDamping } from "./needed-damping.ts";
import { lengthsInStep, resonanceWindows } from "./resonance.ts";
import { scaledBit } from "./scaled-bit.ts";
import type {
  CrossingToReview,
  ReviewedCrossing,
  ReviewedRubbing,
  ReviewedString,
  ReviewedWhirl,
  StabilityFigures,
  StabilityInput,
  StabilityReview,
} from "./stability-figures.ts";
import { crossingFindings, stabilityFindings } from "./stability-findings.ts";
import { stabilityWorkings } from "./stability-workings.ts";
import { marchLongEnough, SLIGHT_KICK } from "./steady-speeds.ts";
import { stringMode } from "./string-mode.ts";
import { throughBeds } from "./through-beds.ts";
import { backwardWhirlSpeed, whirlLobes } from "./whirl.ts";
import { wingLands } from "./wing-lands.ts";
import { firstRubs, wingLoads } from "./wing-rubbing.ts";

/**
 * Damping of the string's twist that a review counts on, as a share of critical [-].
 *
 * @source (c) no source: 0.03, our choice between the 0.01 and 0.1 that pipe in a hole full of fluid may have; the
 *   published equations have none
 */
export const USUAL_TWIST_DAMPING = 0.03;

/**
 * How steadily a bit drills a bed: balance and which wing it leans to, groups of neighbours, the way across the bed's
 * boundaries, rubbing wings, self-excitation on its string, speeds to keep out of, whirl.
 *
 * @throws RangeError when weight, speed or another input is not sound
 * @source (d) the parts, each with its own source
 */
export function stabilityReview(input: StabilityInput): StabilityReview {
  const figures = stabilityFigures(input);
  return {
    ...figures,
    findings: gravestFirst(stabilityFindings(input, figures)),
    boundaryFindings: gravestFirst(figures.crossings.flatMap(crossingFindings)),
    working: stabilityWorkings(input, figures),
  };
}

function stabilityFigures(input: StabilityInput): StabilityFigures {
  const { trace, bed, weight, rotarySpeed, crossings = [], gaugeClearance = 0 } = input;
  requirePositive({ weight, rotarySpeed });
  requireNotNegative({ gaugeClearance });
  const bit = bitInBeds({ trace, beds: [{ top: 0, response: bed.response }] });
  const [{ advance }] = throughBeds({ bit, held: { weight }, depths: [0] });
  const loads = bedLoads(bit, engage(trace, advance), { depth: 0, azimuth: 0 });
  const wings = new Set(trace.layout.cutters.map(({ wing }) => wing).filter((wing) => wing > 0)).size;
  const rubbing = rubbingOf(input, advance);
  const string = stringOf(input, loads, advance, wings);
  return {
    advance,
    loads,
    imbalance: imbalance(trace, loads),
    crossings: crossings.map((one) => crossingOf(input, one)),
    ...(rubbing ? { rubbing } : {}),
    ...(string ? { string } : {}),
    ...(wings > 0 ? { whirl: whirlOf(input, wings) } : {}),
  };
}

function crossingOf({ trace, dipAngle = 0 }: StabilityInput, { from, to, weight }: CrossingToReview): ReviewedCrossing {
  return {
    from: from.name,
    to: to.name,
    weight,
    intoHarder: to.response.specificEnergy >= from.response.specificEnergy,
    crossing: bedCrossing({ trace, above: from.response, below: to.response, weight, dipAngle }),
  };
}

function rubbingOf({ trace, bed, body }: StabilityInput, advance: number): ReviewedRubbing | undefined {
  if (!body) return undefined;
  const lands = wingLands({ trace, ...body });
  if (lands.wings.length === 0) return undefined;
  return { lands, first: firstRubs(lands), wings: wingLoads(lands, bed.response, advance) };
}

function stringOf(input: StabilityInput, loads: BedLoads, advance: number, wings: number): ReviewedString | undefined {
  const { string, weight, rotarySpeed } = input;
  if (!string || wings === 0) return undefined;
  const { sections, lengths, topHeadMass = 0, twistDamping = USUAL_TWIST_DAMPING } = string;
  requireNotNegative({ topHeadMass, twistDamping });
  const mode = stringMode(sections);
  const slopes = bitSlopes({ loads, advance, wings });
  const mass = mode.mass + topHeadMass;
  const scaled = scaledBit({ ...mode, mass }, slopes);
  const limit = axialLimitSpeed({ weightSlope: slopes.weightSlope, wings, mass });
  const scaledWeight = weight / scaled.weightScale;
  const scaledSpeed = rotarySpeed * scaled.timeScale;
  const running = { bit: scaled, scaledWeight, scaledSpeed };
  return {
    mode,
    slopes,
    scaled,
    mass,
    axialLimitSpeed: limit,
    // On the limit the bit swings at √(2 n ψ)/t*, which is √(2 n (dW/dd)/M): n/2 times the limit speed.
    feedHolds: mode.axialSpeed > (wings / 2) * limit,
    ...(rotarySpeed > limit ? { neededDamping: neededDamping(running) } : {}),
    twistDamping,
    march: marchSelfExcitation({
      ...running,
      duration: marchLongEnough({ wings, scaledSpeed }),
      twistDamping,
      start: SLIGHT_KICK,
    }),
    avoid: resonanceWindows({ string: mode, wings }),
    inStep: lengthsInStep({
      sections,
      ...(lengths ?? { shortest: mode.length, longest: mode.length }),
      rotarySpeed,
      wings,
    }),
  };
}

function whirlOf({ trace, rotarySpeed, gaugeClearance = 0 }: StabilityInput, wings: number): ReviewedWhirl {
  const bitDiameter = trace.layout.holeDiameter;
  const lobes = [1, 2, 3].map((number) => whirlLobes({ wings, number }));
  if (!(gaugeClearance > 0)) return { lobes };
  return {
    lobes,
    whirlSpeed: backwardWhirlSpeed({ rotarySpeed, bitDiameter, holeDiameter: bitDiameter + gaugeClearance }),
  };
}
