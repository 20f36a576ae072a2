/**
 * Guards for misuse of the engine by code: they throw with the name and the value.
 * Doubtful engineering is not misuse; it becomes a finding.
 */

/** @throws RangeError when a value is not a finite number */
export function requireFinite(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, got ${value}`);
  }
}

/** @throws RangeError when a value is not a finite number above zero */
export function requirePositive(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(Number.isFinite(value) && value > 0)) throw new RangeError(`${name} must be positive, got ${value}`);
  }
}

/** @throws RangeError when a value is not a finite number of zero or more */
export function requireNotNegative(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(Number.isFinite(value) && value >= 0)) throw new RangeError(`${name} must not be negative, got ${value}`);
  }
}

/** @throws RangeError when `value` lies outside `low` to `high`, both allowed */
export function requireBetween(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) throw new RangeError(`${name} must lie in ${low} to ${high}, got ${value}`);
}
