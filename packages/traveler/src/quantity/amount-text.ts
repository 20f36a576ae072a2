import { numberAtHead } from "./number-text.ts";
import { dimensionNoun } from "./quantity-kind.ts";
import { dimensionsWith, unitKey, unitOf } from "./unit-lookup.ts";
import type { Dimension, Unit } from "./unit-table.ts";

/** Why a text is no quantity of a dimension, in words that follow "got ...". */
export interface Fault {
  readonly fault: string;
}

/** An amount read from a text. */
export interface Amount {
  /** The amount [coherent SI unit of the dimension]. */
  readonly si: number;
  readonly unit: string;
  /** Whether a comma was taken as a thousands mark only because the unit is a field unit. */
  readonly groupedByUnit: boolean;
}

/** Whether a bare zero is a full answer: zero feet are zero metres, zero degrees are not. */
export function zeroNeedsNoUnit(dimension: Dimension): boolean {
  return dimension !== "temperature";
}

/** The amount that a text gives of a dimension; `bare` where a number without a unit will do. */
export function amountIn(dimension: Dimension, text: string, bare: boolean): Amount | Fault {
  if (/^[-+−]?(nan|inf(inity)?|∞)\b/i.test(text) || text.includes("∞"))
    return { fault: ", which is no number to work with" };
  const head = numberAtHead(text);
  if ("fault" in head) return { fault: `, but ${head.fault}` };
  if (head.rest === "") {
    if (bare || (head.value === 0 && zeroNeedsNoUnit(dimension))) {
      if (head.comma === "either") return { fault: ambiguous(text) };
      return { si: head.value, unit: "-", groupedByUnit: false };
    }
    return { fault: " without a unit" };
  }
  const unit = unitOf(dimension, head.rest);
  if (!unit) return compound(dimension, head.value, head.rest) ?? { fault: unknownUnit(dimension, head.rest) };
  if (head.comma === "either" && !unit.field) return { fault: ambiguous(text) };
  return {
    si: (head.value + unit.zero) * unit.factor,
    unit: head.rest,
    groupedByUnit: head.comma === "either",
  };
}

function ambiguous(text: string): string {
  const number = /[\d,]+/.exec(text)?.[0] ?? text;
  return `, where the comma may part thousands or decimals: write ${number.replace(",", "")} or ${number.replace(",", ".")}`;
}

function unknownUnit(dimension: Dimension, rest: string): string {
  if (/^[\d.,/]/.test(rest)) return `, but what follows the number is not understood: "${rest}"`;
  const known = dimensionsWith(rest).filter((other) => other !== dimension);
  // A length stands for an advance only where one is asked for.
  const others = known.includes("length") ? known.filter((other) => other !== "advance") : known;
  const nouns = [...new Set(others.map(dimensionNoun))];
  return nouns.length > 0 ? `, which is ${nouns.slice(0, 2).join(" or ")}` : `, but "${rest}" is no unit known here`;
}

const COMPOUND: ReadonlySet<Dimension> = new Set(["length", "duration"]);

/** Feet and inches, hours and minutes: a second number in a smaller unit behind the first. */
function compound(dimension: Dimension, first: number, rest: string): Amount | Fault | undefined {
  if (!COMPOUND.has(dimension)) return undefined;
  let sum = 0;
  let value = first;
  let tail = unitKey(rest);
  let last: Unit | undefined;
  const sign = first < 0 ? -1 : 1;
  while (tail !== "") {
    const parts = /^(?<unit>[^\d.,]+)(?<next>.*)$/s.exec(tail)?.groups;
    const unit = unitOf(dimension, parts?.unit ?? "");
    if (!unit || (last && unit.factor >= last.factor)) return undefined;
    sum += Math.abs(value) * unit.factor;
    last = unit;
    const next = (parts?.next ?? "").trim();
    if (next === "") return { si: sign * sum, unit: rest, groupedByUnit: false };
    const number = numberAtHead(next);
    if ("fault" in number || number.rest === "") return undefined;
    value = number.value;
    tail = number.rest;
  }
  return undefined;
}
