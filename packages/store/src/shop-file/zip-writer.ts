import { createHash } from "node:crypto";
import { closeSync, fsyncSync, openSync, writeSync } from "node:fs";
import { Zip, ZipDeflate } from "fflate";
import type { ShopContents } from "./shop-file.ts";

/** What is known of an entry once it is written. */
type WrittenEntry = ShopContents["entries"][number];

/** A zip file that is written entry by entry, piece by piece. */
export interface ZipWriter {
  readonly entry: (
    name: string,
    pieces: Iterable<Uint8Array> | AsyncIterable<Uint8Array>,
    grown?: (bytes: number) => void,
  ) => Promise<WrittenEntry>;
  /** Writes the index and waits until all of it is on the disk. */
  readonly end: () => void;
  /** Closes the file as far as it has come. */
  readonly abandon: () => void;
}

/** The first and the last time that a zip can tell. A machine whose clock has lost its battery must still be able to save. */
const [EARLIEST, LATEST] = [new Date(1980, 0, 2), new Date(2099, 11, 30)] as const;

/** Starts a zip file; every entry carries the same time. */
export function zipWriter(file: string, at: Date): ZipWriter {
  const handle = openSync(file, "w", 0o600);
  let failed: Error | null = null;
  const zip = new Zip((error, bytes) => {
    failed ??= error;
    for (let written = 0; written < bytes.length; ) written += writeSync(handle, bytes, written);
  });
  return {
    async entry(name, pieces, grown = () => {}) {
      const hash = createHash("sha256");
      const packed = new ZipDeflate(name, { level: 6 });
      packed.mtime = at < EARLIEST ? EARLIEST : at > LATEST ? LATEST : at;
      zip.add(packed);
      let size = 0;
      for await (const bytes of pieces) {
        size += bytes.length;
        grown(bytes.length);
        hash.update(bytes);
        packed.push(bytes);
      }
      packed.push(new Uint8Array(0), true);
      if (failed) throw failed;
      return { name, size, sha256: hash.digest("hex") };
    },
    end() {
      zip.end();
      fsyncSync(handle);
      closeSync(handle);
      if (failed) throw failed;
    },
    abandon: () => closeSync(handle),
  };
}
