import { requireFinite } from "./require.ts";

/** What a root search needs. */
export interface BracketedRootInput {
  /** The function whose zero is sought; continuous, of opposite sign at the two ends. */
  readonly f: (x: number) => number;
  /** Lower end of the bracket [unit of x]. */
  readonly low: number;
  /** Upper end of the bracket [unit of x]. */
  readonly high: number;
  /** The largest |f| that counts as solved [unit of f]. */
  readonly residual: number;
  /** The bracket width under which the search ends [unit of x]; default 1e-15 of the bracket. */
  readonly width?: number;
}

const MOST_STEPS = 200;

/**
 * Zero of a continuous function inside a bracket, by Brent's method (inverse quadratic and secant steps held inside a
 * bisection).
 *
 * @returns the x of the zero [unit of x]
 * @throws RangeError when the ends do not bracket a zero, or the residual asked for is not reached
 * @source (b) Brent 1973, Algorithms for Minimization without Derivatives, ch. 4, recalled
 * @example
 * bracketedRoot({ f: (x) => x * x - 2, low: 0, high: 2, residual: 1e-12 }) // → 1.414214
 */
export function bracketedRoot({ f, low, high, residual, width }: BracketedRootInput): number {
  requireFinite({ low, high, residual });
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (Math.abs(fa) <= residual) return a;
  if (Math.abs(fb) <= residual) return b;
  if (!(fa * fb < 0)) {
    throw new RangeError(`no zero between ${low} (f ${fa}) and ${high} (f ${fb})`);
  }
  const narrow = width ?? 1e-15 * Math.abs(high - low);
  let c = a;
  let fc = fa;
  let step = b - a;
  let lastStep = step;
  for (let n = 0; n < MOST_STEPS; n++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const half = (c - b) / 2;
    if (Math.abs(fb) <= residual || Math.abs(half) <= narrow) break;
    if (Math.abs(lastStep) >= narrow && Math.abs(fa) > Math.abs(fb)) {
      const ratio = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * ratio;
        q = 1 - ratio;
      } else {
        const r = fb / fc;
        const t = fa / fc;
        p = ratio * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (ratio - 1);
      }
      if (p > 0) q = -q;
      p = Math.abs(p);
      if (2 * p < Math.min(3 * half * q - Math.abs(narrow * q), Math.abs(lastStep * q))) {
        lastStep = step;
        step = p / q;
      } else {
        step = half;
        lastStep = half;
      }
    } else {
      step = half;
      lastStep = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > narrow ? step : Math.sign(half) * narrow;
    fb = f(b);
    if (fb * fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      lastStep = step;
    }
  }
  if (!(Math.abs(fb) <= residual)) {
    throw new RangeError(`root search stopped at ${b} with residual ${fb}, wanted ${residual}`);
  }
  return b;
}
