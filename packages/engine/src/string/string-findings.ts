import { commonPractice, derivedFrom, type Finding, readIn } from "../quantity/index.ts";
import { pinFindings } from "./pin-for-bit-size.ts";
import { motionFindings } from "./string-motion-findings.ts";
import type { CollarsForWeight, StringFigures, StringStationInput } from "./string-state.ts";
import { torqueFindings } from "./torque-findings.ts";
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

function neutralPointFindings(
  { makeUp, depth }: StringStationInput,
  { neutralPoint, collarsForWeight }: StringFigures,
): Finding[] {
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
      ...moreCollars(makeUp.collars.length, collarsForWeight),
    ];
  }
  if (neutralPoint.part === "pipe") {
    const message =
      "No collars: pipe gives the weight and is pressed up to the neutral point. Look at its joints for wear.";
    return [{ ...base, code: "string.no-collars", severity: "note", message }];
  }
  return [];
}

/** How much collar would carry the whole weight, where those there are do not. */
function moreCollars(length: number, enough: CollarsForWeight | undefined): Finding[] {
  if (!enough) return [];
  return [
    {
      code: "string.collars-for-neutral-point",
      severity: "note",
      where: "neutral point",
      message:
        "So much of these collars in all would carry the whole weight, and the pipe above them would hang straight. Worth it where the hole has to be plumb or joints wear.",
      value: enough.collarLength,
      limit: length,
      unit: "m",
      source: readIn("Lyons, Carter & Lapeyrouse 2012, with 0.85 of the collars' weight used"),
    },
  ];
}
