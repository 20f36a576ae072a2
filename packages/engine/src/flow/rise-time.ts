import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/** A stretch of annulus on the way up. */
export interface RisingStretch {
  /** Length of the stretch L [m]. */
  readonly length: number;
  /** Uphole speed of the fluid there V [m/s]. */
  readonly upholeSpeed: number;
  /** Slip speed of what rises with it Vs; 0 for the fluid itself [m/s]. */
  readonly slipSpeed: number;
}

/**
 * Time that fluid or chips take up through stretches of annulus; for the fluid itself, with no slip, the volume of the
 * annulus over the flow: bottoms up.
 *
 * t = Σ L/(V - Vs); without end where chips fall as fast as the fluid rises.
 *
 * @returns time [s]
 * @throws RangeError when a length or slip is negative or an uphole speed is not positive
 * @source (d) chips rise at V - Vs
 * @example
 * riseTime([{ length: 60, upholeSpeed: 0.6, slipSpeed: 0 }, { length: 40, upholeSpeed: 0.8, slipSpeed: 0 }]) // → 150
 * riseTime([{ length: 60, upholeSpeed: 0.6, slipSpeed: 0.2 }, { length: 40, upholeSpeed: 0.8, slipSpeed: 0.3 }]) // → 230
 */
export function riseTime(stretches: readonly RisingStretch[]): number {
  return stretches.reduce((sum, { length, upholeSpeed, slipSpeed }) => {
    requireNotNegative({ length, slipSpeed });
    requirePositive({ upholeSpeed });
    const rising = Math.max(0, upholeSpeed - slipSpeed);
    return length === 0 ? sum : sum + length / rising;
  }, 0);
}

/** What `connectionCirculation` needs. */
export interface ConnectionCirculationInput {
  /** Annulus from the bit up. */
  readonly stretches: readonly RisingStretch[];
  /** Time without flow t_c [s]. */
  readonly connectionTime: number;
}

/**
 * Time to go on circulating before a connection so that the last chips do not fall back onto the bit while the pump is off.
 *
 * Chips fall through h = Vs t_c, with the largest slip on the way; the time is that in which they rise as far from the
 * bit, or right out of the hole where that is nearer. Gels that hold chips up are left out, so it is on the long side.
 *
 * @returns time [s]
 * @throws RangeError when there is no stretch or an input is negative
 * @source (d) chips rise at V - Vs and fall at Vs
 * @example
 * connectionCirculation({ stretches: [{ length: 100, upholeSpeed: 0.7, slipSpeed: 0.2 }], connectionTime: 180 }) // → 72
 */
export function connectionCirculation({ stretches, connectionTime }: ConnectionCirculationInput): number {
  requirePositive({ stretches: stretches.length });
  requireNotNegative({ connectionTime });
  let room = connectionTime * Math.max(...stretches.map(({ slipSpeed }) => slipSpeed));
  const risen = stretches.map((stretch) => {
    const length = Math.min(stretch.length, room);
    room -= length;
    return { ...stretch, length };
  });
  return riseTime(risen);
}
