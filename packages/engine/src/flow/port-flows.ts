import { requirePositive } from "../quantity/index.ts";

/** One port as the fluid sees it. */
export interface PortOpening {
  /** Diameter [m]. */
  readonly diameter: number;
  /** Discharge coefficient Cd [-]. */
  readonly dischargeCoefficient: number;
}

/** What goes through one port. */
export interface PortFlow {
  /** Share of the flow at the bit [-]. */
  readonly share: number;
  /** Flow [m³/s]. */
  readonly flow: number;
  /** Mean speed in the port [m/s]. */
  readonly speed: number;
}

/**
 * How the flow at the bit splits over its ports, each by its own loss.
 *
 * All ports feel the same drop, so Q_i = Q Cd_i A_i/Σ Cd_j A_j and v_i = Q_i/A_i: a port that loses more runs slower.
 *
 * @throws RangeError when the flow, a diameter or a coefficient is not positive, or there is no port
 * @source (d) one pressure drop over every port, Δp = ρ v²/(2 Cd²)
 * @example
 * portFlows([{ diameter: 0.01, dischargeCoefficient: 0.95 }, { diameter: 0.02, dischargeCoefficient: 0.95 }], 0.01)[0].flow // → 0.002
 */
export function portFlows(ports: readonly PortOpening[], flow: number): PortFlow[] {
  requirePositive({ flow, "number of ports": ports.length });
  const areas = ports.map(({ diameter, dischargeCoefficient }) => {
    requirePositive({ diameter, dischargeCoefficient });
    return (Math.PI / 4) * diameter ** 2;
  });
  const passing = ports.map(({ dischargeCoefficient }, k) => dischargeCoefficient * areas[k]);
  const all = passing.reduce((sum, each) => sum + each, 0);
  return passing.map((each, k) => {
    const share = each / all;
    return { share, flow: share * flow, speed: (share * flow) / areas[k] };
  });
}
