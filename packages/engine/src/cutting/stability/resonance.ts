import { bracketedRoot, requireNotNegative, requirePositive } from "../../quantity/index.ts";
import type { SpeedWindow } from "../running-map-best.ts";
import { type StringMode, type StringSection, stringMode, stringOfLength } from "./string-mode.ts";

type NaturalSpeeds = Pick<StringMode, "torsionalSpeed" | "axialSpeed">;

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
  readonly string: NaturalSpeeds;
  /** Wings of the bit [-]. */
  readonly wings: number;
  /** Margin to either side as a share of the speed [-]. */
  readonly marginShare?: number;
}): SpeedWindow[] {
  requirePositive({ wings, torsionalSpeed: string.torsionalSpeed, axialSpeed: string.axialSpeed });
  requireNotNegative({ marginShare });
  return steps(wings).map(({ speedOf, order, why }) => ({
    from: (speedOf(string) / order) * (1 - marginShare),
    to: (speedOf(string) / order) * (1 + marginShare),
    why,
  }));
}

/** What may fall in step with what: once or for each wing a turn, with the twist or the stretch. */
function steps(wings: number) {
  const swings = [
    { speedOf: (mode: NaturalSpeeds) => mode.torsionalSpeed, swing: "the string's twist" },
    { speedOf: (mode: NaturalSpeeds) => mode.axialSpeed, swing: "the string's stretch" },
  ];
  const orders = [
    { order: wings, what: `${wings} wings a turn` },
    { order: 1, what: "once a turn" },
  ];
  return swings.flatMap(({ speedOf, swing }) =>
    orders.map(({ order, what }) => ({ speedOf, order, why: `${what} in step with ${swing}` })),
  );
}

/** Lengths of a string between which a speed is in step with it. */
export interface LengthsInStep {
  /** Shortest of them [m]. */
  readonly from: number;
  /** Longest of them [m]. */
  readonly to: number;
  readonly why: string;
}

/**
 * Between which lengths a string that grows at its top swings in step with a rotary speed.
 *
 * The windows of `resonanceWindows` the other way round: a longer string swings slower, so that each is gone through once
 * on the way down.
 *
 * @throws RangeError when the speed or the wings are not positive, the string has no section, or the lengths do not ascend
 * @source (c) common practice, no source, for the orders and the margin; (d) the natural speeds
 */
export function lengthsInStep({
  sections,
  shortest,
  longest,
  rotarySpeed,
  wings,
  marginShare = RESONANCE_MARGIN,
}: {
  /** From the bit up; the last of them grows. */
  readonly sections: readonly StringSection[];
  /** Length of the whole string at first [m]. */
  readonly shortest: number;
  /** Length of the whole string in the end [m]. */
  readonly longest: number;
  /** Speed that is held [rad/s]. */
  readonly rotarySpeed: number;
  /** Wings of the bit [-]. */
  readonly wings: number;
  /** Margin to either side as a share of the speed [-]. */
  readonly marginShare?: number;
}): LengthsInStep[] {
  requirePositive({ rotarySpeed, wings, shortest });
  requireNotNegative({ marginShare, growth: longest - shortest });
  const modeAt = (length: number) => stringMode(stringOfLength(sections, length));
  const ends = { shortest: modeAt(shortest), longest: modeAt(longest) };
  return steps(wings).flatMap(({ speedOf, order, why }): LengthsInStep[] => {
    const [slow, fast] = [1 + marginShare, 1 - marginShare].map((share) => (rotarySpeed * order) / share);
    if (speedOf(ends.longest) >= fast || speedOf(ends.shortest) <= slow) return [];
    const where = (speed: number) =>
      bracketedRoot({
        f: (length) => speed - speedOf(modeAt(length)),
        low: shortest,
        high: longest,
        residual: 1e-6 * speed,
      });
    return [
      {
        from: speedOf(ends.shortest) > fast ? where(fast) : shortest,
        to: speedOf(ends.longest) < slow ? where(slow) : longest,
        why,
      },
    ];
  });
}
