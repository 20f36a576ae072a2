import type { CardFigure, CardRow } from "@bitwright/engine";
import type { UnitSystem } from "@bitwright/traveler";
import { element, type Svg } from "../svg/index.ts";
import { byRate, insteadWords } from "./bed-words.ts";
import { bareFigure, cardUnit, wholeFigure } from "./card-figures.ts";
import { oneLine } from "./card-lines.ts";
import { ACT, jointCells, jointHeads } from "./joint-cells.ts";

const MARK: Readonly<Record<string, string>> = { PUSH: "▼", HOLD: "▲", HANG: "●" };

/** Depths of a bed: `60-128 ft`. */
export function depthsOf({ from, to }: CardRow, units: UnitSystem): string {
  return `${bareFigure(from, units)}-${wholeFigure(to, units)}`;
}

/** Name of a bed with the mark of what it asks for. */
export function groundOf(row: CardRow): string {
  const ground = oneLine(row.ground);
  if (!row.drilled) return `✕ ${ground}: not this bit`;
  return row.verdict === "fit" ? ground : `! ${ground}`;
}

/** One bed for the phone: its figures large, then what the rig does joint by joint. */
export function phoneBed(row: CardRow, id: string, units: UnitSystem, pumped: boolean): Svg {
  const head = element("h3", {}, `${depthsOf(row, units)}: ${oneLine(row.ground)}`);
  if (!row.drilled) {
    return element(
      "section",
      { class: "bed", id },
      head,
      element("p", { class: "alert" }, "✕ NOT THIS BIT."),
      element("p", {}, insteadWords(row)),
    );
  }
  const care = row.verdict === "fit" ? [] : [element("p", { class: "alert" }, "! With care: stay at the low end.")];
  const remarks = row.remarks.map((text) => element("li", {}, oneLine(text)));
  return element(
    "section",
    { class: "bed", id },
    head,
    ...care,
    figures(row, units, pumped),
    ...(remarks.length === 0 ? [] : [element("ul", {}, ...remarks)]),
    ...joints(row, units),
  );
}

function figures(row: CardRow, units: UnitSystem, pumped: boolean): Svg {
  const figure = (term: string, value: CardFigure | undefined) =>
    value ? [pair(term, wholeFigure(value, units))] : [];
  return element(
    "dl",
    { class: "figures" },
    ...(byRate(row)
      ? [pair("weight on bit", "by rate: too soft to set a weight", "wide")]
      : row.weight
        ? [pair("weight on bit, with pipe", wholeFigure(row.weight, units), "wide")]
        : []),
    ...figure("turn", row.rotarySpeed),
    ...(pumped ? figure("flow", row.flow) : []),
    ...figure("expect", row.rate),
    ...(pumped ? figure("drill no faster than", row.rateCeiling) : []),
    ...figure("rule of thumb", row.practiceWeight),
  );
}

function pair(term: string, value: string, kind?: string): Svg {
  return element("div", { class: kind }, element("dt", {}, term), element("dd", {}, value));
}

function joints({ feed }: CardRow, units: UnitSystem): Svg[] {
  if (feed.length === 0) return [];
  const gauge = feed.some((joint) => joint.gauge);
  const heads = jointHeads(units, gauge).map((title) => element("th", { scope: "col" }, title));
  const rows = feed.map((joint) =>
    element(
      "tr",
      {},
      ...jointCells(joint, units, gauge).map((cell, k) =>
        element("td", {}, k === ACT ? `${MARK[cell] ?? ""} ${cell}`.trim() : cell),
      ),
    ),
  );
  const what = `Joint by joint, ${cardUnit("force", units)}: wanted on the bit, given by the string, done by the rig`;
  return [
    element(
      "table",
      {},
      element("caption", {}, gauge ? `${what}; gauge, ${cardUnit("pressure", units)}` : what),
      element("thead", {}, element("tr", {}, ...heads)),
      element("tbody", {}, ...rows),
    ),
  ];
}
