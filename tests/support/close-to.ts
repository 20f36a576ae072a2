import { expect } from "vitest";

/** Holds a figure to an outside value within a relative tolerance; zero is compared within 1e-9. */
export function expectClose(got: number, expected: number, relTol: number): void {
  const room = expected === 0 ? 1e-9 : relTol * Math.abs(expected);
  expect(Math.abs(got - expected), `got ${got}, expected ${expected} within ${relTol}`).toBeLessThanOrEqual(room);
}
