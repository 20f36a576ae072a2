import { inUnit, type UnitSystem, unitFor } from "@bitwright/traveler";
import { plain, tickStep } from "../chart/index.ts";
import { INK, SOFT_INK, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";

/** Depth down the sheet. */
export interface DepthScale {
  /** [mm] */
  readonly top: number;
  /** [mm] */
  readonly bottom: number;
  /** Depth at the bottom [m]. */
  readonly deepest: number;
}

/** Where a depth lies on the page [mm]. */
export function pageOf({ top, bottom, deepest }: DepthScale, depth: number): number {
  return top + (Math.min(depth, deepest) / deepest) * (bottom - top);
}

/** Ticks and figures of the depth at the left of `x`. */
export function depthTicks(scale: DepthScale, x: number, units: UnitSystem): Svg {
  const unit = unitFor("depth", units);
  const end = inUnit("depth", scale.deepest, unit);
  const step = tickStep(end, 14);
  const figures = Array.from({ length: Math.floor(end / step + 1e-9) + 1 }, (_, k) => k * step);
  return element(
    "g",
    { class: "depths" },
    textAt([x - 2, scale.top - 3], unit, TYPE.caption, { "text-anchor": "end", fill: SOFT_INK }),
    ...figures.flatMap((figure) => {
      const y = scale.top + (figure / end) * (scale.bottom - scale.top);
      return [
        element("path", {
          d: linePath([
            [x - 1.5, y],
            [x, y],
          ]),
          stroke: INK,
          "stroke-width": 0.2,
        }),
        textAt([x - 2, y + 0.9], String(Number(figure.toPrecision(6))), TYPE.caption, { "text-anchor": "end" }),
      ];
    }),
  );
}

/** Strength across the sheet, each power of ten as wide as the next. */
export interface StrengthScale {
  /** [mm] */
  readonly left: number;
  /** [mm] */
  readonly right: number;
  /** [Pa] */
  readonly low: number;
  /** [Pa] */
  readonly high: number;
}

/** Where a strength lies on the page [mm]. */
export function acrossOf({ left, right, low, high }: StrengthScale, strength: number): number {
  const share = Math.log(Math.max(strength, low) / low) / Math.log(high / low);
  return left + Math.min(share, 1) * (right - left);
}

/** Powers of ten of the unit of the strengths, with faint lines down. */
export function strengthTicks(scale: StrengthScale, { top, bottom }: DepthScale, units: UnitSystem): Svg {
  const unit = unitFor("strength", units);
  const perUnit = inUnit("strength", 1, unit);
  const first = Math.ceil(Math.log10(scale.low * perUnit) - 1e-9);
  const last = Math.floor(Math.log10(scale.high * perUnit) + 1e-9);
  const powers = Array.from({ length: last - first + 1 }, (_, k) => 10 ** (first + k));
  return element(
    "g",
    { class: "strengths" },
    textAt([scale.left - 2, top - 3], unit, TYPE.caption, { "text-anchor": "end", fill: SOFT_INK }),
    ...powers.flatMap((power) => {
      const x = acrossOf(scale, power / perUnit);
      const words = power >= 1 ? plain(power) : String(power);
      return [
        element("path", {
          d: linePath([
            [x, top],
            [x, bottom],
          ]),
          stroke: "#dfe3e7",
          "stroke-width": 0.2,
        }),
        textAt([x, top - 3], words, TYPE.caption, { "text-anchor": "middle", fill: SOFT_INK }),
      ];
    }),
  );
}
