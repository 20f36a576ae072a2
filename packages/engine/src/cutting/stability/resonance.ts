import { requireNotNegative, requirePositive } from "../../quantity/index.ts";
import type { SpeedWindow } from "../running-map-best.ts";
import type { StringMode } from "./string-mode.ts";

/**
 * How near to a natural speed of the string counts as in step with it, as a share of it [-].
 *
 * @source (c) common practice, no source: keep 15 % away
 */
export const RESONANCE_MARGIN = 0.15;

/**
 * Rotary speeds at which something that happens once a turn, or once for each wing, falls in step with the string's own
 * lowest swing, in twist or along the hole.
 *
 * ω = ω_string/k with k = 1 and k = n, and a margin to either side. The string is held at the top and carries nothing but
 * itself; couplings, the rig's give and the hole wall shift it.
 *
 * @throws RangeError when the number of wings is not positive or the margin negative
 * @source (c) common practice, no source, for the orders and the margin; (d) the natural speeds
 */
export function resonanceWindows({
  string,
  wings,
  marginShare = RESONANCE_MARGIN,
}: {
  readonly string: Pick<StringMode, "torsionalSpeed" | "axialSpeed">;
  /** Wings of the bit [-]. */
  readonly wings: number;
  /** Margin to either side as a share of the speed [-]. */
  readonly marginShare?: number;
}): SpeedWindow[] {
  requirePositive({ wings, torsionalSpeed: string.torsionalSpeed, axialSpeed: string.axialSpeed });
  requireNotNegative({ marginShare });
  const kinds = [
    { speed: string.torsionalSpeed, swing: "the string's twist" },
    { speed: string.axialSpeed, swing: "the string's stretch" },
  ];
  const orders = [
    { order: wings, what: `${wings} wings a turn` },
    { order: 1, what: "once a turn" },
  ];
  return kinds.flatMap(({ speed, swing }) =>
    orders.map(({ order, what }) => ({
      from: (speed / order) * (1 - marginShare),
      to: (speed / order) * (1 + marginShare),
      why: `${what} in step with ${swing}`,
    })),
  );
}
