/** A vector or point in the bit frame: x, y across the bit, z along its axis and positive down-hole [m]. */
export type Vector = readonly [x: number, y: number, z: number];

/** Sum of two vectors. */
export function plus(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** Difference `a - b`. */
export function minus(a: Vector, b: Vector): Vector {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

/** A vector stretched by a factor. */
export function times(k: number, a: Vector): Vector {
  return [k * a[0], k * a[1], k * a[2]];
}

/**
 * Scalar product.
 *
 * @returns a · b [product of the two units]
 * @source (d) geometry
 * @example
 * dot([1, 2, 3], [4, 5, 6]) // → 32
 */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Vector product, right-handed. */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/**
 * Length of a vector.
 *
 * @returns |a| [unit of a]
 * @source (d) geometry
 * @example
 * length([3, 4, 12]) // → 13
 */
export function length(a: Vector): number {
  return Math.sqrt(dot(a, a));
}

/**
 * The vector of length one along `a`.
 *
 * @throws RangeError when `a` has no length
 */
export function unit(a: Vector): Vector {
  const size = length(a);
  if (!(size > 0)) throw new RangeError(`a direction needs a vector with length, got (${a.join(", ")})`);
  return times(1 / size, a);
}
