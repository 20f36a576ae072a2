import { type LasCurve, type LasItem, lasItem } from "./las-file.ts";
import { counted, type faultLog } from "./report.ts";

/**
 * Checks of what a LAS file says against what it holds. None of them stops the reading: the sample files published
 * beside the standard break some of these rules themselves.
 */

/** Index mnemonics that the standard knows: those of the 2014 text and INDEX, added in 2017. */
const INDEX_MNEMONICS = new Set(["DEPT", "DEPTH", "TIME", "INDEX"]);

/**
 * Whether a mnemonic is one that the standard accepts for the index.
 *
 * @source (a) CWLS LAS 2.0 standard, texts of January 2014 and February 2017
 */
export function isLasIndexMnemonic(mnemonic: string): boolean {
  return INDEX_MNEMONICS.has(mnemonic.toUpperCase());
}

/**
 * Whether `value` is a whole number of `step`s, by decimal arithmetic on the digits as written: in binary 637/0.1524
 * leaves a remainder of its own.
 *
 * @throws RangeError when a text is no decimal number or the step is zero
 */
export function isWholeNumberOfSteps(value: string, step: string): boolean {
  const [valueDigits, valuePlaces] = decimalDigits(value);
  const [stepDigits, stepPlaces] = decimalDigits(step);
  if (stepDigits === 0n) throw new RangeError("step must not be zero, got 0");
  const places = Math.max(valuePlaces, stepPlaces);
  const scaled = (digits: bigint, from: number) => digits * 10n ** BigInt(places - from);
  return scaled(valueDigits, valuePlaces) % scaled(stepDigits, stepPlaces) === 0n;
}

function decimalDigits(text: string): [bigint, number] {
  const parts = /^(?<sign>[+-]?)(?<whole>\d*)\.?(?<places>\d*)$/.exec(text.trim())?.groups;
  if (!parts || `${parts.whole}${parts.places}` === "") throw new RangeError(`${text} must be a decimal number`);
  const digits = BigInt(`${parts.whole}${parts.places}`);
  return [parts.sign === "-" ? -digits : digits, (parts.places ?? "").length];
}

/**
 * Values that loggers write for no reading when the file does not say which [-].
 *
 * @source (a) CWLS LAS 2.0 standard, text of January 2014: the null values it names as common
 */
export const COMMON_NULLS: readonly number[] = [-999.25, -9999, -9999.25];

const isDecimal = (text: string): boolean => /^[+-]?(\d+\.?\d*|\.\d+)$/.test(text.trim());

type Log = ReturnType<typeof faultLog>;

/** Items of the well section that the standard asks for; in each group one is enough. */
const REQUIRED_ITEMS: readonly (readonly string[])[] = [
  ["STRT"],
  ["STOP"],
  ["STEP"],
  ["NULL"],
  ["COMP"],
  ["WELL"],
  ["FLD"],
  ["LOC"],
  ["SRVC"],
  ["DATE"],
  ["PROV", "CNTY", "STAT", "CTRY"],
  ["UWI", "API"],
];

/** Notes what the well section lacks or says twice. */
export function checkWellItems(well: readonly LasItem[], log: Log): void {
  const missing = REQUIRED_ITEMS.filter((group) => !group.some((mnemonic) => lasItem(well, mnemonic)));
  const others = missing.filter(([first]) => first !== "NULL").map((group) => group.join(" or "));
  if (others.length > 0) {
    log.note({
      code: "well-items-missing",
      what: () => `The well section lacks ${others.join(", ")}`,
      effect: "read without",
    });
  }
  if (missing.some(([first]) => first === "NULL")) {
    log.note({
      code: "null-missing",
      what: () => "The well section does not say which value stands for no reading (NULL)",
      effect: `${COMMON_NULLS.join(", ")} are taken so, where they occur`,
    });
  }
  for (const mnemonic of ["STRT", "STOP", "STEP", "NULL"]) {
    const items = well.filter((item) => item.mnemonic.toUpperCase() === mnemonic);
    const [first, second] = items;
    if (first && second) {
      const same = first.data === second.data;
      log.note(
        {
          code: `well-item-twice-${mnemonic}`,
          what: () => `The well section says ${mnemonic} twice${same ? "" : ", with different values"}`,
          effect: `the first, ${first.data}, is used`,
        },
        second.line,
      );
    }
    if (first && !isDecimal(first.data)) {
      log.note(
        {
          code: `well-item-no-number-${mnemonic}`,
          what: () => `${mnemonic} is no number: "${first.data}"`,
          effect: "not used",
        },
        first.line,
      );
    }
  }
}

/** How far a stated start, stop or step may lie from the rows, as a share of a step, before it is named [-]. */
const STEP_ROOM = 0.01;

/** Notes where the start, stop and step that the well section states do not fit the index of the rows. */
export function checkIndex(well: readonly LasItem[], index: LasCurve, rowLines: readonly number[], log: Log): void {
  if (!isLasIndexMnemonic(index.mnemonic)) {
    log.note({
      code: "index-mnemonic",
      what: () => `The first curve is ${index.mnemonic}, not one of ${[...INDEX_MNEMONICS].join(", ")}`,
      effect: "taken as the index all the same",
    });
  }
  const stated = (mnemonic: string) => {
    const item = lasItem(well, mnemonic);
    return item && isDecimal(item.data) ? item : undefined;
  };
  const [start, stop, step] = [stated("STRT"), stated("STOP"), stated("STEP")];
  for (const item of [start, stop, step]) {
    if (!item || item.unit.replace(/[[\]]/g, "").toUpperCase() === index.unit.toUpperCase()) continue;
    log.note(
      {
        code: "index-units-differ",
        what: (n) => `${n} of STRT, STOP and STEP in ${quoted(item.unit)}, the index itself in ${quoted(index.unit)}`,
        effect: "the unit of the index curve is taken for its readings",
      },
      item.line,
    );
  }
  const stepText = step?.data ?? "0";
  const stepSize = Number(stepText);
  if (stepSize !== 0) {
    for (const item of [start, stop]) {
      if (!item || isWholeNumberOfSteps(item.data, stepText)) continue;
      log.note(
        {
          code: "not-whole-steps",
          what: (n) => `${counted(n, "limit")} of the index not a whole number of steps of ${stepText}`,
          effect: "the depths of the rows are used as they stand",
        },
        item.line,
      );
    }
  }
  checkRows({ start, stop, stepSize, index, rowLines, log });
}

const quoted = (unit: string): string => (unit === "" ? "no unit" : `"${unit}"`);

function checkRows(parts: {
  start: LasItem | undefined;
  stop: LasItem | undefined;
  stepSize: number;
  index: LasCurve;
  rowLines: readonly number[];
  log: Log;
}): void {
  const { start, stop, stepSize, index, rowLines, log } = parts;
  const depths = index.values;
  const room = Math.abs(stepSize) * STEP_ROOM + 1e-9;
  const ends = [
    { item: start, code: "start-differs", name: "STRT", row: "first", value: depths[0] ?? Number.NaN },
    { item: stop, code: "stop-differs", name: "STOP", row: "last", value: depths.at(-1) ?? Number.NaN },
  ];
  for (const { item, code, name, row, value } of ends) {
    if (!item || Math.abs(Number(item.data) - value) <= room) continue;
    log.note(
      { code, what: () => `${name} says ${item.data}, the ${row} row is ${value}`, effect: "the rows are used" },
      item.line,
    );
  }
  let direction = Math.sign(stepSize);
  for (let at = 1; at < depths.length; at++) {
    const advance = (depths[at] ?? Number.NaN) - (depths[at - 1] ?? Number.NaN);
    if (direction === 0) direction = Math.sign(advance);
    const line = rowLines[at] ?? 0;
    if (Number.isNaN(advance)) continue;
    if (advance === 0) {
      log.note(
        { code: "index-repeats", what: (n) => `${counted(n, "row")} repeat the index before`, effect: "kept" },
        line,
      );
    } else if (Math.sign(advance) !== direction) {
      const what = (n: number) => `${counted(n, "row")} run against the direction of the index`;
      log.note({ code: "index-runs-back", what, effect: "kept where they stand" }, line);
    } else if (stepSize !== 0 && Math.abs(advance - stepSize) > room) {
      const what = (n: number) => `${counted(n, "row")} not one step of ${stepSize} from the row before`;
      log.note({ code: "step-differs", what, effect: "the depths of the rows are used as they stand" }, line);
    }
  }
}
