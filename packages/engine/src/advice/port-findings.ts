import { LARGEST_LUMP_OVER_PORT, LEAST_PORT_DIAMETER_UNSCREENED, PORT_SPEED_RANGE } from "../flow/index.ts";
import { commonPractice, type Finding } from "../quantity/index.ts";
import type { PortCandidate } from "./port-candidates.ts";
import { PORT_DROP_SOURCE } from "./port-working.ts";

/** What is doubtful about a set of ports on this pump. */
export function portFindings({
  chosen,
  pressureForBit,
  lumpSize,
}: {
  readonly chosen: PortCandidate;
  readonly pressureForBit: number;
  readonly lumpSize: number | undefined;
}): Finding[] {
  const { speed, pressureDrop, diameter } = chosen;
  const where = "ports";
  const source = commonPractice();
  const findings: Finding[] = [];
  if (pressureDrop > pressureForBit) {
    findings.push({
      code: "port-drop-over-pump",
      severity: "caution",
      where,
      message: "Even the largest ports take more pressure than the pump has left. Run less flow or larger pipe.",
      value: pressureDrop,
      limit: pressureForBit,
      unit: "Pa",
      source: PORT_DROP_SOURCE,
    });
  }
  if (speed < PORT_SPEED_RANGE.low) {
    const cure =
      lumpSize === undefined && diameter <= LEAST_PORT_DIAMETER_UNSCREENED + 1e-9
        ? "Screen the suction and smaller ports become safe, or bring a larger pump."
        : "Bring a larger pump, or clean the face by lifting and spinning.";
    findings.push({
      code: "port-speed-low",
      severity: "note",
      where,
      message: `The pump moves too little fluid to keep the jets sharp through ports that pass its lumps. ${cure}`,
      value: speed,
      limit: PORT_SPEED_RANGE.low,
      unit: "m/s",
      source,
    });
  }
  if (speed > PORT_SPEED_RANGE.mid) {
    findings.push({
      code: "port-speed-high",
      severity: "caution",
      where,
      message: "The ports run fast enough for sand to erode the body. Keep the fluid clean or run less flow.",
      value: speed,
      limit: PORT_SPEED_RANGE.mid,
      unit: "m/s",
      source,
    });
  }
  if (lumpSize !== undefined && lumpSize > LARGEST_LUMP_OVER_PORT * diameter) {
    findings.push({
      code: "screen-coarse-for-ports",
      severity: "note",
      where,
      message: "Screen openings should be at most half the smallest port: two lumps together bridge it.",
      value: lumpSize,
      limit: LARGEST_LUMP_OVER_PORT * diameter,
      unit: "m",
      source,
    });
  }
  return findings;
}
