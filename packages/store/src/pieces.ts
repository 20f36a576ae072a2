/** Bytes of one row of an attachment [B]. */
export const PIECE = 1024 ** 2;

/** The same bytes in pieces of one size, the last one shorter; the pieces share nothing with what was given. */
export async function* inPieces(
  given: Iterable<Uint8Array> | AsyncIterable<Uint8Array>,
  size = PIECE,
): AsyncGenerator<Buffer> {
  let piece = Buffer.alloc(size);
  let filled = 0;
  for await (const bytes of given) {
    for (let at = 0; at < bytes.length; ) {
      const part = bytes.subarray(at, at + size - filled);
      piece.set(part, filled);
      at += part.length;
      filled += part.length;
      if (filled === size) {
        yield piece;
        piece = Buffer.alloc(size);
        filled = 0;
      }
    }
  }
  if (filled > 0) yield piece.subarray(0, filled);
}
