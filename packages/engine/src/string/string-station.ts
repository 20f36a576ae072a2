import { gravestFirst } from "../quantity/index.ts";
import { balanceDepth } from "./balance-depth.ts";
import { buoyancyFactor } from "./buoyancy-factor.ts";
import { collarNeeded, collarsForWeight } from "./collar-needed.ts";
import { criticalRotarySpeed } from "./critical-rotary-speed.ts";
import { makeUpTorque } from "./make-up-torque.ts";
import { rotaryPower } from "./rotary-power.ts";
import { stringFindings } from "./string-findings.ts";
import { lengthThatWeighs } from "./string-make-up.ts";
import type { NeutralPoint, StringFigures, StringStation, StringStationInput } from "./string-state.ts";
import { stringTwist } from "./string-twist.ts";
import { stringWorking } from "./string-working.ts";
import { torsionalYield } from "./torsional-yield.ts";
import { weightByDepth } from "./weight-by-depth.ts";

/**
 * What the rig has to push or hold back at each joint, where the neutral point is, what the bit's joint needs, and what
 * an engineer would remark on.
 *
 * @throws RangeError when a length, weight or torque is out of range
 * @source (d) balance of forces along the string; each relation names its own source in the workings
 */
export function stringStation(input: StringStationInput): StringStation {
  const figures = stringFigures(input);
  return {
    ...figures,
    findings: gravestFirst(stringFindings(input, figures)),
    working: stringWorking(input, figures),
  };
}

function stringFigures(input: StringStationInput): StringFigures {
  const { limits, thread, subDiameter, drillingTorque, rotarySpeed, torsionalStiffness, pipeSize } = input;
  const { yieldStrength } = input;
  const collar = collarNeeded(input);
  const enough = collarsForWeight(input);
  const pullDown = limits?.pullDownRating;
  const torqueRow =
    thread !== undefined && subDiameter !== undefined ? makeUpTorque({ thread, subDiameter }) : undefined;
  return {
    buoyancyFactor: buoyancyFactor(input.fluidDensity),
    rows: weightByDepth(input),
    balanceDepth: balanceDepth(input),
    ...(pullDown === undefined ? {} : { fullWeightDepth: fullWeightDepth(input, pullDown) }),
    neutralPoint: neutralPoint(input),
    ...(torqueRow ? { makeUpTorque: torqueRow } : {}),
    ...(collar ? { collar } : {}),
    ...(enough ? { collarsForWeight: enough } : {}),
    ...(pipeSize && yieldStrength !== undefined
      ? { torsionalYield: torsionalYield({ ...pipeSize, yieldStrength }) }
      : {}),
    ...(drillingTorque !== undefined && torsionalStiffness !== undefined
      ? { twist: stringTwist({ torque: drillingTorque, torsionalStiffness }) }
      : {}),
    ...(pipeSize
      ? { criticalSpeed: criticalRotarySpeed({ ...pipeSize, jointLength: input.makeUp.pipe.jointLength }) }
      : {}),
    ...(drillingTorque !== undefined && rotarySpeed !== undefined
      ? { rotaryPower: rotaryPower({ torque: drillingTorque, rotarySpeed }) }
      : {}),
  };
}

/** What the rig does not push must hang: drag counts before anything can be too much. */
function fullWeightDepth(input: StringStationInput, pullDown: number): number {
  const { makeUp, fluidDensity, targetWeight, topHeadWeight = 0, drag = 0 } = input;
  const hanging = targetWeight - pullDown + drag - topHeadWeight;
  return lengthThatWeighs({ makeUp, fluidDensity, weight: Math.max(0, hanging) });
}

function neutralPoint({ makeUp, fluidDensity, targetWeight, depth }: StringStationInput): NeutralPoint {
  const aboveBit = lengthThatWeighs({ makeUp, fluidDensity, weight: targetWeight });
  if (aboveBit > depth) return { aboveBit, part: "above the string" };
  return { aboveBit, part: aboveBit <= (makeUp.collars?.length ?? 0) ? "collars" : "pipe" };
}
