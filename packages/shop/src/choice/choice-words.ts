import {
  ACCEPTED_LATERAL_SHARE,
  type BitChoices,
  type CandidateBit,
  type ChoiceName,
  type MovedFigure,
  type RankedCandidate,
  type RuleCheck,
} from "@bitwright/engine";
import { formatQuantity, inUnit, type UnitSystem, unitFor } from "@bitwright/traveler";

/** How money is written: which currency, which units. */
export interface MoneyStyle {
  readonly units: UnitSystem;
  readonly currency: string;
}

const degrees = (si: number) => `${Number(((si * 180) / Math.PI).toFixed(1))}°`;

/** One choice of a bit in words: `20° bevel`. */
export function choiceWords(name: ChoiceName, choices: BitChoices): string {
  const { cutter, wings, backRake, chamfer, body } = choices;
  switch (name) {
    case "cutter":
      return cutter;
    case "wings":
      return `${wings} ${wings === 1 ? "wing" : "wings"}`;
    case "backRake":
      return backRake.centre === backRake.gauge
        ? `rake ${degrees(backRake.centre)}`
        : `rake ${degrees(backRake.centre)} to ${degrees(backRake.gauge)}`;
    case "chamfer":
      return chamfer.angle > 0 ? `${degrees(chamfer.angle)} bevel` : "no bevel";
    case "body":
      return body;
  }
}

/** The choices of a bit in one line. */
export function candidateWords({ choices }: Pick<CandidateBit, "choices">): string {
  return (["cutter", "wings", "backRake", "chamfer", "body"] as const)
    .map((name) => choiceWords(name, choices))
    .join(", ");
}

/** What a choice is called. */
export const CHOICE_WORDS: Readonly<Record<ChoiceName, string>> = {
  cutter: "cutter size",
  wings: "wings",
  backRake: "back rake",
  chamfer: "bevel",
  body: "body",
};

/** What the cost does not see of a choice, so that a rule may be right for a reason that no figure here shows. */
const NOT_IN_THE_COST: Readonly<Record<ChoiceName, string>> = {
  cutter: "Chipped and lost cutters are not in the cost.",
  wings: "Balling, plugging and broken wings are not in the cost.",
  backRake: "Chipping is not in the cost.",
  chamfer: "Chipping, which a bevel is for, is not in the cost.",
  body: "Erosion and broken wings are not in the cost.",
};

/** Cost for each length in the units of the reader: `5.64`. */
export function costNumber(si: number, { units }: Pick<MoneyStyle, "units">): string {
  return inUnit("price of length", si, unitFor("price of length", units)).toFixed(2);
}

/** The unit of such a cost: `USD/ft`. */
export function costUnit({ units, currency }: MoneyStyle): string {
  return `${currency}${unitFor("price of length", units)}`;
}

/** Why a candidate may be as good as the first, and what else speaks against it, in a few words. */
export function remarkWords({ ties, candidate }: RankedCandidate): string {
  const said = [
    ...(candidate.figures.sideForceShare > ACCEPTED_LATERAL_SHARE ? ["leans over 10 %"] : []),
    ...(ties.includes("too close") ? ["too close to call"] : []),
    ...(ties.includes("fast wear") ? ["cheaper if bits wear fast"] : []),
    ...(ties.includes("slow wear") ? ["cheaper if bits wear slowly"] : []),
  ];
  return said.join(", ");
}

/** Two figures of a moved one: `150 ft/h against 140 ft/h on bottom`, the best bit first. */
function movedWords({ figure, ofBest, ofRule }: MovedFigure, { units, currency }: MoneyStyle): string {
  const pair = (show: (si: number) => string) => [show(ofBest), show(ofRule)];
  const against = ([best, rule]: string[], of: string) => `${of} ${best} here, ${rule} with the rule's choice`;
  const quantity = (kind: "rate" | "depth" | "force") => pair((si) => formatQuantity(kind, si, units, { figures: 3 }));
  switch (figure) {
    case "meanRate":
      return against(quantity("rate"), "rate on bottom");
    case "pulledAt":
      return against(quantity("depth"), "hole drilled until pulled");
    case "bitPrice":
      return against(
        pair((si) => `${si.toFixed(0)} ${currency}`),
        "price of the bit",
      );
    case "heatMargin":
      return against(
        pair((si) => degreesApart(si, units)),
        "margin of heat",
      );
    case "sideForceShare":
      return against(
        pair((si) => `${(100 * si).toFixed(1)} %`),
        "side force",
      );
    case "peakForce":
      return against(quantity("force"), "heaviest blow on a cutter at a bed's boundary");
  }
}

/** A difference of temperatures, which is no temperature: no zero is taken off it. */
export function degreesApart(si: number, units: UnitSystem): string {
  return units === "field" ? `${Math.round(si * 1.8)} °F` : `${Math.round(si)} K`;
}

/** A rule of thumb beside the best bit, in one or two sentences. */
export function checkWords(check: RuleCheck, best: BitChoices, rules: BitChoices, style: MoneyStyle): string {
  const { choice, verdict, byRule, dearer, reason, forRule } = check;
  const head = `${CHOICE_WORDS[choice]}: ${choiceWords(choice, best)}`;
  const ruled = choiceWords(choice, rules);
  const more = dearer === undefined ? "" : `${(100 * dearer).toFixed(1)} %`;
  const why = reason ? ` ${upper(movedWords(reason, style))}.` : "";
  const forIt = forRule ? ` For the rule: ${movedWords(forRule, style)}.` : "";
  switch (verdict) {
    case "agrees":
      return `${head}, as the rule has it.`;
    case "kept":
      return `${head}, as the traveler names it.`;
    case "not reached":
      return `${head}; the rule has ${ruled}, which was not looked at on this bit.`;
    case "excluded":
      return `${head}; the rule has ${ruled}, with which this bit will not do: ${byRule?.excludedBy[0]?.message ?? "it drills nothing."}`;
    case "too close":
      return `${head}; the rule has ${ruled}, and the difference of ${more} in cost is too close to call.${forIt} ${NOT_IN_THE_COST[choice]}`;
    case "parts":
      return `${head}; the rule has ${ruled}, which alone costs ${more} more.${why}${forIt} ${NOT_IN_THE_COST[choice]}`;
  }
}

const upper = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
