import { USUAL_DISCHARGE_COEFFICIENT } from "../flow/index.ts";
import { commonPractice, type Finding, requirePositive, type Working } from "../quantity/index.ts";
import { type AdvisedFluid, isGasFluid } from "./drilling-fluid.ts";
import {
  bestPorts,
  leastPort,
  type PortCandidate,
  type PortsChoice,
  portCandidate,
  portSets,
} from "./port-candidates.ts";
import { portFindings } from "./port-findings.ts";
import { AIMED_PORT_SPEED, AIMED_PORT_SPEED_STICKY } from "./port-limits.ts";
import { areaWorking, dropWorking, PORT_DROP_SOURCE, speedWorking } from "./port-working.ts";
import type { Choice, Reason } from "./reason.ts";

/** What the ports have to suit. */
export interface PortsForPumpInput {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  /** Number of wings [-]. */
  readonly wings: number;
  readonly fluid: AdvisedFluid;
  /** Density of the fluid [kg/m³]. */
  readonly density: number;
  /** Flow of the pump [m³/s]. */
  readonly flow: number;
  /** Pressure that the pump can spend at the bit: its rating less what pipe and hole take [Pa]. */
  readonly pressureForBit: number;
  /** Largest lump that suction and valves let through; absent where there is no screen or nobody knows [m]. */
  readonly lumpSize?: number;
  /** Whether the face may ball, so that the jets have to wash harder. */
  readonly sticky: boolean;
  /** Discharge coefficient; `USUAL_DISCHARGE_COEFFICIENT` where absent [-]. */
  readonly dischargeCoefficient?: number;
}

/** The ports chosen, with the figures behind them. */
export interface PortsForPump extends Choice<PortsChoice> {
  /** Total area [m²]. */
  readonly area: number;
  /** Speed in the ports at the pump's flow; absent on air, mist and foam [m/s]. */
  readonly speed?: number;
  /** Pressure lost through the ports at the pump's flow; absent on air, mist and foam [Pa]. */
  readonly pressureDrop?: number;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * Ports for the pump: large enough to pass what the pump passes, at least one to every two wings, and of an area that
 * puts the speed inside the window and the drop inside what the pump has left. Among these the largest and fewest, which
 * plug least. Where not all can be had, passing lumps comes first, then the pressure, then the speed. On air, mist and
 * foam the ports are made as large as there is room for.
 *
 * @throws RangeError when an input is not positive
 * @source (c) common practice, no source, for sizes and speeds; drop after Bourgoyne et al. 1986, recalled
 */
export function portsForPump(input: PortsForPumpInput): PortsForPump {
  const { holeDiameter, wings, fluid, density, flow, pressureForBit, lumpSize, sticky } = input;
  requirePositive({ holeDiameter, wings, density, flow, pressureForBit });
  if (lumpSize !== undefined) requirePositive({ lumpSize });
  const dischargeCoefficient = input.dischargeCoefficient ?? USUAL_DISCHARGE_COEFFICIENT;
  const least = leastPort(lumpSize);
  const pump = { density, flow, dischargeCoefficient };
  const candidates = portSets({ holeDiameter, wings, least }).map((set) => portCandidate(set, pump));
  if (isGasFluid(fluid)) return portsForGas({ candidates, wings, fluid });
  const aim = sticky ? AIMED_PORT_SPEED_STICKY : AIMED_PORT_SPEED;
  const chosen = bestPorts({ candidates, aim, pressureForBit });
  const reasons = [
    ...lumpReason(chosen, least, lumpSize),
    {
      sentence: sticky
        ? "Port speed aimed at the middle of the window, because the face may ball."
        : "Port speed aimed low in the window: big ports rarely plug.",
      rule: "port speed",
      value: chosen.speed,
      limit: aim,
      unit: "m/s",
      source: commonPractice(),
    },
    {
      sentence: "The drop through the ports is held against what the pump has left after pipe and hole.",
      rule: "port pressure drop",
      value: chosen.pressureDrop,
      limit: pressureForBit,
      unit: "Pa",
      source: PORT_DROP_SOURCE,
    },
    wingsReason(chosen),
  ];
  return {
    value: { count: chosen.count, diameter: chosen.diameter },
    area: chosen.area,
    speed: chosen.speed,
    pressureDrop: chosen.pressureDrop,
    reasons,
    alternatives: [
      { what: "more and smaller ports", why: "each wing has its own jet; a single lump then plugs one" },
      { what: "smaller total area", why: "washes harder; takes pressure the pump may not have, and erodes the body" },
    ],
    findings: portFindings({ chosen, pressureForBit, lumpSize }),
    working: [areaWorking(chosen), speedWorking(chosen, flow), dropWorking(chosen, pump)],
  };
}

function lumpReason(chosen: PortCandidate, least: number, lumpSize: number | undefined): Reason[] {
  const sentence =
    lumpSize === undefined
      ? "No screen is known on the suction, so each port must pass what the pit sends."
      : "Each port must pass the largest lump that the pump passes.";
  return [{ sentence, rule: "least port", value: chosen.diameter, limit: least, unit: "m", source: commonPractice() }];
}

function wingsReason({ count }: PortsChoice): Reason {
  const sentence = "At least one port to every two wings, so that no wing runs hot.";
  return { sentence, rule: "ports to wings", value: count, unit: "-", source: commonPractice() };
}

function portsForGas({
  candidates,
  wings,
  fluid,
}: {
  readonly candidates: readonly PortCandidate[];
  readonly wings: number;
  readonly fluid: AdvisedFluid;
}): PortsForPump {
  const fewest = Math.max(1, Math.ceil(wings / 2));
  const roomy = candidates.filter(({ count }) => count === fewest);
  const chosen = roomy.reduce((best, next) => (next.diameter > best.diameter ? next : best));
  const source = commonPractice();
  return {
    value: { count: chosen.count, diameter: chosen.diameter },
    area: chosen.area,
    reasons: [
      {
        sentence: `On ${fluid} the ports only have to let it through: as large as the body has room for.`,
        rule: "ports on gas",
        value: chosen.diameter,
        unit: "m",
        source,
      },
      wingsReason(chosen),
    ],
    alternatives: [{ what: "smaller ports", why: "raise the pressure in the pipe and win nothing at the face" }],
    findings: [
      {
        code: "ports-not-sized-on-gas",
        severity: "caution",
        where: "ports",
        message: `Speed and drop of ${fluid} through the ports are not worked out here, and gas cools the cutters poorly. Watch the edges at each trip.`,
        source,
      },
    ],
    working: [areaWorking(chosen)],
  };
}
