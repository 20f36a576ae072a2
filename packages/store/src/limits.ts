/** How much the store takes at a time. */
export interface StoreLimits {
  /** Text of one version of a paper, in UTF-8 [B]. */
  readonly body: number;
  /** One attachment [B]. */
  readonly attachment: number;
  /** All that goes into one backup, unpacked [B]. */
  readonly backup: number;
}

/**
 * Limits that no job of a shop reaches: a traveler takes some 10 kB, a scan of a field sheet 5 MB. A backup is read back
 * whole, and Node reads no file of 2 GiB into memory [B].
 *
 * @source (c) common practice, no source
 */
export const USUAL_LIMITS: StoreLimits = { body: 4 * 1024 ** 2, attachment: 256 * 1024 ** 2, backup: 2_000_000_000 };

/** Bytes as a person reads them: `4 MiB`, `12 B`. */
export function bytesInWords(bytes: number): string {
  for (const [unit, size] of [
    ["GiB", 1024 ** 3],
    ["MiB", 1024 ** 2],
    ["KiB", 1024],
  ] as const) {
    if (bytes >= size) return `${Number((bytes / size).toFixed(1))} ${unit}`;
  }
  return `${bytes} B`;
}
