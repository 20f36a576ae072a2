import { type CandidateBit, type Finding, type RankedCandidate, sameChoices } from "@bitwright/engine";
import { type ChoiceStudy, formatQuantity, type Workup } from "@bitwright/traveler";
import { textTable, wrapped } from "../summary/text-table.ts";
import { withRuled } from "./choice-rows.ts";
import {
  CHOICE_WORDS,
  candidateWords,
  checkWords,
  costNumber,
  costUnit,
  degreesApart,
  type MoneyStyle,
  remarkWords,
} from "./choice-words.ts";

/** Columns of running text. */
const WIDTH = 110;
/** Candidates that are printed [-]. */
const PRINTED = 10;

/** A choice by computing as a person would read it on a terminal. */
export function choiceText(workup: Workup, study: ChoiceStudy, style: MoneyStyle): string {
  const { ranking, byRule, checks, rules, kept, ofJob, stopped, looked } = study;
  const { ranked, excluded, cheapestAt } = ranking;
  const best = ranked[0]?.candidate;
  const lines = (text: string) => wrapped(text, WIDTH, 2).join("\n");
  const { ruled, rows } = withRuled(study, ranked.slice(0, PRINTED));
  const pulled = cheapestAt
    ? [cheapestAt.fastWear, cheapestAt.slowWear].map((one) => (one === best ? "the same bit" : candidateWords(one)))
    : [];
  return [
    ...(best
      ? [
          lines(`Cheapest: ${candidateWords(best)}. ${best.inWords}.`),
          table(rows, byRule, style),
          ...(ruled || !byRule.figures
            ? []
            : [
                lines(
                  `The rules' own bit, which was not to be chosen: ${candidateWords(byRule)}, ${costNumber(byRule.figures.costPerLength.mid, style)} ${costUnit(style)}.`,
                ),
              ]),
          [
            "Cost per length with trips and connections, pulled where that is cheapest; range over what is not known of wear.",
            lines(`If bits wear ten times as fast as taken: ${pulled[0]}. If ten times as slowly: ${pulled[1]}.`),
          ].join("\n"),
          [
            "The rules of thumb beside it",
            ...checks.map((check) => lines(`- ${checkWords(check, best.choices, rules, style)}`)),
          ].join("\n"),
        ]
      : ["No candidate will do for this job."]),
    ...(kept.length > 0
      ? [lines(`Kept as the traveler names it: ${kept.map((name) => CHOICE_WORDS[name]).join(", ")}.`)]
      : []),
    ...(ofJob.length > 0 ? [ofJob.map((one) => lines(`STOP for any bit, ${stopLine(one)}`)).join("\n")] : []),
    ...(excluded.length > 0 ? [excludedText(excluded)] : []),
    lines(`${looked} of ${study.of} candidates looked at${stopped ? ", then stopped" : ""}. ${leftOut(study)}`.trim()),
    lines(pricesLine(workup, style)),
  ].join("\n\n");
}

const stopLine = ({ where, message }: Finding) => `${where}: ${message}`;

function table(rows: readonly RankedCandidate[], byRule: CandidateBit, style: MoneyStyle): string {
  const { units, currency } = style;
  const figure = (kind: "depth" | "rate", si: number) => formatQuantity(kind, si, units, { figures: 3 });
  return textTable(
    [
      "",
      "bit",
      costUnit(style),
      "range",
      `bit, ${currency}`,
      "pulled at",
      "life",
      "new",
      "mean",
      "hours",
      "heat",
      "side",
      "blow",
      "",
    ],
    rows.map((row) => {
      const { figures, choices, blow } = row.candidate;
      const { costPerLength: cost } = figures;
      const remarks = [
        ...(sameChoices(choices, byRule.choices) ? ["the rules"] : []),
        ...[remarkWords(row)].filter((words) => words !== ""),
      ];
      return [
        String(row.place),
        candidateWords(row.candidate),
        costNumber(cost.mid, style),
        `${costNumber(cost.low, style)} to ${costNumber(cost.high, style)}`,
        figures.bitPrice.toFixed(0),
        figure("depth", figures.pulledAt),
        figure("depth", figures.footage.mid),
        figure("rate", figures.freshRate.mid),
        figure("rate", figures.meanRate),
        (figures.timeOnBottom / 3600).toFixed(0),
        degreesApart(figures.heatMargin, units),
        `${(100 * figures.sideForceShare).toFixed(1)} %`,
        blow
          ? `${formatQuantity("force", blow.peakForce, units, { figures: 3 })}, x${blow.overloadRatio.toFixed(1)}`
          : "-",
        remarks.join("; "),
      ];
    }),
    [1, 13],
  ).join("\n");
}

/** What keeps candidates from the job, with how many of them. */
function excludedText(excluded: readonly CandidateBit[]): string {
  const counts = new Map<string, { count: number; message: string; of: string }>();
  for (const one of excluded) {
    for (const { code, message, where } of one.excludedBy.slice(0, 1)) {
      const before = counts.get(code);
      counts.set(
        code,
        before
          ? { ...before, count: before.count + 1 }
          : { count: 1, message: `${where}: ${message}`, of: candidateWords(one) },
      );
    }
  }
  return [...counts.values()]
    .map(({ count, message, of }) => wrapped(`${count} will not do, as ${of}: ${message}`, WIDTH, 2).join("\n"))
    .join("\n");
}

/** What was left out unseen, and what that rests on. */
function leftOut({ search }: ChoiceStudy): string {
  if (!search || search.looked >= search.of) return "";
  const share = (one: number) => `${(100 * one).toFixed(1)} %`;
  const names = ["rake", "bevel", "body"];
  const seen = names.map(
    (name, k) => `${name} ${share(search.gains[k] ?? 0)} (${share(search.allowances[k] ?? 0)} allowed)`,
  );
  return `Left out: those that the choices still open could not bring under the first. Most that each has taken off the cost of one bit: ${seen.join(", ")}.`;
}

function pricesLine({ assumed, inquiry }: Workup, { currency }: MoneyStyle): string {
  const usual = assumed.filter(({ field }) => field.startsWith("prices."));
  if (usual.length === 0) return `Prices in ${currency}, all as the traveler gives them.`;
  const named = usual.map(({ field, text }) => `${field.replace("prices.", "")} ${text}`).join(", ");
  const mixed = /^(usd|us dollars?|\$)$/i.test(inquiry.job.currency)
    ? ""
    : ` The job is in ${currency}: give every price.`;
  return `Prices not given, taken as usual in US dollars: ${named}.${mixed}`;
}
