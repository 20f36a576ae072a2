import {
  expectation,
  formatQuantity,
  parseQuantity,
  QUANTITY_KINDS,
  type QuantityChoice,
  type QuantityKind,
  type UnitSystem,
} from "@bitwright/traveler";

/** What a person typed into a quantity field, read. */
export type EntryReading =
  | {
      readonly ok: true;
      /** What goes into the document: the text as typed, with a unit where it had none. */
      readonly text: string;
      readonly kind: QuantityKind;
      /** [coherent SI unit of the kind] */
      readonly si: number;
    }
  | { readonly ok: false; readonly words: string };

/** Units that the trade writes where a kind is shown in several: nobody types a pull-down in newtons. */
const TRADE_UNIT: Partial<Record<QuantityKind, string>> = {
  duration: "min",
  pressure: "kPa",
  volume: "L",
};

/** The unit that a bare number in a field is taken in; empty where a bare number is a full answer. */
export function entryUnit(kind: QuantityKind, system: UnitSystem): string {
  const facts = QUANTITY_KINDS[kind];
  if ("bare" in facts) return facts.shown[system][0] === "%" ? "%" : "";
  const shown: readonly string[] = facts.shown[system];
  const usual = TRADE_UNIT[kind];
  return usual !== undefined && shown.includes(usual) ? usual : (shown.at(-1) ?? "");
}

const BARE = /^[\s\d.,/+−-]+$/;

/** Reads a text as one of the kinds that a field takes. A bare number is taken in the unit that stands beside the field. */
export function readEntry(typed: string, takes: readonly QuantityChoice[], system: UnitSystem): EntryReading {
  const text = typed.trim();
  const [first] = takes;
  const unit = first && BARE.test(text) ? entryUnit(first.kind, system) : "";
  const whole = unit === "" || unit === "%" ? text : `${text} ${unit}`;
  const wrongs: { readonly words: string; readonly unitFits: boolean }[] = [];
  for (const { kind, limits } of takes) {
    const read = parseQuantity(kind, whole, "field", limits);
    if (read.ok) return { ok: true, text: whole, kind, si: read.value.si };
    wrongs.push({ words: read.problem.wrong, unitFits: /which is (over|under|below)/.test(read.problem.wrong) });
  }
  const nearest = wrongs.find(({ unitFits }) => unitFits) ?? wrongs[0];
  const expected = takes.map(({ kind, limits }) => expectation(kind, limits)).join("; or ");
  return { ok: false, words: refusalWords(nearest?.words ?? "nothing is given", expected) };
}

/** A refusal as it stands beside a field: what is wrong, then what to do. */
export function refusalWords(wrong: string, expected: string): string {
  const sentence = (words: string) => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`;
  return `${sentence(wrong)} ${sentence(expected)}`;
}

/** What was understood, in the units of the screen; in the other system where the text already says it in these. */
export function echoOf({ text, kind, si }: Extract<EntryReading, { ok: true }>, system: UnitSystem): string {
  const shown = formatQuantity(kind, si, system);
  const plain = (words: string) => words.replace(/[\s,]/g, "").replace("²", "2").toLowerCase();
  if (plain(shown) !== plain(text)) return `= ${shown}`;
  const other = formatQuantity(kind, si, system === "field" ? "metric" : "field");
  return plain(other) === plain(text) ? "understood" : `= ${other}`;
}

/** A quantity as the document holds it, as text to edit. */
export function entryText(value: unknown): string {
  if (typeof value === "string" || typeof value === "number") return String(value);
  if (typeof value !== "object" || value === null) return "";
  const { value: amount, unit } = value as { value?: unknown; unit?: unknown };
  return amount === undefined ? "" : `${String(amount)} ${typeof unit === "string" ? unit : ""}`.trim();
}
