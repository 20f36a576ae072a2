import { svgNumber } from "./svg-number.ts";
import { xmlText } from "./xml-text.ts";

/** A finished piece of SVG. Only `element` makes one, so plain strings are always text and always escaped. */
export interface Svg {
  readonly markup: string;
}

/** Attributes by name; an absent value leaves the attribute out, a number is rounded to three decimals. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One element with its children: pieces of SVG, each on its own line, or text. */
export function element(name: string, attributes: Attributes = {}, ...children: readonly (Svg | string)[]): Svg {
  const open = `<${name}${Object.entries(attributes).map(attributeText).join("")}`;
  if (children.length === 0) return { markup: `${open}/>` };
  const inside = children.map((child) => (typeof child === "string" ? xmlText(child) : child.markup));
  const onOneLine = children.some((child) => typeof child === "string");
  return { markup: onOneLine ? `${open}>${inside.join("")}</${name}>` : `${open}>\n${inside.join("\n")}\n</${name}>` };
}

function attributeText([name, value]: readonly [string, string | number | undefined]): string {
  if (value === undefined) return "";
  return ` ${name}="${typeof value === "number" ? svgNumber(value) : xmlText(value)}"`;
}
