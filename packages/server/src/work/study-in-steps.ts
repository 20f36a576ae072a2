import {
  bandsSheets,
  choiceSheets,
  depthSheets,
  flowSheets,
  layoutSheets,
  lifeSheets,
  mapSheets,
  type Sheet,
  stabilitySheets,
} from "@bitwright/shop";

import {
  bandsStudyInSteps,
  choiceStudyInSteps,
  depthStudy,
  flowStudy,
  layoutQuestion,
  layoutStudyInSteps,
  lifeBandsInSteps,
  lifeStationInSteps,
  MOST_HOLES,
  mapStudyInSteps,
  portsStudy,
  problem,
  stabilityStudyInSteps,
  type Workup,
} from "@bitwright/traveler";
import { choiceLimitsOf, flowChangeOf, windowsOf } from "./study-inputs.ts";
import type { AskedStudy, StudyKind } from "./study-kinds.ts";
import { StudyRefused } from "./study-refused.ts";

/** How far a study has come. */
export interface StudyProgress {
  /** Steps done: samples, layouts, beds, candidates; hole under way for a life [-]. */
  readonly done: number;
  /** Steps there are, at most; absent where nobody knows [-]. */
  readonly of?: number;
  /** What it is at, in words. */
  readonly doing: string;
}

/** What a study has found. */
interface StudyFound {
  /** Absent where there is nothing to look at, as where the bit drills no bed of its hole. */
  readonly study?: object | undefined;
  /** Its sheets; empty where it has none. */
  readonly sheets: readonly Sheet[];
}

/** A workup that a study looks at, and who prints its sheets. */
export interface StudyQuestion {
  readonly workup: Workup;
  readonly program: string;
  readonly shouldStop: () => boolean;
}

/** A study that is done in a moment. */
const ONE_STEP: StudyProgress = { done: 0, of: 1, doing: "looking" };

type Steps = Generator<StudyProgress, StudyFound, void>;
type StepsOf<Kind extends StudyKind> = (
  question: StudyQuestion,
  options: Extract<AskedStudy, { kind: Kind }>["options"],
) => Steps;

/** Runs a study of any kind a step at a time. */
export function studyInSteps(question: StudyQuestion, asked: AskedStudy): Steps {
  const steps = STEPS[asked.kind] as StepsOf<StudyKind>;
  return steps(question, asked.options);
}

const STEPS: { readonly [Kind in StudyKind]: StepsOf<Kind> } = {
  *layout({ workup, program, shouldStop }, { units = "field", ...options }) {
    const question = layoutQuestion(workup, options);
    if (!question) {
      const wrong = "the cutters of a measured bit stand where they stand";
      throw new StudyRefused(problem({ field: "bit.kind", got: "measured", wrong, expected: "give a specification" }));
    }
    const steps = layoutStudyInSteps(workup, question, shouldStop);
    const study = yield* told(steps, ({ tried, of }) => ({ done: tried, of, doing: "trying layouts" }));
    return { study, sheets: layoutSheets(workup, study, { units, program }) };
  },
  *life({ workup, program, shouldStop }, { units = "field", samples, seed, ...options }) {
    const { holes = MOST_HOLES } = options;
    const marched = lifeStationInSteps(workup.inquiry, workup, { ...options, shouldStop });
    const station = yield* told(marched, ({ holeNumber, footage }) => ({
      done: holeNumber,
      of: holes,
      doing: `marching the wear, ${Math.round(footage)} m drilled`,
    }));
    const drawn = {
      ...options,
      ...(seed === undefined ? {} : { seed }),
      ...(samples === undefined ? {} : { samples }),
    };
    const spread =
      samples === undefined || shouldStop()
        ? undefined
        : yield* told(lifeBandsInSteps(workup, { ...drawn, shouldStop }), ({ done, of }) => ({
            done,
            of,
            doing: "drawing lives",
          }));
    const study = { ...station, ...(spread ? { spread } : {}) };
    return { study, sheets: lifeSheets(workup, station, { units, program }, spread) };
  },
  *bands({ workup, program, shouldStop }, { units = "field", ...options }) {
    const steps = bandsStudyInSteps(workup, { ...options, shouldStop });
    const study = yield* told(steps, ({ bed, done, of }) => ({ done, of, doing: `drawing samples in ${bed}` }));
    needsBed(workup, study, options.bed, shouldStop());
    return { study, sheets: study.beds.length === 0 ? [] : bandsSheets(workup, study, { units, program }) };
  },
  *map({ workup, program, shouldStop }, { units = "field", avoid = [], ...options }) {
    const steps = mapStudyInSteps(workup, { ...options, avoid: windowsOf(avoid), shouldStop });
    const study = yield* told(steps, ({ bed, done, of }) => ({ done, of, doing: `mapping ${bed}` }));
    needsBed(workup, study, options.bed, shouldStop());
    return { study, sheets: study.beds.length === 0 ? [] : mapSheets(workup, study, { units, program }) };
  },
  *rank({ workup, program, shouldStop }, { units = "field", all = false, ...options }) {
    const limits = choiceLimitsOf(options);
    const steps = choiceStudyInSteps(workup, { limits, whole: all, shouldStop });
    const study = yield* told(steps, ({ looked, of, at }) => ({ done: looked, of, doing: `looking at ${at}` }));
    return { study, sheets: study ? choiceSheets(workup, study, { units, program }) : [] };
  },
  *stability({ workup, program, shouldStop }, { units = "field", ...options }) {
    const steps = stabilityStudyInSteps(workup, { ...options, shouldStop });
    const study = yield* told(steps, ({ bed, done, of }) => ({ done, of, doing: `trying speeds in ${bed}` }));
    needsBed(workup, study, options.bed, shouldStop());
    return { study, sheets: stabilitySheets(workup, study, { units, program }) };
  },
  *depth({ workup, program }, { units = "field" }) {
    yield ONE_STEP;
    const study = depthStudy(workup);
    return { study, sheets: study.joints.length === 0 ? [] : depthSheets(workup, study, { units, program }) };
  },
  *flow({ workup, program }, { units = "field", ...options }) {
    yield ONE_STEP;
    const study = flowStudy(workup, flowChangeOf(options));
    return { study, sheets: study ? flowSheets(workup, study, { units, program }) : [] };
  },
  *ports({ workup }, { goal = "cleaning", sets }) {
    yield ONE_STEP;
    const study = portsStudy(workup, goal);
    return { study: { ...study, sets: study.sets.slice(0, sets ?? study.sets.length) }, sheets: [] };
  },
};

/** The steps of a study, each told in the words that all studies share. */
function* told<Step, Found>(
  steps: Generator<Step, Found, void>,
  words: (step: Step) => StudyProgress,
): Generator<StudyProgress, Found, void> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    yield words(step.value);
  }
}

/** A bed that was asked for by name must be there. */
function needsBed(
  { cut }: Workup,
  { beds }: { readonly beds: readonly unknown[] },
  asked: string | undefined,
  stopped: boolean,
): void {
  if (asked === undefined || stopped || beds.length > 0) return;
  const names = cut.beds.map(({ bed }, k) => `${k + 1} ${bed.name}`).join("; ");
  const expected =
    names === "" ? "the bit drills no bed of this hole" : `give a number, a name or a part of one: ${names}`;
  const got = JSON.stringify(asked);
  throw new StudyRefused(problem({ field: "options.bed", got, wrong: `no bed is named ${got}`, expected }));
}
