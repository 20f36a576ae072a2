import {
  type BitChoices,
  type CandidateBit,
  type CandidateRanking,
  CHOICE_NAMES,
  type ChoiceName,
  compiledKernel,
  type Finding,
  type RuleCheck,
  rankCandidates,
  ruleChecks,
  runToEnd,
  type StagedChoice,
  sameChoice,
  sameChoices,
  stagedChoice,
} from "@bitwright/engine";
import type { ResolvedBitSpec } from "../document/resolved-traveler.ts";
import type { Workup } from "../workup.ts";
import { blowOf, type WorkedCandidate, workedCandidate } from "./choice-candidate.ts";
import { type ChoiceLimits, choicesOfJob, type JobChoices } from "./choice-options.ts";
import { isAmong, stagesOf, startOf } from "./choice-stages.ts";
import { everyPoint } from "./every-point.ts";

/** What to choose from. */
export interface ChoiceStudyOptions {
  /** Options to keep to; all that the job allows where not given. */
  readonly limits?: ChoiceLimits;
  /** Every combination is looked at, and none left out; as it is a staged search is made. */
  readonly whole?: boolean;
  /** Asked after every candidate; true ends the study with what it has. */
  readonly shouldStop?: () => boolean;
}

/** How far a study of candidates has come. */
export interface ChoiceStudyProgress {
  /** Candidates looked at [-]. */
  readonly looked: number;
  /** Combinations there are, of which a staged search looks at some [-]. */
  readonly of: number;
  /** The candidate it is at, in words. */
  readonly at: string;
}

/** Candidate bits for a job, ranked by what a length of hole costs with them. */
export interface ChoiceStudy extends JobChoices {
  readonly ranking: CandidateRanking;
  /** The bit of the rules, as it was looked at. */
  readonly byRule: CandidateBit;
  /** Each rule beside the first of the ranking; empty where no bit can be ranked. */
  readonly checks: readonly RuleCheck[];
  /** What a person would write in the traveler to have the first of the ranking. */
  readonly bestSpec?: ResolvedBitSpec;
  /** How the search went; absent where it was stopped or looked at everything. */
  readonly search?: StagedChoice;
  /** Candidates looked at, the bit of the rules left out where it is none of the combinations [-]. */
  readonly looked: number;
  /** Combinations there are [-]. */
  readonly of: number;
  /** Whether it was stopped before its end. */
  readonly stopped: boolean;
  /** Stops that stand against any bit for this job, and excluded none. */
  readonly ofJob: readonly Finding[];
}

/** Candidates whose way through the boundaries is worked out: those a person will look at [-]. */
const LOOKED_CLOSELY = 10;

/** Ranks the bits that there are to choose from; nothing where the bit drills nothing of its hole. */
export function choiceStudy(
  workup: Workup,
  options: ChoiceStudyOptions & {
    /** Told after every candidate. */
    readonly progress?: (at: ChoiceStudyProgress) => void;
  } = {},
): ChoiceStudy | undefined {
  return runToEnd(choiceStudyInSteps(workup, options), options.progress);
}

/** The same a candidate at a time, for a caller that has to look after other things in between. */
export function* choiceStudyInSteps(
  workup: Workup,
  { limits, whole = false, shouldStop = () => false }: ChoiceStudyOptions = {},
): Generator<ChoiceStudyProgress, ChoiceStudy | undefined, void> {
  if (workup.cut.beds.length === 0) return undefined;
  const { inquiry, ground, advice } = workup;
  const withKernel = { inquiry, ground, advice, kernel: compiledKernel() };
  const job = choicesOfJob(inquiry, advice, limits);
  const { options, rules, kept } = job;
  const stages = stagesOf(job);
  const of = stages.reduce((product, { length }) => product * length, 1);
  const seen: WorkedCandidate[] = [];
  const known = (choices: BitChoices) => seen.find(({ bit }) => sameChoices(bit.choices, choices));
  const first = workedCandidate(withKernel, rules, new Set());
  const ofJob = first.stops.filter(({ code }) => STOPS_OF_THE_JOB.has(code));
  const codes = new Set(ofJob.map(({ code }) => code));
  const look = (choices: BitChoices): WorkedCandidate => {
    const before = known(choices);
    if (before) return before;
    const worked = workedCandidate(withKernel, choices, codes);
    seen.push(worked);
    return worked;
  };
  const byRule = look(rules);
  const told = ({ bit }: WorkedCandidate): ChoiceStudyProgress => ({ looked: seen.length, of, at: bit.inWords });
  yield told(byRule);
  const start = startOf(stages, rules);
  const counts = stages.map(({ length }) => length);
  const search = whole ? everyPoint(counts) : stagedChoice({ counts, start });
  let stopped = shouldStop();
  let step = search.next();
  while (!step.done && !stopped) {
    const choices = Object.assign({}, ...step.value.map((option, at) => stages[at][option])) as BitChoices;
    const worked = look(choices);
    yield told(worked);
    stopped = shouldStop();
    step = search.next(worked.bit.excludedBy.length > 0 ? undefined : worked.bit.figures?.costPerLength.mid);
  }
  // The rule's own choices beside the best may lie outside what was to be chosen from; each is one more look.
  const withRule = (choice: ChoiceName, { choices }: CandidateBit) => ({ ...choices, [choice]: rules[choice] });
  const among = () => seen.map(({ bit }) => bit).filter(({ choices }) => isAmong(choices, options));
  const [ahead] = rankCandidates(among()).ranked;
  if (ahead) {
    for (const choice of CHOICE_NAMES) {
      if (stopped || kept.includes(choice) || sameChoice(choice, ahead.candidate.choices, rules)) continue;
      yield told(look(withRule(choice, ahead.candidate)));
      stopped = shouldStop();
    }
  }
  const inOrder = rankCandidates(among()).ranked.map(({ candidate }) => candidate);
  const best = inOrder[0];
  const closely = new Set<CandidateBit>([...inOrder.slice(0, LOOKED_CLOSELY), byRule.bit]);
  for (const choice of best ? CHOICE_NAMES : []) {
    const variant = known(withRule(choice, best));
    if (variant) closely.add(variant.bit);
  }
  const struck = new Map(seen.filter(({ bit }) => closely.has(bit)).map((one) => [one.bit, withBlow(one)]));
  const shown = (bit: CandidateBit) => struck.get(bit) ?? bit;
  const ranking = rankCandidates(among().map(shown));
  const winner = ranking.ranked[0]?.candidate;
  const bestSpec = winner && known(winner.choices)?.spec;
  return {
    ...job,
    ranking,
    byRule: shown(byRule.bit),
    checks: winner
      ? ruleChecks({
          best: winner,
          rules,
          kept,
          withRule: (choice) => {
            const variant = known(withRule(choice, winner));
            return variant && shown(variant.bit);
          },
        })
      : [],
    ...(bestSpec ? { bestSpec } : {}),
    ...(step.done && step.value ? { search: step.value } : {}),
    looked: among().length,
    of,
    stopped,
    ofJob,
  };
}

/** Stops that pump, hole and casing meet with any bit; they say nothing for one bit or another. */
const STOPS_OF_THE_JOB: ReadonlySet<string> = new Set([
  "bit-sticks-in-casing",
  "flow.cooling-floor",
  "flow.uphole-least",
  "flow.chips-do-not-rise",
  "air-too-little",
  "flow.pump-pressure",
  "flow.port-lump",
]);

function withBlow(worked: WorkedCandidate): CandidateBit {
  const blow = worked.bit.excludedBy.length === 0 ? blowOf(worked) : undefined;
  return blow ? { ...worked.bit, blow } : worked.bit;
}
