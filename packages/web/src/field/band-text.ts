import type { QuantityChoice, UnitSystem } from "@bitwright/traveler";
import { entryText, readEntry } from "./read-entry.ts";

/** A band as the document holds it: one text, or low, mid and high. */
type BandEntry = string | { readonly low: string; readonly mid?: string; readonly high: string };

/** What was typed as a band, read; or what is wrong with it. */
export type BandReading =
  | {
      readonly ok: true;
      readonly entry: BandEntry /** Low, middle and high as typed [SI]. */;
      readonly si: readonly number[];
    }
  | { readonly ok: false; readonly words: string };

/** A band of the document as one text to edit: `5000 / 8000 / 12000 psi`. */
export function bandText(value: unknown): string {
  if (typeof value !== "object" || value === null || !("low" in value || "high" in value)) return entryText(value);
  const { low, mid, high } = value as { low?: unknown; mid?: unknown; high?: unknown };
  const parts = [low, mid, high].map(entryText).filter((part) => part !== "");
  const units = parts.map((part) => part.replace(/^[\d\s.,/+−-]+/, ""));
  // One unit for all stands at the end once, as it would be typed.
  const alike = units.every((unit) => unit === units[0]);
  const bare = (part: string) => part.slice(0, part.length - (units[0] ?? "").length).trim();
  return parts.map((part, at) => (alike && at < parts.length - 1 ? bare(part) : part)).join(" / ");
}

/**
 * Reads `8000 psi`, `5000 to 12000 psi` or `5000 / 8000 / 12000 psi`; the last unit holds for those before it that have
 * none. A stroke parts values only where there are spaces around it, so that fractions stay whole.
 */
export function readBand(typed: string, takes: readonly QuantityChoice[], system: UnitSystem): BandReading {
  const parts = typed.trim().split(/\s+(?:\/|to|–)\s+/);
  const [, unit = ""] = /^[\d\s.,/+−-]*(.*)$/.exec(parts.at(-1) ?? "") ?? [];
  const whole = parts.map((part) => (/[^\d\s.,/+−-]/.test(part) ? part : `${part} ${unit}`.trim()));
  const read = whole.map((part) => readEntry(part, takes, system));
  const si: number[] = [];
  const texts: string[] = [];
  for (const one of read) {
    if (!one.ok) return one;
    si.push(one.si);
    texts.push(one.text);
  }
  const [low = "", second, third] = texts;
  if (parts.length > 3)
    return {
      ok: false,
      words: 'Got more than three values. Give low / mid / high, for example "5000 / 8000 / 12000 psi".',
    };
  if (si.some((value, at) => at > 0 && value < (si[at - 1] ?? value))) {
    return { ok: false, words: `Got ${typed.trim()}, which does not rise. Give low, mid and high in rising order.` };
  }
  if (second === undefined) return { ok: true, entry: low, si };
  return { ok: true, entry: third === undefined ? { low, high: second } : { low, mid: second, high: third }, si };
}
