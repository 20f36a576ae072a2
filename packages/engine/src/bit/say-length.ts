import { INCH, requireFinite } from "../quantity/index.ts";

/** A length as a shop reads it: `12.3 mm (0.48 in)`. For sentences only; figures go with their unit beside them. */
export function sayLength(length: number): string {
  requireFinite({ length });
  const millimetres = length * 1000;
  const places = Math.abs(millimetres) < 1 ? 2 : 1;
  return `${millimetres.toFixed(places)} mm (${(length / INCH).toFixed(places + 1)} in)`;
}
