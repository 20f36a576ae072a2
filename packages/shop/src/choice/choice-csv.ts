import { type ChoiceStudy, type QuantityKind, unitFor } from "@bitwright/traveler";
import { csvFigure } from "../table/csv-figure.ts";
import { csvText } from "../table/csv-text.ts";
import { choiceWords, costNumber, costUnit, type MoneyStyle, remarkWords } from "./choice-words.ts";

/** Every candidate that was looked at, one in a row: those that are ranked in their order, then those that will not do and why. */
export function choiceCsv({ ranking }: ChoiceStudy, style: MoneyStyle): string {
  const { units, currency } = style;
  const unit = (kind: QuantityKind) => unitFor(kind, units);
  const cell = (kind: QuantityKind, si: number | undefined) => csvFigure(kind, si, unit(kind), 4);
  const heads = [
    "place",
    "cutter",
    "wings",
    "back rake",
    "bevel",
    "body",
    `cost [${costUnit(style)}]`,
    "cost if bits wear slowly",
    "cost if bits wear fast",
    `price of the bit [${currency}]`,
    `pulled at [${unit("depth")}]`,
    `life [${unit("depth")}]`,
    `life, short [${unit("depth")}]`,
    `life, long [${unit("depth")}]`,
    `rate new [${unit("rate")}]`,
    `rate new, hard rock [${unit("rate")}]`,
    `rate new, soft rock [${unit("rate")}]`,
    `rate until pulled [${unit("rate")}]`,
    "hours until pulled",
    `margin of heat [${units === "field" ? "°F" : "K"}]`,
    "side force [%]",
    `heaviest blow [${unit("force")}]`,
    "overload of that cutter",
    "cutters",
    `slot area [${unit("area")}]`,
    `largest port [${unit("diameter")}]`,
    "remark",
  ];
  const named = (choices: (typeof ranking.ranked)[number]["candidate"]["choices"]) =>
    (["cutter", "wings", "backRake", "chamfer", "body"] as const).map((name) =>
      name === "wings" ? String(choices.wings) : choiceWords(name, choices).replace(/^rake | bevel$/g, ""),
    );
  const ranked = ranking.ranked.map((one) => {
    const { figures, choices, blow } = one.candidate;
    const { costPerLength: cost, footage, freshRate } = figures;
    return [
      String(one.place),
      ...named(choices),
      costNumber(cost.mid, style),
      costNumber(cost.low, style),
      costNumber(cost.high, style),
      figures.bitPrice.toFixed(0),
      cell("depth", figures.pulledAt),
      cell("depth", footage.mid),
      cell("depth", footage.low),
      cell("depth", footage.high),
      cell("rate", freshRate.mid),
      cell("rate", freshRate.low),
      cell("rate", freshRate.high),
      cell("rate", figures.meanRate),
      (figures.timeOnBottom / 3600).toFixed(1),
      (figures.heatMargin * (units === "field" ? 1.8 : 1)).toFixed(0),
      (100 * figures.sideForceShare).toFixed(1),
      cell("force", blow?.peakForce),
      blow ? blow.overloadRatio.toFixed(2) : "",
      String(figures.cutters),
      cell("area", figures.slotArea),
      cell("diameter", figures.largestPort),
      remarkWords(one),
    ];
  });
  const out = ranking.excluded.map(({ choices, excludedBy }) => [
    "",
    ...named(choices),
    ...Array<string>(heads.length - 7).fill(""),
    excludedBy.map(({ where, message }) => `${where}: ${message}`).join(" "),
  ]);
  return csvText([heads, ...ranked, ...out]);
}
