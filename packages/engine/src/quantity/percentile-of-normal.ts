import { requireBetween } from "./require.ts";

const LEAST_SHARE = 1e-10;
const MIDDLE = 0.425;

// Numerators and denominators of the rational fits, highest power first.
const MIDDLE_OVER = [
  2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946, 1971.5909503065513,
  133.14166789178438, 3.3871328727963665,
];
const MIDDLE_UNDER = [
  5226.495278852546, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751, 687.1870074920579,
  42.31333070160091, 1,
];
const TAIL_OVER = [
  7.745450142783414e-4, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
  5.769497221460691, 4.630337846156546, 1.4234371107496835,
];
const TAIL_UNDER = [
  1.0507500716444169e-9, 5.475938084995345e-4, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
  1.6763848301838038, 2.053191626637759, 1,
];

/**
 * A percentile of the standard normal distribution: how many standard deviations off the mean a share of it ends.
 *
 * Valid for shares from 1e-10 to 1 - 1e-10, to about 1e-15 of the value.
 *
 * @returns z with Φ(z) = share [-]
 * @throws RangeError when the share is nearer to 0 or 1 than 1e-10
 * @source (b) Wichura 1988, Algorithm AS 241, Applied Statistics 37:477-484, recalled
 * @example
 * normalPercentile(0.9) // → 1.2815516
 */
export function normalPercentile(share: number): number {
  requireBetween("share", share, LEAST_SHARE, 1 - LEAST_SHARE);
  const off = share - 0.5;
  if (Math.abs(off) <= MIDDLE) {
    const x = MIDDLE ** 2 - off ** 2;
    return (off * polynomial(MIDDLE_OVER, x)) / polynomial(MIDDLE_UNDER, x);
  }
  const x = Math.sqrt(-Math.log(off < 0 ? share : 1 - share)) - 1.6;
  return (Math.sign(off) * polynomial(TAIL_OVER, x)) / polynomial(TAIL_UNDER, x);
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);
}
