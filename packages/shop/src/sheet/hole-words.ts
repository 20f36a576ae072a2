import { formatQuantity } from "@bitwright/traveler";

/** A hole as it was typed and in millimetres, each once; one that tells its millimetres already stays as it is. */
export function holeInBoth(
  asTyped: string,
  /** [m] */
  diameter: number,
): string {
  return /mm\s*\)?$/.test(asTyped)
    ? asTyped
    : `${asTyped} (${formatQuantity("diameter", diameter, "metric", { figures: 6 })})`;
}
