import { type Attributes, element, type PagePoint, type Svg } from "../svg/index.ts";
import { INK, PAPER } from "./palette.ts";

/** Type sizes on paper [mm]; nothing is set smaller than `caption`. */
export const TYPE = { heading: 5.2, value: 3.5, number: 3.4, note: 3, caption: 2.7 } as const;

/** A line of text at a point. */
export function textAt(at: PagePoint, text: string, size: number, more: Attributes = {}): Svg {
  return element("text", { x: at[0], y: at[1], "font-size": size, fill: INK, ...more }, text);
}

/** Attributes that set a text off from the lines under it. */
export const HALO: Attributes = {
  stroke: PAPER,
  "stroke-width": 0.9,
  "stroke-linejoin": "round",
  "paint-order": "stroke",
};
