import {
  commonPractice,
  derivedFrom,
  type Finding,
  type RateLimitName,
  type RunningMap,
  type SpeedWindow,
} from "@bitwright/engine";
import type { RuleBox } from "./rule-box.ts";

const LIMIT_WORDS: Readonly<Record<RateLimitName, string>> = {
  weight: "what rig and string give",
  torque: "the torque of the rotary",
  power: "the power of the rotary",
  advance: "the advance that is allowed",
  exposure: "the exposure of the cutters: the wings would rub",
  rate: "what the flow cleans",
  contactTemperature: "the heat that the edges bear",
};

const wordsOf = (limits: readonly RateLimitName[]): string => limits.map((limit) => LIMIT_WORDS[limit]).join("; ");

/**
 * The card knows nothing of speeds to keep out of. What was asked for weighs more than a step with the string, which the
 * bit goes through as it goes down.
 */
export function runFindings(
  name: string,
  rotarySpeed: number,
  { asked, inStep }: { readonly asked: readonly SpeedWindow[]; readonly inStep: readonly SpeedWindow[] },
): Finding[] {
  const within = ({ from, to }: SpeedWindow) => rotarySpeed > from && rotarySpeed < to;
  const inside = asked.find(within) ?? inStep.find(within);
  if (!inside) return [];
  return [
    {
      code: "run-in-speeds-to-avoid",
      severity: asked.includes(inside) ? "caution" : "note",
      where: name,
      message: `The speed on the card lies in speeds to keep out of: ${inside.why}. Turn slower or faster, at a weight that the map allows there.`,
      value: rotarySpeed,
      limit: inside.from,
      unit: "rad/s",
      source: derivedFrom("map of weight against speed"),
    },
  ];
}

export function mapFindings(
  name: string,
  { best, rotary }: RunningMap,
  rule: RuleBox,
  /** The limits that the rule of thumb passes; or that the ground cannot carry its weight. */
  rulePasses: readonly RateLimitName[] | "buries",
): Finding[] {
  const source = derivedFrom("map of weight against speed");
  if (!best) {
    const message = "Every speed of the rotary lies in speeds to keep out of: there is no point to run at.";
    return [{ code: "no-speed-left", severity: "caution", where: name, message, source }];
  }
  const findings: Finding[] = [];
  if (rulePasses === "buries") {
    findings.push({
      code: "rule-of-thumb-buries",
      severity: "note",
      where: name,
      message:
        "This ground cannot carry the weight of the rule of thumb: the bit would bury. Feed to the rate and hold the string's weight back.",
      value: rule.weight.mid,
      limit: best.weight,
      unit: "N",
      source: derivedFrom("map of weight against speed"),
    });
  } else if (rulePasses.length > 0) {
    findings.push({
      code: "rule-of-thumb-passes-limits",
      severity: "note",
      where: name,
      message: `The rule of thumb passes ${wordsOf(rulePasses)}. Ease the weight or the speed, as the map shows.`,
      value: rule.weight.mid,
      limit: best.weight,
      unit: "N",
      source: commonPractice(),
    });
  }
  if (best.rotarySpeed > rule.rotarySpeed.high * (1 + 1e-9)) {
    findings.push({
      code: "best-point-faster-than-practice",
      severity: "note",
      where: name,
      message:
        best.fasterEndsAt === "rotary" && rotary.fastest === best.rotarySpeed
          ? "The best point of the map turns as fast as the rotary can: the law knows nothing of whirl and bounce. Stay with the rule of thumb for the speed until the bit has shown that it runs smooth."
          : "The best point of the map turns faster than the trade does: the law knows nothing of whirl and bounce. Stay with the rule of thumb for the speed until the bit has shown that it runs smooth.",
      value: best.rotarySpeed,
      limit: rule.rotarySpeed.high,
      unit: "rad/s",
      source: commonPractice(),
    });
  }
  return findings;
}
