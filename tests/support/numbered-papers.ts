const LONG = 400_000;

/** A traveler, hardly begun, with its number all through its text, long enough that writing it takes time. */
export function longTraveler(number: number): string {
  const name = `${number} `.repeat(Math.ceil(LONG / `${number} `.length));
  return JSON.stringify({ format: "bitwright-traveler", version: 1, job: { name } });
}

/** The bytes of a numbered file of two pieces, in two parts. */
export function numberedFile(number: number): Uint8Array[] {
  return [0, 1].map((part) => Buffer.alloc(700_000, `${number}.${part} `));
}
