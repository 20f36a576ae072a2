import { formatQuantity } from "@bitwright/traveler";

/** A hole as it was typed and in millimetres, each once. */
export function holeInBoth(
  asTyped: string,
  /** [m] */
  diameter: number,
): string {
  return /mm\s*$/.test(asTyped)
    ? asTyped
    : `${asTyped} (${formatQuantity("diameter", diameter, "metric", { figures: 6 })})`;
}
