// Guards for misuse of the engine by code: they throw with the name and the value.
// Doubtful engineering is not misuse; it becomes a finding.

/**
 * Holds the named values to finite numbers.
 *
 * @throws RangeError when a value is not a finite number
 */
export function requireFinite(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, got ${value}`);
  }
}

/**
 * Holds the named values to finite numbers above zero.
 *
 * @throws RangeError when a value is not a finite number above zero
 */
export function requirePositive(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(Number.isFinite(value) && value > 0)) throw new RangeError(`${name} must be positive, got ${value}`);
  }
}

/**
 * Holds the named values to finite numbers of zero or more.
 *
 * @throws RangeError when a value is not a finite number of zero or more
 */
export function requireNotNegative(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(Number.isFinite(value) && value >= 0)) throw new RangeError(`${name} must not be negative, got ${value}`);
  }
}

/**
 * Holds a named value to a closed interval.
 *
 * @throws RangeError when `value` lies outside `low` to `high`, both allowed
 */
export function requireBetween(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) throw new RangeError(`${name} must lie in ${low} to ${high}, got ${value}`);
}
