import type { Quantity } from "../../quantity/index.ts";

/** A weight on the bit in newtons; a force for each length of diameter is taken times the bit's diameter. */
export function weightOf(given: Quantity | undefined, bitDiameter: number): number | undefined {
  if (!given) return undefined;
  return given.kind === "force per length" ? given.si * bitDiameter : given.si;
}
