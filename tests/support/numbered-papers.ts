import { travelerText } from "./shop-of-test.ts";

const LONG = 400_000;

/** A traveler with its number all through its text, long enough that writing it takes time. */
export function longTraveler(number: number): string {
  return travelerText(`${number} `.repeat(Math.ceil(LONG / `${number} `.length)));
}

/** The bytes of a numbered file of two pieces, in two parts. */
export function numberedFile(number: number): Uint8Array[] {
  return [0, 1].map((part) => Buffer.alloc(700_000, `${number}.${part} `));
}
