import { requireNotNegative } from "../quantity/index.ts";
import type { CuttingKernel } from "./cutting-kernel.ts";
import { emptyEdgeLoads, LAW, lawTable, SUMS, takeSums } from "./edge-loads.ts";
import type { EdgeTrace } from "./edge-trace.ts";
import { emptyEngagement } from "./engage.ts";
import { KERNEL_CODE } from "./kernel-code.ts";

/** What kernel/edge-kernel.ts gives to its host. */
interface KernelExports {
  readonly memory: { readonly buffer: ArrayBuffer; grow(pages: number): number };
  lay(cells: number, passes: number, cutters: number, cellWidth: number): void;
  engage(advance: number): void;
  edgeLoads(contactStress: number, flatFriction: number, kappa: number): void;
}

/** The part of the host's WebAssembly that is used; the language's own library does not speak of it. */
declare const WebAssembly:
  | {
      readonly Module: new (code: Uint8Array) => object;
      readonly Instance: new (module: object) => { readonly exports: object };
    }
  | undefined;

/**
 * The loops of `engage` and `edgeLoads` compiled ahead of time; none where the host runs no WebAssembly or
 * lets nothing be compiled.
 *
 * Each kernel has its own memory and takes a trace into it once, for as long as that same trace is asked for: a trace must
 * not be written to between two calls. Use one kernel for one solution at a time.
 *
 * @source (d) the loops of `engage` and `edgeLoads`, operation for operation
 */
export function compiledKernel(): CuttingKernel | undefined {
  if (typeof WebAssembly === "undefined") return undefined;
  const code = bytesOf(KERNEL_CODE);
  try {
    const { exports } = new WebAssembly.Instance(new WebAssembly.Module(code));
    return kernelOf(exports as KernelExports);
  } catch {
    // A page's policy may forbid compiling; the plain kernel does the same there.
    return undefined;
  }
}

function bytesOf(digits: string): Uint8Array {
  return Uint8Array.from({ length: digits.length / 2 }, (_, at) =>
    Number.parseInt(digits.slice(2 * at, 2 * at + 2), 16),
  );
}

function kernelOf(code: KernelExports): CuttingKernel {
  let laid: LaidTrace | undefined;
  const roomOf = (trace: EdgeTrace): LaidTrace => {
    if (laid?.trace !== trace) laid = layTrace(code, trace);
    return laid;
  };
  return {
    engage: (trace, advance, into = emptyEngagement(trace)) => {
      requireNotNegative({ advance });
      const room = roomOf(trace);
      code.engage(advance);
      into.depth.set(room.depth);
      into.area.set(room.area);
      into.volume.set(room.volume);
      into.advance = advance;
      return into;
    },
    edgeLoads: (trace, { depth }, response, into = emptyEdgeLoads(trace)) => {
      const room = roomOf(trace);
      room.depth.set(depth);
      room.laws.set(lawTable(trace, response));
      code.edgeLoads(response.contactStress, response.flatFriction, response.kappa);
      return takeSums(room.sums, into);
    },
  };
}

/** A trace in the kernel's memory, with what is handed over at each call. */
interface LaidTrace {
  readonly trace: EdgeTrace;
  readonly depth: Float64Array;
  readonly area: Float64Array;
  readonly volume: Float64Array;
  readonly laws: Float64Array;
  readonly sums: Float64Array;
}

const BYTES_A_PAGE = 65_536;

/** Copies a trace into the memory, row after row as kernel/edge-kernel.ts looks for them. */
function layTrace({ memory, lay }: KernelExports, trace: EdgeTrace): LaidTrace {
  const { height, azimuth, cosAzimuth, sinAzimuth, slope, cosSlope, flatLength, chamferHeight } = trace;
  const passRows = [height, azimuth, cosAzimuth, sinAzimuth, slope, cosSlope, flatLength, chamferHeight];
  const cells = trace.cellRadius.length;
  const passes = height.length;
  const cutters = trace.layout.cutters.length;
  const doubles = (passRows.length + 1) * passes + cells + (2 + LAW + SUMS) * cutters;
  const wholes = cells + 1 + passes;
  const bytes = doubles * Float64Array.BYTES_PER_ELEMENT + wholes * Int32Array.BYTES_PER_ELEMENT;
  const lacking = bytes - memory.buffer.byteLength;
  if (lacking > 0) memory.grow(Math.ceil(lacking / BYTES_A_PAGE));
  let at = 0;
  const doublesOf = (length: number) => {
    const row = new Float64Array(memory.buffer, at, length);
    at += row.byteLength;
    return row;
  };
  const wholesOf = (length: number) => {
    const row = new Int32Array(memory.buffer, at, length);
    at += row.byteLength;
    return row;
  };
  lay(cells, passes, cutters, trace.cellWidth);
  for (const row of passRows) doublesOf(passes).set(row);
  const depth = doublesOf(passes);
  doublesOf(cells).set(trace.cellRadius);
  const area = doublesOf(cutters);
  const volume = doublesOf(cutters);
  const laws = doublesOf(LAW * cutters);
  const sums = doublesOf(SUMS * cutters);
  wholesOf(cells + 1).set(trace.firstPass);
  wholesOf(passes).set(trace.cutter);
  return { trace, depth, area, volume, laws, sums };
}
