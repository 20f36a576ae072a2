import { requirePositive } from "../../quantity/index.ts";
import { bitLoads } from "../bit-loads.ts";
import type { BedLoads } from "./bed-loads.ts";
import type { BitSlopes } from "./scaled-bit.ts";

/**
 * How a bit loads its string about a state of steady drilling: the cutting part taken as proportional to the advance, the
 * contact part as it is.
 *
 * @throws RangeError when the advance or the number of wings is not positive
 * @source (d) the forces of the state over its advance
 */
export function bitSlopes({
  loads,
  advance,
  wings,
}: {
  readonly loads: BedLoads;
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Wings [-]. */
  readonly wings: number;
}): BitSlopes {
  requirePositive({ advance, wings });
  const { cuttingWeight, contactWeight, torque } = bitLoads(loads);
  const contactTorque = loads.contactTorque.reduce((sum, one) => sum + one, 0);
  return {
    wings,
    weightSlope: cuttingWeight / advance,
    torqueSlope: (torque - contactTorque) / advance,
    contactWeight,
    contactTorque,
  };
}
