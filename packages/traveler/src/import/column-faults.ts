import type { ColumnReadings } from "./channel-table.ts";
import { channelUnit, siSize } from "./channel-unit.ts";
import type { ChosenChannel } from "./drilling-channels.ts";
import { counted, faultOnLines, type ImportFault } from "./report.ts";

/** Rows with one same reading in a row, other than zero, that make a channel look stuck [-]. */
const STUCK_ROWS = 50;
/** Fewest rows at which a channel without change is called dead [-]. */
const DEAD_ROWS = 20;
/** Share by which two columns of one channel may differ, rounding of small readings aside [-]. */
const PAIR_ROOM = 0.01;
/** Rounding that two columns of one channel are allowed [the coarser of their units]: two of the second decimal. */
const PAIR_DIGITS = 0.02;

/** Faults of one column as such: words, nulls, no unit, a dead or stuck reading. */
export function columnFaults(parts: {
  channel: ChosenChannel;
  readings: ColumnReadings;
  rowLines: readonly number[];
}): ImportFault[] {
  const { channel, readings, rowLines } = parts;
  const { kind, column, unit, unitFrom, otherUnit } = channel;
  const faults: ImportFault[] = [];
  const onRows = (code: string, rows: readonly number[], what: string, effect: string) => {
    if (rows.length === 0) return;
    faults.push(
      faultOnLines({ code: `${kind.channel}-${code}`, what, effect, lines: rows.map((at) => rowLines[at] ?? 0) }),
    );
  };
  const { words, nulls, values } = readings;
  onRows(
    "no-number",
    words,
    `${counted(words.length, "cell")} of "${column.header}" without a number`,
    "no reading there",
  );
  onRows(
    "null",
    nulls,
    `${counted(nulls.length, "cell")} of "${column.header}" with a value that stands for no reading`,
    "no reading there",
  );

  const rows = rowLines.length;
  if (unitFrom === "assumed" && unit) {
    const effect = `taken as ${unit.name}; say the unit if it is another`;
    faults.push({ code: `${kind.channel}-unit-assumed`, what: `"${column.header}" states no unit`, rows, effect });
  }
  // A torque in another unit has a fault of its own, which says what it is good for.
  if (!unit && kind.channel !== "torque") {
    const stated =
      otherUnit === undefined ? "states no unit" : `is in ${otherUnit.name}, which is no unit of ${kind.words}`;
    const effect = "not used; say its unit";
    faults.push({ code: `${kind.channel}-unit-missing`, what: `"${column.header}" ${stated}`, rows, effect });
  }

  const finite = values.filter((value) => Number.isFinite(value));
  const first = finite[0];
  if (finite.length === 0) {
    const effect = "nothing can be worked from it";
    faults.push({ code: `${kind.channel}-dead`, what: `"${column.header}" holds no reading at all`, rows, effect });
  } else if (finite.length >= DEAD_ROWS && finite.every((value) => value === first)) {
    const what = `"${column.header}" reads ${first} on every row: a dead channel`;
    faults.push({ code: `${kind.channel}-dead`, what, rows: finite.length, effect: "do not lean on it" });
  } else {
    const stuck = stuckRows(values);
    const what = `${counted(stuck.length, "row")} in stretches of ${STUCK_ROWS} or more where "${column.header}" does not change`;
    onRows("stuck", stuck, what, "kept; the sensor may have been stuck");
  }
  return faults;
}

function stuckRows(values: Float64Array): number[] {
  const stuck: number[] = [];
  for (let from = 0; from < values.length; ) {
    let to = from + 1;
    while (to < values.length && values[to] === values[from]) to++;
    if (to - from >= STUCK_ROWS && values[from] !== 0) for (let at = from; at < to; at++) stuck.push(at);
    from = to;
  }
  return stuck;
}

/** Faults between columns: two systems of units mixed, and a channel recorded twice with two readings. */
export function pairFaults(channels: readonly ChosenChannel[], rowLines: readonly number[]): ImportFault[] {
  const faults: ImportFault[] = [];
  const systems = new Map<string, string[]>();
  for (const { kind, unit } of channels) {
    if (!unit || kind.channel === "rotarySpeed") continue;
    const system = isFieldUnit(unit.name) ? "field" : "metric";
    systems.set(system, [...(systems.get(system) ?? []), `${kind.words} in ${unit.name}`]);
  }
  if (systems.size > 1) {
    const parts = [...systems.values()].map((names) => names.join(", "));
    faults.push({
      code: "units-mixed",
      what: `Field and metric units in one record: ${parts.join("; ")}`,
      rows: rowLines.length,
      effect: "each channel is taken in its own unit",
    });
  }
  for (const { kind, column, unit, others } of channels) {
    if (!unit) continue;
    for (const other of others) {
      const otherUnit = other.unit === undefined ? undefined : channelUnit(other.unit, kind.dimensions);
      if (!otherUnit) continue;
      const [a, b] = [column.readings().values, other.readings().values];
      const [size, otherSize] = [siSize(unit), siSize(otherUnit)];
      const room = PAIR_DIGITS * Math.max(size, otherSize);
      const apart = rowLines.filter((_, at) => {
        const [one, two] = [(a[at] ?? 0) * size, (b[at] ?? 0) * otherSize];
        return Math.abs(one - two) > PAIR_ROOM * Math.max(Math.abs(one), Math.abs(two)) + room;
      });
      if (apart.length === 0) continue;
      faults.push(
        faultOnLines({
          code: `${kind.channel}-columns-differ`,
          what: `${counted(apart.length, "row")} where "${column.header}" and "${other.header}" differ by more than ${PAIR_ROOM * 100} %`,
          effect: `"${column.header}" is used`,
          lines: apart,
        }),
      );
    }
  }
  return faults;
}

const isFieldUnit = (name: string): boolean =>
  /^(ft|in|lbf|klbf|psi|ksi|gpm|ft-lbf|kft-lbf|in-lbf|bbl\/min)/.test(name);
