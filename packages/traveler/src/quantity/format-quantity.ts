import { INCH } from "./factors.ts";
import { kindFacts, type QuantityKind, type UnitSystem } from "./quantity-kind.ts";
import { unitOf } from "./unit-lookup.ts";
import type { Unit } from "./unit-table.ts";

/** How a quantity is to be shown; every part may be left out. */
export interface QuantityFormat {
  /** Significant figures [-]; 4 where not given. */
  readonly figures?: number;
  /** A unit to keep to, for the columns of a table; else the kind's own for the system. */
  readonly unit?: string;
  /** Whether a diameter in inches may show as a fraction; yes where not given. */
  readonly fractions?: boolean;
}

const USUAL_FIGURES = 4;
/** A diameter shows as a fraction only where it is one of 1/32 in within this [m]. */
const FRACTION_SLACK = 0.01e-3;
const FINEST_FRACTION = 32;

/**
 * A value with its unit as it is printed: `6 1/8 in`, `6,125 lbf`, `27.25 kN`.
 *
 * Field units carry a comma between thousands, metric ones never do, so that whatever is printed can be typed back in.
 *
 * @throws RangeError when the value is not a finite number or the unit is not one of the kind
 * @example
 * formatQuantity("diameter", 0.155575, "field") // → "6 1/8 in"
 * formatQuantity("diameter", 0.155575, "metric") // → "155.6 mm"
 * formatQuantity("force", 27245.35, "field") // → "6,125 lbf"
 */
export function formatQuantity(
  kind: QuantityKind,
  si: number,
  system: UnitSystem,
  format: QuantityFormat = {},
): string {
  if (!Number.isFinite(si)) throw new RangeError(`a ${kind} to be shown must be a finite number, got ${si}`);
  const unit = shownUnit(kind, si, system, format);
  if (kind === "diameter" && unit.name === "in" && format.fractions !== false) {
    const fraction = inchFraction(si);
    if (fraction) return `${fraction} in`;
  }
  const number = figuresOf(si / unit.factor - unit.zero, format.figures ?? USUAL_FIGURES);
  const shown = unit.field ? withThousands(number) : number;
  return unit.name === "-" ? shown : `${shown} ${unit.name}`;
}

/**
 * A value in a named unit, for a column whose head carries the unit.
 *
 * @returns the value [unit named]
 * @throws RangeError when the unit is not one of the kind
 * @source (d) the unit's factor, see `factors.ts`
 * @example
 * inUnit("depth", 91.44, "ft") // → 300
 */
export function inUnit(kind: QuantityKind, si: number, unitName: string): number {
  const unit = namedUnit(kind, unitName);
  return si / unit.factor - unit.zero;
}

/** The unit in which a kind is shown in a system; of several, the largest that leaves one or more of `si`. */
export function unitFor(kind: QuantityKind, system: UnitSystem, si?: number): string {
  const names = kindFacts(kind).shown[system];
  if (si === undefined) return names[0];
  // A hair under one still reads as one of the larger unit, so that 999.97 N is not shown as 1000 N.
  const fitting = names.filter((name) => Math.abs(si) >= namedUnit(kind, name).factor * (1 - 0.5e-4));
  return fitting.at(-1) ?? names[0];
}

function shownUnit(kind: QuantityKind, si: number, system: UnitSystem, { unit }: QuantityFormat): Unit {
  return namedUnit(kind, unit ?? unitFor(kind, system, si));
}

function namedUnit(kind: QuantityKind, name: string): Unit {
  const unit = unitOf(kindFacts(kind).dimension, name);
  if (!unit) throw new RangeError(`${name} is no unit of ${kindFacts(kind).noun}`);
  return unit;
}

/** The inches as whole and fraction of 1/32 or coarser, where the diameter is one. */
function inchFraction(si: number): string | undefined {
  const parts = Math.round((si / INCH) * FINEST_FRACTION);
  if (parts <= 0 || Math.abs((parts * INCH) / FINEST_FRACTION - si) > FRACTION_SLACK) return undefined;
  const whole = Math.floor(parts / FINEST_FRACTION);
  let over = parts % FINEST_FRACTION;
  let under = FINEST_FRACTION;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return [whole > 0 ? String(whole) : "", over > 0 ? `${over}/${under}` : ""].filter(Boolean).join(" ");
}

/** A number to so many significant figures in plain digits, no zeros left hanging behind the point. */
function figuresOf(value: number, figures: number): string {
  if (value === 0) return "0";
  const rounded = Number(value.toPrecision(figures));
  const places = Math.min(100, Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(rounded)))));
  const text = rounded.toFixed(places);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

function withThousands(number: string): string {
  const [whole = "", decimals] = number.split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ",");
  return decimals === undefined ? grouped : `${grouped}.${decimals}`;
}
