import type { MessagePort } from "node:worker_threads";
import { type Sheet, sheetsOf } from "@bitwright/shop";
import { type Problem, studyJson, type UnitSystem, workupJson } from "@bitwright/traveler";
import { workedUp } from "./read-document.ts";
import { type StudyProgress, studyInSteps } from "./study-in-steps.ts";
import type { AskedStudy } from "./study-kinds.ts";
import { StudyRefused } from "./study-refused.ts";

/** What a thread answers: what was asked for, or what is wrong with the document. */
export type Answer<Result> =
  | { readonly ok: true; readonly value: Result }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** How many remarks of each kind a workup carries [-]. */
export interface FindingCounts {
  readonly stop: number;
  readonly caution: number;
  readonly note: number;
}

/** A study as it is handed to a thread. */
export interface StudyOrder {
  readonly text: string;
  readonly program: string;
  readonly asked: AskedStudy;
  /** One flag, raised to 1 when the study is to end with what it has. */
  readonly stop: Int32Array;
  /** Where progress is told. */
  readonly port: MessagePort;
}

/** What a study tells on its way. */
export interface StudyWord extends StudyProgress {
  /** It has heard that it is to end, and ends with what it has. */
  readonly ending?: boolean;
}

/** A finished or stopped study. */
export interface StudyAnswer {
  /** The study as JSON text in SI; `null` where there was nothing to look at. */
  readonly json: string;
  readonly sheets: readonly Sheet[];
}

/** Time between two words of progress [ms]. */
const BETWEEN_WORDS = 100;

/** Answers as soon as a thread has loaded its code. */
export function ready(): true {
  return true;
}

/** Works a document up and counts what there is to remark. */
export function findings({ text }: { readonly text: string }): Answer<FindingCounts> {
  return answered(text, (workup) => {
    const count = (severity: keyof FindingCounts) => workup.findings.filter((one) => one.severity === severity).length;
    return { stop: count("stop"), caution: count("caution"), note: count("note") };
  });
}

/** Works a document up; the workup as JSON text in SI. */
export function workup({ text }: { readonly text: string }): Answer<string> {
  return answered(text, workupJson);
}

/** Works a document up and makes its sheets. */
export function sheets(order: {
  readonly text: string;
  readonly units: UnitSystem;
  readonly program: string;
}): Answer<Sheet[]> {
  return answered(order.text, (worked) => sheetsOf(worked, order));
}

/** Works a document up and prints its driller's card; the bytes of a PDF. */
export async function cardPdf(order: {
  readonly text: string;
  readonly units: UnitSystem;
  readonly program: string;
}): Promise<Answer<Uint8Array>> {
  // Loaded when a card is first printed: the typesetter is large.
  const { cardPrint } = await import("@bitwright/shop/print");
  return answered(order.text, (worked) => cardPrint(worked, order).pdf);
}

/** Runs a study, telling how far it is, until it ends or is stopped. */
export function study({ text, program, asked, stop, port }: StudyOrder): Answer<StudyAnswer> {
  let last: StudyProgress = { done: 0, doing: "working the traveler up" };
  let ending = false;
  const tell = (word: StudyWord) => port.postMessage(word);
  const shouldStop = () => {
    if (!ending && Atomics.load(stop, 0) === 1) {
      ending = true;
      tell({ ...last, doing: "ending with what it has", ending });
    }
    return ending;
  };
  try {
    tell(last);
    return answered(text, (worked) => {
      const steps = studyInSteps({ workup: worked, program, shouldStop }, asked);
      let next = 0;
      for (let step = steps.next(); ; step = steps.next()) {
        if (step.done) return { json: jsonOf(step.value.study), sheets: step.value.sheets };
        last = step.value;
        if (ending || performance.now() < next) continue;
        tell(last);
        next = performance.now() + BETWEEN_WORDS;
      }
    });
  } catch (error) {
    if (error instanceof StudyRefused) return { ok: false, problems: [error.problem] };
    throw error;
  } finally {
    port.close();
  }
}

/** In one line, as an event is; a text in JSON never holds a bare end of line. */
const jsonOf = (found: object | undefined) => (found === undefined ? "null" : studyJson(found).replace(/\n */g, ""));

function answered<Result>(text: string, use: (worked: Parameters<typeof sheetsOf>[0]) => Result): Answer<Result> {
  const worked = workedUp(text);
  return worked.ok ? { ok: true, value: use(worked.workup) } : worked;
}
