import { bracketedRoot, requireNotNegative, requirePositive } from "../../quantity/index.ts";
import type { ScaledBit } from "./scaled-bit.ts";

/** A bit at a weight and a speed, in the units of `ScaledBit`. */
export interface NeededDampingInput {
  readonly bit: Pick<ScaledBit, "wings" | "cutStiffness" | "contactLoad">;
  /** W' [-]. */
  readonly scaledWeight: number;
  /** ω0 [-]. */
  readonly scaledSpeed: number;
}

/** Swings looked at: up to so many times the string's own speed, in so many steps [-]. */
const HIGHEST_SWING = 20;
const STEPS = 8000;

/**
 * Damping of the string's twist that steady drilling needs: with less, twisting grows of itself.
 *
 * Around steady drilling P (s² + n ψ E) = n k E s² with P = s² + 2 ξ s + 1, E = 1 - e^(-s τ), τ = 2π/(n ω0) and k = v0/ω0.
 * On the limit s = i ω: P = n k E s²/(s² + n ψ E), whose real part sets ω and whose imaginary part is 2 ξ ω; the largest
 * ξ of all ω counts. It is never nothing: without any damping the published equations always grow, if slowly. It speaks
 * of twisting alone and so only above the axial limit, where the bit does not bounce on its own cut already.
 *
 * @returns share of critical damping [-]
 * @throws RangeError when an input is not positive, or the weight does not get past the contact load
 * @source (d) linear stability of the equations of Richard, Germay & Detournay 2007 with damping added
 * @example
 * neededDamping({ bit: { wings: 4, cutStiffness: 14.1417, contactLoad: 0.746098 }, scaledWeight: 9.59488, scaledSpeed: 8 }) // → 3.64353e-3
 */
export function neededDamping({ bit, scaledWeight, scaledSpeed }: NeededDampingInput): number {
  const { wings, cutStiffness, contactLoad } = bit;
  requirePositive({ wings, cutStiffness, scaledSpeed, cuttingWeight: scaledWeight - wings * contactLoad });
  requireNotNegative({ contactLoad });
  const delay = (2 * Math.PI) / (wings * scaledSpeed);
  const slope = (scaledWeight - wings * contactLoad) / (2 * Math.PI);
  // P on the limit as a pair, with E = 1 - cos ωτ + i sin ωτ.
  const limit = (swing: number): readonly [number, number] => {
    const e = [1 - Math.cos(swing * delay), Math.sin(swing * delay)];
    const over = [-wings * slope * swing * swing * e[0], -wings * slope * swing * swing * e[1]];
    const under = [wings * cutStiffness * e[0] - swing * swing, wings * cutStiffness * e[1]];
    const size = under[0] ** 2 + under[1] ** 2;
    return [(over[0] * under[0] + over[1] * under[1]) / size, (over[1] * under[0] - over[0] * under[1]) / size];
  };
  const off = (swing: number) => 1 - swing * swing - limit(swing)[0];
  let needed = 0;
  let last = HIGHEST_SWING / STEPS;
  for (let k = 2; k <= STEPS; k++) {
    const next = (HIGHEST_SWING * k) / STEPS;
    if (off(last) * off(next) < 0) {
      const swing = bracketedRoot({ f: off, low: last, high: next, residual: 1e-9 });
      needed = Math.max(needed, limit(swing)[1] / (2 * swing));
    }
    last = next;
  }
  return needed;
}
