import type { ChannelUnit } from "./channel-unit.ts";
import type { ChannelName } from "./drilling-channels.ts";
import { counted, faultOnLines, type ImportFault } from "./report.ts";

/** Rows on each side of a row that make up its surroundings when a spike is looked for [-]. */
const SPIKE_NEIGHBOURS = 25;

/**
 * How many times the median rate of its surroundings a row may read before it is a spike of the block or the
 * recorder [-].
 *
 * @source (c) common practice, no source: a change of rock over a few feet stays well within it
 */
const SPIKE_FACTOR = 5;

/** How many usual steps the depth may advance at once before rows are taken to be missing [-]. */
const DEPTH_JUMP_STEPS = 3;

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
function median(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? Number.NaN) + (sorted[Math.floor(half)] ?? Number.NaN)) / 2;
}
