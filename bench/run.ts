// How long the cutting model takes: `npm run bench`. One core but for the last table, the best of many runs, the same inputs every time.
import {
  type CuttingKernel,
  compiledKernel,
  cutterLoads,
  drillAtWeight,
  type EdgeTrace,
  emptyEdgeLoads,
  emptyEngagement,
  plainKernel,
  steadyDrilling,
  traceEdges,
} from "@bitwright/engine";
import { BENCH_ADVANCE, benchBit, benchRock } from "./bench-bit.ts";
import { bestTime } from "./best-time.ts";
import { cYardstick } from "./c-yardstick.ts";
import { layoutThreadsTable } from "./layout-threads.ts";
import { plainTable } from "./table.ts";

const WEIGHT = 40_000;
const ROTARY_SPEED = 10;
/** An engagement may take so many times what it takes in C. */
const MOST_TIMES_C = 2.5;
const STEADY_SOLVE_LIMIT = 1e-3;
const CANDIDATE_LIMIT = 2e-3;
/** States that a solver looks at for one candidate. */
const STATES_A_CANDIDATE = 3;
/** The dearest pass of the table below may take so many times the cheapest: cost then runs in step with their number. */
const MOST_SPREAD = 2;

const us = (seconds: number) => `${(seconds * 1e6).toFixed(seconds < 1e-4 ? 1 : 0)} us`;
const times = (ratio: number) => `${ratio.toFixed(2)} x`;
const verdict = (good: boolean) => (good ? "pass" : "FAIL");

/** One trace with the room for its answers. */
function workOf(trace: EdgeTrace) {
  const room = { engagement: emptyEngagement(trace), loads: emptyEdgeLoads(trace) };
  const engage = (kernel: CuttingKernel) => kernel.engage(trace, BENCH_ADVANCE, room.engagement);
  const edgeLoads = (kernel: CuttingKernel) => kernel.edgeLoads(trace, room.engagement, benchRock, room.loads);
  return { trace, engage, edgeLoads };
}
type Work = ReturnType<typeof workOf>;

/** Engagement and forces at one advance. */
function stateOf(work: Work, kernel: CuttingKernel): void {
  work.engage(kernel);
  work.edgeLoads(kernel);
}

/** A kernel that has only ever seen one bit is compiled for that bit alone and looks quicker than it is in use. */
function warmUp(kernel: CuttingKernel): void {
  const works = [18, 20, 22].map((cutters) => workOf(traceEdges(benchBit(cutters))));
  for (let n = 0; n < 3000; n++) {
    for (const work of works) stateOf(work, kernel);
  }
}

const layout = benchBit();
const trace = traceEdges(layout);
const work = workOf(trace);
const quick = compiledKernel();
const kernels: readonly (readonly [string, CuttingKernel])[] = [
  ["plain", plainKernel],
  ...(quick ? ([["compiled", quick]] as const) : []),
];
/** The goals are those of the kernel that a study would choose; the plain one is timed beside it. */
const isQuickest = (kernel: CuttingKernel) => kernel === (quick ?? plainKernel);
for (const [, kernel] of kernels) warmUp(kernel);

console.log(
  `One bit of ${layout.cutters.length} cutters on ${trace.cellRadius.length} cells: ${trace.height.length} passes.\n`,
);
const inC = cYardstick(trace, benchRock, BENCH_ADVANCE);
if (!inC) console.log("No gcc here: nothing is set beside C.\n");
else checkAgainstC(work, inC);
if (!quick) console.log("This host runs no WebAssembly: the plain kernel alone is timed.\n");

const rows: string[][] = [["what", "time", "beside", "ratio", "goal", ""]];
if (inC) {
  rows.push(["engagement, C (gcc -O3 -march=native)", us(inC.engage)], ["forces, C", us(inC.edgeLoads)]);
}
for (const [name, kernel] of kernels) {
  const engagement = bestTime(() => work.engage(kernel));
  const forces = bestTime(() => work.edgeLoads(kernel));
  rows.push([`engagement, ${name}`, us(engagement), ...besideC(engagement, inC?.engage, isQuickest(kernel))]);
  rows.push([`forces, ${name}`, us(forces), ...besideC(forces, inC?.edgeLoads, false)]);
}
const tracing = bestTime(() => traceEdges(layout));
rows.push(["trace", us(tracing)]);
for (const [name, kernel] of kernels) {
  const solve = (traced: EdgeTrace) => {
    const bitInRock = { trace: traced, response: benchRock, kernel };
    cutterLoads(bitInRock, drillAtWeight(bitInRock, WEIGHT), { rotarySpeed: ROTARY_SPEED });
  };
  const time = bestTime(() => solve(trace));
  rows.push([
    `steady solve with cutter results, ${name}`,
    ...besideLimit(time, STEADY_SOLVE_LIMIT, isQuickest(kernel)),
  ]);
  const traced = bestTime(() => solve(traceEdges(layout)));
  rows.push([`the same, trace included, ${name}`, ...besideLimit(traced, STEADY_SOLVE_LIMIT, isQuickest(kernel))]);
}
for (const [name, kernel] of kernels) {
  const input = { layout, response: benchRock, weight: WEIGHT, rotarySpeed: ROTARY_SPEED, kernel };
  const whole = bestTime(() => steadyDrilling(input));
  rows.push([`the same, with findings and workings, ${name}`, us(whole)]);
}
for (const [name, kernel] of kernels) {
  const candidate = bestTime(() => {
    const fresh = workOf(traceEdges(layout));
    for (let state = 0; state < STATES_A_CANDIDATE; state++) stateOf(fresh, kernel);
  });
  rows.push([
    `candidate: trace and ${STATES_A_CANDIDATE} states, ${name}`,
    ...besideLimit(candidate, CANDIDATE_LIMIT, isQuickest(kernel)),
  ]);
}
console.log(plainTable(rows));
console.log(`\n${costTable()}`);
console.log(`\n${layoutThreadsTable()}`);

function besideC(time: number, yardstick: number | undefined, hasGoal: boolean): string[] {
  if (!yardstick) return [];
  const ratio = time / yardstick;
  return ["C", times(ratio), ...(hasGoal ? [`<= ${MOST_TIMES_C} x`, verdict(ratio <= MOST_TIMES_C)] : [])];
}

function besideLimit(time: number, limit: number, hasGoal: boolean): string[] {
  return [us(time), us(limit), times(time / limit), ...(hasGoal ? ["<= 1 x", verdict(time <= limit)] : [])];
}

/** The yardstick is none unless it comes to the same. */
function checkAgainstC({ engage, edgeLoads }: Work, { volume, torque }: NonNullable<typeof inC>): void {
  const sum = (row: Float64Array) => row.reduce((whole, part) => whole + part, 0);
  const ours = { volume: sum(engage(plainKernel).volume), torque: sum(edgeLoads(plainKernel).torque) };
  const off = Math.max(Math.abs(ours.volume / volume - 1), Math.abs(ours.torque / torque - 1));
  if (!(off < 1e-12)) throw new Error(`C comes to other figures, off by ${off}`);
}

function costTable(): string {
  const kernel = quick ?? plainKernel;
  const heads = ["cutters", "cells", "passes", "trace", "engagement and forces", "for each pass"];
  const each: number[] = [];
  const body = [10, 20, 40].flatMap((cutters) =>
    [381, 763, 1526].map((cells) => {
      const bit = benchBit(cutters);
      const one = workOf(traceEdges(bit, { cells }));
      const tracingOne = bestTime(() => traceEdges(bit, { cells }), { forMs: 150 });
      const state = bestTime(() => stateOf(one, kernel), { forMs: 150 });
      const passes = one.trace.height.length;
      const perPass = (tracingOne + state) / passes;
      each.push(perPass);
      return [`${cutters}`, `${cells}`, `${passes}`, us(tracingOne), us(state), `${(perPass * 1e9).toFixed(0)} ns`];
    }),
  );
  const spread = Math.max(...each) / Math.min(...each);
  const said = `cost against cutters x cells: dearest pass beside cheapest ${times(spread)}, goal <= ${MOST_SPREAD} x: ${verdict(spread <= MOST_SPREAD)}`;
  return `${plainTable([heads, ...body])}\n${said}`;
}
