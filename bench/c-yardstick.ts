import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type EdgeTrace, edgeResponse, type RockResponse } from "@bitwright/engine";

/** What the loops in C take, and what they come to. */
export interface CYardstick {
  /** One engagement [s]. */
  readonly engage: number;
  /** The forces of one engagement [s]. */
  readonly edgeLoads: number;
  /** Rock volume of one revolution [m³]. */
  readonly volume: number;
  /** Torque at the bit [N·m]. */
  readonly torque: number;
}

const SOURCE = fileURLToPath(new URL("engage.c", import.meta.url));

/** Runs the loops of one engagement in C; none where there is no gcc. */
export function cYardstick(trace: EdgeTrace, rock: RockResponse, advance: number): CYardstick | undefined {
  if (spawnSync("gcc", ["--version"]).status !== 0) return undefined;
  const folder = mkdtempSync(join(tmpdir(), "bitwright-bench-"));
  try {
    const [program, bit] = [join(folder, "engage"), join(folder, "bit")];
    execFileSync("gcc", ["-O3", "-march=native", "-std=gnu11", "-o", program, SOURCE, "-lm"]);
    writeFileSync(bit, bitForC(trace, rock, advance));
    return JSON.parse(execFileSync(program, [bit], { encoding: "utf8" })) as CYardstick;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The bit as bench/engage.c reads it: sizes, numbers, rows of doubles, rows of whole numbers. */
function bitForC(trace: EdgeTrace, rock: RockResponse, advance: number): Buffer {
  const { cutters } = trace.layout;
  const laws = cutters.flatMap((cutter) => {
    const { faceDrag, faceNormal, chamferDrag, chamferNormal, chamferLength } = edgeResponse(cutter, rock);
    return [faceDrag, faceNormal, chamferDrag, chamferNormal, chamferLength];
  });
  const parts = [
    Int32Array.of(trace.cellRadius.length, trace.height.length, cutters.length, 0),
    Float64Array.of(trace.cellWidth, advance, rock.contactStress, rock.flatFriction, rock.kappa),
    trace.cellRadius,
    trace.height,
    trace.azimuth,
    trace.cosAzimuth,
    trace.sinAzimuth,
    trace.slope,
    trace.cosSlope,
    trace.flatLength,
    trace.chamferHeight,
    Float64Array.from(laws),
    trace.firstPass,
    trace.cutter,
  ];
  return Buffer.concat(parts.map(({ buffer, byteOffset, byteLength }) => Buffer.from(buffer, byteOffset, byteLength)));
}
