import {
  type BitChoices,
  type BitLayout,
  band,
  bedCrossing,
  bitPrice,
  type CandidateBit,
  type CandidateBlow,
  type CandidateFigures,
  type CuttingKernel,
  cheapestPull,
  derivedFrom,
  type Finding,
  handlingPerLength,
  type LifeInput,
  lifeMarch,
  type MarchedLife,
  runToEnd,
  timePrice,
  traceEdges,
  WEAR_COEFFICIENT,
} from "@bitwright/engine";
import type { ResolvedBitSpec, ResolvedTraveler } from "../document/resolved-traveler.ts";
import { type BitInGround, bitInGround } from "../stations/bit-in-ground.ts";
import type { BedCut } from "../stations/cut-station.ts";
import { lifeQuestion } from "../stations/life-station.ts";
import type { Workup } from "../workup.ts";
import { specOf } from "./choice-options.ts";

/** A candidate that was worked up, with what a later look at it needs. */
export interface WorkedCandidate {
  readonly bit: CandidateBit;
  /** What a person would write in the traveler to have this bit. */
  readonly spec: ResolvedBitSpec;
  readonly layout: BitLayout;
  readonly beds: readonly BedCut[];
  /** Codes of the stops that were met. */
  readonly stops: readonly Finding[];
}

/** The parts of a job that no candidate changes. */
export interface ChoiceJob extends Pick<Workup, "inquiry" | "ground" | "advice"> {
  /** What runs the loops; no figure depends on it. */
  readonly kernel: CuttingKernel | undefined;
}

/**
 * Takes one candidate through the same stations as the traveler's own bit, and marches its life. `ofJob` are codes of stops
 * that stand against any bit and exclude none.
 */
export function workedCandidate(job: ChoiceJob, choices: BitChoices, ofJob: ReadonlySet<string>): WorkedCandidate {
  const { inquiry: traveler, advice, kernel } = job;
  const spec = specOf(traveler, advice, choices);
  const changed: ResolvedTraveler = { ...traveler, bit: spec };
  const inGround = bitInGround(changed, job);
  const { bit, cut, flow } = inGround;
  const stops = [...bit.findings, ...cut.findings, ...flow.findings].filter(({ severity }) => severity === "stop");
  const against = stops.filter(({ code }) => !ofJob.has(code));
  const common = { spec, layout: bit.layout, beds: cut.beds.map(lean), stops };
  const made = (excludedBy: readonly Finding[], figures?: CandidateFigures): WorkedCandidate => ({
    ...common,
    bit: { choices, inWords: bit.inWords, excludedBy, ...(figures ? { figures } : {}) },
  });
  if (against.length > 0) return made(against);
  const question = { advice, ...inGround };
  const { input } = lifeQuestion(changed, question, { kernel });
  if (input.beds.length === 0) return made([]);
  const lived = runToEnd(lifeMarch(input) as Iterator<unknown, MarchedLife, undefined>);
  const figures = figuresOf(changed, inGround, input, lived);
  return figures ? made([], figures) : made([neverDrills(lived, input)]);
}

/** A bed without the workings, which many candidates together would fill the memory with. */
function lean({ drilling, run, ...bed }: BedCut): BedCut {
  return { ...bed, run: { ...run, working: [] }, drilling: { ...drilling, working: [], cutters: [] } };
}

/** Every figure of a candidate; nothing where it drills no hole. */
function figuresOf(
  { prices, inquiry }: ResolvedTraveler,
  { bit, cut }: BitInGround,
  input: LifeInput,
  { steps, end }: MarchedLife,
): CandidateFigures | undefined {
  const hole = cut.beds.reduce((sum, { bed }) => sum + bed.bottom - bed.top, 0);
  const faceDiameters = bit.layout.cutters.map(({ faceDiameter }) => faceDiameter);
  const price = bitPrice({ bit: { material: bit.review.body.material, faceDiameters }, sheet: prices });
  const time = timePrice(prices);
  const { tripTime, connectionTime } = prices;
  const { jointLength } = inquiry.pipe;
  const cost = {
    bitPrice: price,
    timePrice: time,
    otherPrice: prices.otherPrice,
    handlingPerLength: handlingPerLength({ tripTime, holeLength: hole, connectionTime, jointLength }),
    points: steps,
  };
  const pull = cheapestPull(cost);
  const { low, mid, high } = WEAR_COEFFICIENT;
  const [slow, fast] = [low / mid, high / mid].map((wearFactor) => cheapestPull({ ...cost, wearFactor }));
  const last = steps.at(-1);
  if (!pull || !slow || !fast || !last) return undefined;
  const until = steps.slice(0, pull.pointIndex + 1);
  const hottest = until.reduce((most, { hottestTemperature }) => Math.max(most, hottestTemperature), 0);
  const { footage } = last;
  const worn = end.by !== "holes drilled";
  const over = (rate: (bed: BedCut) => number) =>
    hole / cut.beds.reduce((sum, one) => sum + (one.bed.bottom - one.bed.top) / rate(one), 0);
  const { slotArea, largestPort } = bit.review.body;
  return {
    costPerLength: band(slow.costPerLength, pull.costPerLength, fast.costPerLength),
    bitPrice: price,
    bitCost: price / pull.footage,
    drillingCost: (time * pull.timeOnBottom) / pull.footage,
    pulledAt: pull.footage,
    footage: band((footage * mid) / high, footage, worn ? (footage * mid) / low : footage),
    freshRate: {
      low: over(({ rate }) => rate.low),
      mid: over(({ rate }) => rate.mid),
      high: over(({ rate }) => rate.high),
    },
    meanRate: pull.footage / pull.timeOnBottom,
    timeOnBottom: pull.timeOnBottom,
    heatMargin: (input.tableLimit ?? 0) - hottest,
    sideForceShare: Math.max(...cut.beds.map(({ drilling }) => drilling.bit.lateralShare)),
    cutters: faceDiameters.length,
    ...(slotArea === undefined ? {} : { slotArea }),
    ...(largestPort === undefined ? {} : { largestPort }),
  };
}

function neverDrills({ end }: MarchedLife, { beds }: LifeInput): Finding {
  const held = end.binds === undefined ? "" : `, held by ${end.binds}`;
  return {
    code: "drills-nothing",
    severity: "stop",
    where: beds[0].name,
    message: `The bit is done before it drills anything: ${end.by}${held}.`,
    ...(end.value === undefined || end.limit === undefined || end.unit === undefined
      ? {}
      : { value: end.value, limit: end.limit, unit: end.unit }),
    source: derivedFrom("the first stretch of its life"),
  };
}

/** The heaviest blow on any one cutter at the boundaries of the column, at the weight of the bed it comes from. */
export function blowOf({ layout, beds }: Pick<WorkedCandidate, "layout" | "beds">): CandidateBlow | undefined {
  const trace = traceEdges(layout);
  let worst: CandidateBlow | undefined;
  for (const [at, below] of beds.entries()) {
    const above = beds[at - 1];
    if (!above || above.bed.bottom !== below.bed.top || !(above.weight > 0)) continue;
    const { peak } = bedCrossing({
      trace,
      above: above.ground.response.mid,
      below: below.ground.response.mid,
      weight: above.weight,
    });
    if (!worst || peak.force > worst.peakForce) {
      const { force: peakForce, overloadRatio } = peak;
      worst = { from: above.bed.name, into: below.bed.name, peakForce, overloadRatio };
    }
  }
  return worst;
}
