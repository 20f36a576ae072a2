import { catalogCutter, type SpeedWindow, tradeBevels } from "@bitwright/engine";
import {
  type ChoiceLimits,
  type FlowChange,
  type Problem,
  parseQuantity,
  problem,
  type QuantityKind,
  type QuantityLimits,
} from "@bitwright/traveler";
import type { AskedStudy, StudyOptions } from "./study-kinds.ts";
import { StudyRefused } from "./study-refused.ts";

/** What is wrong with the quantities among the options of a study; they are typed as in a traveler. */
export function problemsOfOptions({ kind, options }: AskedStudy): Problem[] {
  try {
    if (kind === "map") windowsOf(options.avoid ?? []);
    if (kind === "flow") flowChangeOf(options);
    return [];
  } catch (error) {
    if (error instanceof StudyRefused) return [error.problem];
    throw error;
  }
}

/** Speeds to keep out of, in SI. */
export function windowsOf(avoid: NonNullable<StudyOptions<"map">["avoid"]>): SpeedWindow[] {
  return avoid.map(({ from, to }, at) => {
    const field = `options.avoid[${at}]`;
    const limits = { least: "1 rpm", most: "1000 rpm" };
    const low = siOf("rotary speed", `${field}.from`, from, limits);
    const high = siOf("rotary speed", `${field}.to`, to, limits);
    if (low < high) return { from: low, to: high, why: "as given" };
    throw new StudyRefused(problem({ field, got: `"${from}" to "${to}"`, expected: "give the slower speed first" }));
  });
}

/** What is changed in the circuit, in SI. */
export function flowChangeOf({ ports, pumps, flow }: StudyOptions<"flow">): FlowChange {
  const diameterLimits = { least: "1/8 in", most: "6 in" };
  const flowLimits = { least: "1 gpm", most: "5000 gpm" };
  return {
    ...(ports === undefined
      ? {}
      : {
          ports: {
            count: ports.count,
            diameter: siOf("diameter", "options.ports.diameter", ports.diameter, diameterLimits),
          },
        }),
    ...(pumps === undefined ? {} : { pumps }),
    ...(flow === undefined ? {} : { flow: siOf("flow", "options.flow", flow, flowLimits) }),
  };
}

/** The candidates that a choice is narrowed to. */
export function choiceLimitsOf({ cutter, wings, bevel, body }: StudyOptions<"rank">): ChoiceLimits {
  const degrees = (angle: number) => Math.round((angle * 180) / Math.PI);
  return {
    ...(cutter === undefined ? {} : { cutter: cutter.map((code) => catalogCutter(code).code) }),
    ...(wings === undefined ? {} : { wings: [...new Set(wings)] }),
    ...(bevel === undefined ? {} : { chamfer: tradeBevels().filter(({ angle }) => bevel.includes(degrees(angle))) }),
    ...(body === undefined ? {} : { body }),
  };
}

function siOf(kind: QuantityKind, field: string, text: string, limits: QuantityLimits): number {
  const parsed = parseQuantity(kind, text, field, limits);
  if (!parsed.ok) throw new StudyRefused(parsed.problem);
  return parsed.value.si;
}
