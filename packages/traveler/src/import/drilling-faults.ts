import type { ColumnReadings } from "./channel-table.ts";
import { type ChannelUnit, channelUnit } from "./channel-unit.ts";
import type { ChannelName, ChosenChannel } from "./drilling-channels.ts";
import { counted, faultOnLines, type ImportFault } from "./report.ts";

/** Rows on each side of a row that make up its surroundings when a spike is looked for [-]. */
export const SPIKE_NEIGHBOURS = 25;

/**
 * How many times the median rate of its surroundings a row may read before it is a spike of the block or the
 * recorder [-].
 *
 * @source (c) common practice, no source: a change of rock over a few feet stays well within it
 */
export const SPIKE_FACTOR = 5;

/** How many usual steps the depth may advance at once before rows are taken to be missing [-]. */
const DEPTH_JUMP_STEPS = 3;
/** Rows with one same reading in a row, other than zero, that make a channel look stuck [-]. */
const STUCK_ROWS = 50;
/** Fewest rows at which a channel without change is called dead [-]. */
const DEAD_ROWS = 20;
/** Share by which two columns of one channel may differ, rounding of small readings aside [-]. */
const PAIR_ROOM = 0.01;

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
      if (!otherUnit || otherUnit.dimension === "mass" || unit.dimension === "mass") continue;
      const [a, b] = [column.readings().values, other.readings().values];
      const apart = rowLines.filter((_, at) =>
        differ((a[at] ?? 0) * unit.factor, (b[at] ?? 0) * otherUnit.factor, otherUnit),
      );
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

/** Apart by more than the room and more than one of the coarser unit's smallest usual digit. */
function differ(a: number, b: number, unit: ChannelUnit): boolean {
  return Math.abs(a - b) > PAIR_ROOM * Math.max(Math.abs(a), Math.abs(b)) + 0.1 * unit.factor;
}

/** Faults of rows, and for each row the first that keeps it out of a drilling strength. */
export function rowFaults(parts: {
  si: ReadonlyMap<ChannelName, Float64Array>;
  depthUnit: ChannelUnit;
  rowLines: readonly number[];
}): { faults: ImportFault[]; setAside: (string | undefined)[] } {
  const { si, depthUnit, rowLines } = parts;
  const setAside: (string | undefined)[] = rowLines.map(() => undefined);
  const faults: ImportFault[] = [];
  const found = (code: string, rows: readonly number[], what: string, effect: string, bars: boolean) => {
    if (rows.length === 0) return;
    if (bars) for (const at of rows) setAside[at] ??= code;
    faults.push(
      faultOnLines({
        code,
        what: `${counted(rows.length, "row")} ${what}`,
        effect,
        lines: rows.map((at) => rowLines[at] ?? 0),
      }),
    );
  };
  const rowsWhere = (test: (at: number) => boolean): number[] => rowLines.map((_, at) => at).filter(test);
  const channel = (name: ChannelName) => (at: number) => si.get(name)?.[at] ?? Number.NaN;
  const [depth, rate, weight, speed] = [channel("depth"), channel("rate"), channel("weight"), channel("rotarySpeed")];
  const barred = "set aside: no drilling strength from them";

  found(
    "depth-missing",
    rowsWhere((at) => Number.isNaN(depth(at))),
    "without a depth",
    barred,
    true,
  );
  found(
    "depth-runs-backward",
    rowsWhere((at) => depth(at) < depth(at - 1)),
    "shallower than the row before: the depth runs backward",
    "kept, each at its own depth; the order of the rows is not used",
    false,
  );
  const seen = new Set<number>();
  const repeated = rowsWhere((at) => {
    const before = seen.has(depth(at));
    seen.add(depth(at));
    return before && !Number.isNaN(depth(at));
  });
  found(
    "depth-repeats",
    repeated,
    "at a depth that a row had before",
    "set aside, so that no depth counts twice",
    true,
  );
  const step = usualStep(si.get("depth") ?? new Float64Array(0));
  found(
    "depth-jumps",
    rowsWhere((at) => step > 0 && depth(at) - depth(at - 1) > DEPTH_JUMP_STEPS * step),
    `more than ${DEPTH_JUMP_STEPS} usual steps of ${shortNumber(step / depthUnit.factor)} ${depthUnit.name} below the row before`,
    "the depths between are not recorded",
    false,
  );
  if (si.has("weight")) {
    found(
      "weight-zero",
      rowsWhere((at) => weight(at) === 0),
      "with no weight on the bit",
      barred,
      true,
    );
    found(
      "weight-negative",
      rowsWhere((at) => weight(at) < 0),
      "with a weight below zero",
      barred,
      true,
    );
  }
  if (si.has("rotarySpeed")) {
    const what = "with a rotary speed of zero or less (pipe not turned: slid with a motor, or a dead sensor)";
    found(
      "rotary-speed-zero",
      rowsWhere((at) => speed(at) <= 0),
      what,
      barred,
      true,
    );
  }
  if (si.has("rate")) {
    found(
      "rate-zero",
      rowsWhere((at) => rate(at) <= 0),
      "with a rate of zero or less",
      barred,
      true,
    );
    const spikes = spikeRows(si.get("rate") ?? new Float64Array(0));
    const what = `with a rate over ${SPIKE_FACTOR} times the median of the ${SPIKE_NEIGHBOURS} rows on either side: a spike of the block or the recorder`;
    found("rate-spike", spikes, what, barred, true);
  }
  if (si.has("flow")) {
    const flow = channel("flow");
    found(
      "flow-zero",
      rowsWhere((at) => flow(at) <= 0),
      "with a flow of zero or less",
      "kept; the flow is not used for strength",
      false,
    );
  }
  for (const [name, words] of [
    ["rate", "rate"],
    ["weight", "weight on bit"],
    ["rotarySpeed", "rotary speed"],
  ] as const) {
    const values = si.get(name);
    if (!values) {
      for (let at = 0; at < setAside.length; at++) setAside[at] ??= `${name}-missing`;
      const what = `There is no usable ${words} channel`;
      faults.push({
        code: `${name}-absent`,
        what,
        rows: rowLines.length,
        effect: "no drilling strength can be worked out",
      });
      continue;
    }
    found(
      `${name}-missing`,
      rowsWhere((at) => Number.isNaN(values[at])),
      `without a reading of ${words}`,
      barred,
      true,
    );
  }
  return { faults, setAside };
}

const shortNumber = (value: number): string => String(Number(value.toPrecision(3)));

/** Median advance of the depth from row to row, over rows that advance [m]. */
function usualStep(depth: Float64Array): number {
  const steps = depth.map((value, at) => value - (depth[at - 1] ?? Number.NaN)).filter((advance) => advance > 0);
  return median(steps);
}

function spikeRows(rate: Float64Array): number[] {
  const spikes: number[] = [];
  rate.forEach((value, at) => {
    if (!(value > 0)) return;
    const around = rate.subarray(Math.max(0, at - SPIKE_NEIGHBOURS), at + SPIKE_NEIGHBOURS + 1);
    if (value > SPIKE_FACTOR * median(around.filter((one) => one > 0))) spikes.push(at);
  });
  return spikes;
}

/** Middle value, NaN of nothing; two middle values are averaged [unit of the values]. */
export function median(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? Number.NaN) + (sorted[Math.floor(half)] ?? Number.NaN)) / 2;
}
