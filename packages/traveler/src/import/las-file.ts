import type { LasDelimiter } from "./las-rows.ts";
import type { ImportReport } from "./report.ts";
import type { TextEncoding } from "./text-encoding.ts";

/** One line of a header section. */
export interface LasItem {
  readonly mnemonic: string;
  readonly unit: string;
  readonly data: string;
  readonly description: string;
  /** LAS 3: the set or parameter the line is tied to. */
  readonly tiedTo?: string;
  /** Line of the file, counted from 1 [-]. */
  readonly line: number;
}

/** One curve with its readings. */
export interface LasCurve {
  /** As the file has it. */
  readonly mnemonic: string;
  /** The mnemonic, numbered where the file has it more than once: `SFLU`, `SFLU (2)`. */
  readonly name: string;
  /** As the file has it, without brackets; empty where none is stated. */
  readonly unit: string;
  readonly description: string;
  /** LAS 3: the format in braces, without them. */
  readonly format?: string;
  /** The readings, NaN for null, for missing and for text [unit of the curve]. */
  readonly values: Float64Array;
  /** The cells of a curve of words; absent for a curve of numbers. */
  readonly texts?: readonly string[];
}

/** Curves that share one index. Before LAS 3 a file has one set, the log. */
export interface LasSet {
  /** `log`, `drilling`, `tops` and so on. */
  readonly name: string;
  /** The first is the index. */
  readonly curves: readonly LasCurve[];
  /** Line of the file each row began on, counted from 1 [-]. */
  readonly rowLines: readonly number[];
}

/** A LAS file, read. */
export interface LasFile {
  readonly refused: false;
  /** As stated: `1.2`, `2.0`, `3.0`. */
  readonly version: string;
  readonly wrapped: boolean;
  readonly delimiter: LasDelimiter;
  readonly encoding: TextEncoding;
  /** The value that stands for no reading; absent where the file states none [-]. */
  readonly nullValue?: number;
  readonly well: readonly LasItem[];
  readonly parameters: readonly LasItem[];
  /** The curves of the log; those of the first set where the file has no log. */
  readonly curves: readonly LasCurve[];
  readonly sets: readonly LasSet[];
  readonly report: ImportReport;
}

/** The first line with a mnemonic, whatever its case. */
export function lasItem(items: readonly LasItem[], mnemonic: string): LasItem | undefined {
  return items.find((item) => item.mnemonic.toUpperCase() === mnemonic.toUpperCase());
}

/** The curve with a name or mnemonic, whatever its case. */
export function lasCurve(curves: readonly LasCurve[], name: string): LasCurve | undefined {
  const wanted = name.toUpperCase();
  return (
    curves.find((curve) => curve.name.toUpperCase() === wanted) ??
    curves.find((curve) => curve.mnemonic.toUpperCase() === wanted)
  );
}
