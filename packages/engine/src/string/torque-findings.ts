import { commonPractice, derivedFrom, type Finding, recalledFrom } from "../quantity/index.ts";
import type { StringFigures, StringStationInput } from "./string-state.ts";

/**
 * Share of a new pipe's torsional yield that a used one may be trusted with [-].
 *
 * @source (c) common practice, no source: a fifth of the wall worn leaves about three quarters
 */
const USED_PIPE_SHARE = 0.75;

/** Torque of drilling against the bit's joint, the pipe and the rig. */
export function torqueFindings(input: StringStationInput, figures: StringFigures): Finding[] {
  return [...jointFindings(input, figures), ...pipeFindings(input, figures), ...rotaryFindings(input)];
}

function jointFindings(input: StringStationInput, { makeUpTorque }: StringFigures): Finding[] {
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
  return findings;
}

function pipeFindings({ drillingTorque }: StringStationInput, { torsionalYield }: StringFigures): Finding[] {
  if (drillingTorque === undefined || torsionalYield === undefined) return [];
  const held = { where: "pipe", value: drillingTorque, unit: "N·m", source: recalledFrom("API RP 7G") };
  if (drillingTorque > torsionalYield) {
    const message = "Drilling asks for more torque than new pipe of this size bears: it twists off. Ease weight.";
    return [{ ...held, code: "string.pipe-twists-off", severity: "stop", message, limit: torsionalYield }];
  }
  if (drillingTorque > USED_PIPE_SHARE * torsionalYield) {
    const message =
      "The torque of drilling comes near what used pipe of this size bears. Ease weight, or look at walls and joints first.";
    const limit = USED_PIPE_SHARE * torsionalYield;
    return [{ ...held, code: "string.pipe-torque-near-yield", severity: "caution", message, limit }];
  }
  return [];
}

function rotaryFindings({ drillingTorque, torqueRating }: StringStationInput): Finding[] {
  if (drillingTorque === undefined || torqueRating === undefined || drillingTorque <= torqueRating) return [];
  return [
    {
      code: "string.rig-torque-short",
      severity: "caution",
      where: "rotary",
      message: "The bit asks for more torque than the rig has: it will stall. Ease weight, or a bit that bites less.",
      value: drillingTorque,
      limit: torqueRating,
      unit: "N·m",
      source: derivedFrom("torque expected at the bit against the rig's rating"),
    },
  ];
}
