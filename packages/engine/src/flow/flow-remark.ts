import type { Finding, Severity, Source } from "../quantity/index.ts";

/** Room for the last digits of an inch turned into metres, so that a port of just the limit passes. */
const EDGE = 1e-9;

/** Below a limit by more than its last digits. */
export function isBelow(value: number, limit: number): boolean {
  return value < limit * (1 - EDGE);
}

/** Above a limit by more than its last digits. */
export function isAbove(value: number, limit: number): boolean {
  return value > limit * (1 + EDGE);
}

/** A figure and the limit it is held to. */
export interface Held {
  /** [unit] */
  readonly value: number;
  /** [unit] */
  readonly limit: number;
  readonly unit: string;
  readonly source: Source;
}

/** A finding of the flow. */
export function remark(code: string, severity: Severity, where: string, message: string, held: Held): Finding {
  return { code: `flow.${code}`, severity, where, message, ...held };
}
