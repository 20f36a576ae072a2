import { commonPractice, derivedFrom, type Finding } from "../quantity/index.ts";
import { LARGEST_LUMP_OVER_PORT } from "./flow-limits.ts";
import { isAbove, remark } from "./flow-remark.ts";
import type { ReturnAtDepth } from "./return-at-depth.ts";

/** One bed as the remarks on the return see it. */
export interface ReturnInBed extends ReturnAtDepth {
  /** As the driller would say it. */
  readonly name: string;
  /** Rate at the single values of the rock [m/s]. */
  readonly rate: number;
  /** Whether its chips are sand, or it is loose and runs. */
  readonly sandy: boolean;
}

/** What `returnFindings` needs. */
export interface ReturnFindingsInput {
  /** From the top down. */
  readonly beds: readonly ReturnInBed[];
  /** Smallest port of the bit [m]. */
  readonly smallestPort: number;
  /** Largest lump that the suction and valves let through, where it is known [m]. */
  readonly largestLump?: number;
}

/**
 * What an engineer would remark on the return bed by bed: beds that outrun it, circulating before a connection and a trip, a
 * float over the bit, a screen on the suction.
 *
 * @source (c) common practice, no source, for float and screen; the rest derived
 */
export function returnFindings({ beds, smallestPort, largestLump }: ReturnFindingsInput): Finding[] {
  return [
    ...beds.flatMap(outrun),
    ...circulation(beds),
    ...float(beds),
    ...(largestLump === undefined ? [screen(smallestPort)] : []),
  ];
}

function outrun({ name, rate, rateCeiling }: ReturnInBed): Finding[] {
  if (!isAbove(rate, rateCeiling.mid)) return [];
  const message =
    "In this bed the bit makes more chips than the flow carries. Hold the rate to the ceiling of the bed.";
  const source = derivedFrom("rate against the ceiling of cleaning");
  return [
    remark("bed-rate-ceiling", "caution", name, message, { value: rate, limit: rateCeiling.mid, unit: "m/s", source }),
  ];
}

function circulation(beds: readonly ReturnInBed[]): Finding[] {
  const source = derivedFrom("chips rise at the uphole speed less their slip");
  const longest = (time: (bed: ReturnInBed) => number | undefined) => Math.max(0, ...beds.map((bed) => time(bed) ?? 0));
  const trip = longest(({ chipsUpTime }) => chipsUpTime);
  const connection = longest(({ circulationTime }) => circulationTime);
  const base = { severity: "note", where: "return", unit: "s", source } as const;
  if (trip === 0) return [];
  const before = "Circulate this long before";
  return [
    {
      ...base,
      code: "flow.circulate-before-trip",
      message: `${before} a trip, bit off bottom and turning: until the slowest chips are out at the deepest bed. The limit is bottoms up.`,
      value: trip,
      limit: longest(({ bottomsUpTime }) => bottomsUpTime),
    },
    {
      ...base,
      code: "flow.circulate-before-connection",
      message: `${before} a connection, so that chips that fall while the pump is off do not reach the bit.`,
      value: connection,
    },
  ];
}

function float(beds: readonly ReturnInBed[]): Finding[] {
  const sandy = beds.filter((bed) => bed.sandy);
  if (sandy.length === 0) return [];
  return [
    {
      code: "flow.float",
      severity: "note",
      where: sandy.map(({ name }) => name).join("; "),
      message:
        "Sand settles back through the ports at each connection and plugs them. Run a float over the bit, fill the pipe as it goes in, and never lower onto fill with the pump off.",
      source: commonPractice(),
    },
  ];
}

function screen(smallestPort: number): Finding {
  return {
    code: "flow.screen",
    severity: "note",
    where: "pump",
    message: "It is not known what lumps the suction lets through. Screen it with openings no larger than this.",
    limit: LARGEST_LUMP_OVER_PORT * smallestPort,
    unit: "m",
    source: commonPractice(),
  };
}
