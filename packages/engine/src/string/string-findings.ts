import { commonPractice, derivedFrom, type Finding } from "../quantity/index.ts";
import { pinFindings } from "./pin-for-bit-size.ts";
import { motionFindings } from "./string-motion-findings.ts";
import type { StringFigures, StringStationInput } from "./string-state.ts";
import type { JointRow } from "./weight-by-depth.ts";

/**
 * What an engineer would remark on a string; messages leave figures to `value` and `limit`, which carry their unit.
 *
 * @source (d) the string's figures against the rig's ratings; customs marked as such
 */
export function stringFindings(input: StringStationInput, figures: StringFigures): Finding[] {
  const { bitDiameter, thread } = input;
  return [
    ...feedFindings(input, figures),
    ...ratingFindings(input, figures),
    ...neutralPointFindings(input, figures),
    ...torqueFindings(input, figures),
    ...motionFindings(input, figures),
    ...pinFindings({ bitDiameter, ...(thread === undefined ? {} : { thread }) }),
  ];
}

const BALANCE = derivedFrom("balance of forces along the string");

function feedFindings({ depth }: StringStationInput, figures: StringFigures): Finding[] {
  const findings: Finding[] = [];
  if (figures.balanceDepth < depth) {
    findings.push({
      code: "string.hold-back",
      severity: "caution",
      where: "feed",
      message:
        "Below this depth the string alone is heavier than the weight wanted: hold back, do not push. Pushing here overloads the cutters.",
      value: figures.balanceDepth,
      limit: depth,
      unit: "m",
      source: BALANCE,
    });
  }
  const fullFrom = figures.fullWeightDepth;
  if (fullFrom !== undefined && fullFrom > figures.rows[0].depth) {
    findings.push({
      code: "string.pull-down-short",
      severity: "caution",
      where: "feed",
      message:
        "Above this depth the rig cannot push the weight wanted. Drill with what there is, start with a collar, or take a bit that needs less.",
      value: Math.min(fullFrom, depth),
      unit: "m",
      source: BALANCE,
    });
  }
  return findings;
}

function ratingFindings(
  { limits, topHeadWeight = 0, drag = 0 }: StringStationInput,
  { rows }: StringFigures,
): Finding[] {
  const findings: Finding[] = [];
  const lift = (row: JointRow) => row.hangingWeight + topHeadWeight + drag;
  const { hoistRating = Number.POSITIVE_INFINITY } = limits ?? {};
  const hoist = rows.find((row) => lift(row) > hoistRating);
  if (hoist) {
    findings.push({
      code: "string.hoist-short",
      severity: "stop",
      where: `joint ${hoist.joint}`,
      message: "From this joint on the string is heavier than the hoist may lift. Lighter pipe or a larger rig.",
      value: lift(rows[rows.length - 1]),
      limit: hoistRating,
      unit: "N",
      source: BALANCE,
    });
  }
  const joint = rows.find((row) => row.verdict === "top joint overloaded");
  if (joint && limits?.topJointRating !== undefined) {
    findings.push({
      code: "string.top-joint-overloaded",
      severity: "stop",
      where: `joint ${joint.joint}`,
      message: "The load on the topmost joint passes what it may carry. Heavier pipe, less push, or a lighter string.",
      value: Math.max(joint.feedForce, lift(joint)),
      limit: limits.topJointRating,
      unit: "N",
      source: BALANCE,
    });
  }
  return findings;
}

function neutralPointFindings({ makeUp, depth }: StringStationInput, { neutralPoint }: StringFigures): Finding[] {
  const base = { where: "neutral point", value: neutralPoint.aboveBit, unit: "m", source: commonPractice() };
  if (neutralPoint.part === "above the string") {
    const message =
      "At the largest weight wanted the whole string stays pressed even at full depth. Expect the pipe to lean on the wall; keep the hole straight and the joints tight.";
    return [{ ...base, code: "string.pressed-throughout", severity: "note", message, limit: depth }];
  }
  if (neutralPoint.part === "pipe" && makeUp.collars) {
    const message =
      "The neutral point lies in the pipe, above the collars: the pipe is pressed, bends and wears. More collars or less weight.";
    return [
      { ...base, code: "string.neutral-point-in-pipe", severity: "caution", message, limit: makeUp.collars.length },
    ];
  }
  if (neutralPoint.part === "pipe") {
    const message =
      "No collars: pipe gives the weight and is pressed up to the neutral point. Look at its joints for wear.";
    return [{ ...base, code: "string.no-collars", severity: "note", message }];
  }
  return [];
}

function torqueFindings(input: StringStationInput, { makeUpTorque }: StringFigures): Finding[] {
  const { thread, subDiameter, torqueRating, drillingTorque } = input;
  if (thread === undefined || subDiameter === undefined) return [];
  const where = `bit joint, ${thread}`;
  if (!makeUpTorque) {
    const message =
      "No make-up torque is listed for a sub this small on this thread. Ask for the sub's outer diameter.";
    return [
      {
        code: "string.make-up-unknown",
        severity: "caution",
        where,
        message,
        value: subDiameter,
        unit: "m",
        source: commonPractice(),
      },
    ];
  }
  const { least, normal, source } = makeUpTorque;
  const findings: Finding[] = [];
  if (torqueRating !== undefined && torqueRating < least) {
    findings.push({
      code: "string.make-up-short",
      severity: "caution",
      where,
      message:
        "The rig cannot make this joint up to its least torque; it will go on making up in the hole, and bits are lost that way. Use tongs with a gauge, thread compound, and clean shoulders.",
      value: torqueRating,
      limit: least,
      unit: "N·m",
      source,
    });
  }
  const madeUp = Math.min(torqueRating ?? normal, normal);
  if (drillingTorque !== undefined && drillingTorque > madeUp) {
    findings.push({
      code: "string.torque-above-make-up",
      severity: "caution",
      where,
      message:
        "Drilling asks for more torque than the joint is made up to: it turns further in the hole and may gall or break. Ease weight, or a larger connection.",
      value: drillingTorque,
      limit: madeUp,
      unit: "N·m",
      source,
    });
  }
  if (drillingTorque !== undefined && torqueRating !== undefined && drillingTorque > torqueRating) {
    findings.push({
      code: "string.rig-torque-short",
      severity: "caution",
      where: "rotary",
      message: "The bit asks for more torque than the rig has: it will stall. Ease weight, or a bit that bites less.",
      value: drillingTorque,
      limit: torqueRating,
      unit: "N·m",
      source: derivedFrom("torque expected at the bit against the rig's rating"),
    });
  }
  return findings;
}
