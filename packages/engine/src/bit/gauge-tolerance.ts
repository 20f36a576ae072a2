import { derivedFrom, type Finding, given, INCH, readIn, requirePositive, type Working } from "../quantity/index.ts";
import { sayLength } from "./say-length.ts";

const SOURCE = readIn("API Spec 7-1 tolerance of fixed-cutter bits, seen in trade reprints, standard itself not read");

/** Largest nominal diameter and how far below it a bit may be, in inches; the plus side is 0. */
const BANDS: readonly { readonly upTo: number; readonly minus: number }[] = [
  { upTo: 6.75, minus: 0.015 },
  { upTo: 9, minus: 0.02 },
  { upTo: 13.75, minus: 0.03 },
  { upTo: 17.5, minus: 0.045 },
  { upTo: Number.POSITIVE_INFINITY, minus: 0.063 },
];

/**
 * How far a fixed-cutter bit may be below its nominal diameter; it may not be above it at all.
 *
 * +0/-0.015 in to 6 3/4 in, -0.020 to 9, -0.030 to 13 3/4, -0.045 to 17 1/2, -0.063 above. A roller bit has its tolerance
 * on the other side, so a roller's ring is the wrong ring.
 *
 * @returns tolerance below nominal, over the diameter [m]
 * @throws RangeError when the diameter is not positive
 * @source (a) API Spec 7-1 tolerance, seen in trade reprints, standard itself not read
 * @example
 * gaugeTolerance(0.155575) // → 3.81e-4
 */
export function gaugeTolerance(nominalDiameter: number): number {
  requirePositive({ nominalDiameter });
  // A size typed in inches comes back from metres a rounding off.
  const inches = nominalDiameter / INCH - 1e-9;
  return (BANDS.find(({ upTo }) => inches <= upTo)?.minus ?? Number.NaN) * INCH;
}

/** The diameters a gauge may be ground to. */
export interface GrindWindow {
  /** Smallest diameter [m]. */
  readonly smallest: number;
  /** Largest diameter, the nominal one [m]. */
  readonly largest: number;
  readonly working: Working;
}

/**
 * The diameters that the gauge of a bit may be ground to: nominal less the tolerance, up to nominal.
 *
 * @throws RangeError when the diameter is not positive
 * @source (a) API Spec 7-1 tolerance, seen in trade reprints, standard itself not read
 */
export function grindWindow(nominalDiameter: number): GrindWindow {
  const tolerance = gaugeTolerance(nominalDiameter);
  const smallest = nominalDiameter - tolerance;
  return {
    smallest,
    largest: nominalDiameter,
    working: {
      name: "smallest diameter the gauge may be ground to",
      relation: "D_min = D - t",
      inputs: [
        given("D", "nominal diameter", nominalDiameter, "m", "layout"),
        given("t", "tolerance below nominal for this size", tolerance, "m", "table of tolerances"),
      ],
      value: smallest,
      unit: "m",
      source: SOURCE,
    },
  };
}

/** Whether a bit goes through a casing. */
export interface CasingPass {
  readonly passes: boolean;
  /** Drift less the largest diameter of the bit [m]. */
  readonly clearance: number;
  readonly findings: readonly Finding[];
}

/**
 * Whether a bit passes casing: the drift must exceed the bit's largest diameter. Where the drift is not known the bore may
 * be given, which flatters the clearance.
 *
 * @throws RangeError when a diameter is not positive
 * @source (d) comparison of two diameters
 */
export function casingPass({
  bitDiameter,
  drift,
}: {
  /** Largest diameter of the bit [m]. */
  readonly bitDiameter: number;
  /** Drift of the casing, or its bore where the drift is not known [m]. */
  readonly drift: number;
}): CasingPass {
  requirePositive({ bitDiameter, drift });
  const clearance = drift - bitDiameter;
  const passes = clearance > 0;
  const finding: Finding = {
    code: "bit-sticks-in-casing",
    severity: "stop",
    where: "casing",
    message: `A bit of ${sayLength(bitDiameter)} does not go through casing with a drift of ${sayLength(drift)}: take a smaller bit below it.`,
    value: bitDiameter,
    limit: drift,
    unit: "m",
    source: derivedFrom("diameters of bit and casing"),
  };
  return { passes, clearance, findings: passes ? [] : [finding] };
}
