import type { CirculationMedium } from "../fluid/index.ts";
import { commonPractice, readIn, recalledFrom, type Source } from "../quantity/index.ts";

/** How fast a return has to rise to bring up cuttings. */
export interface UpholeNeed {
  /** Below this a hole does not clean [m/s]. */
  readonly least: number;
  /** Low side of what practice uses [m/s]. */
  readonly low: number;
  /** High side of what practice uses [m/s]. */
  readonly high: number;
  readonly source: Source;
}

/**
 * Uphole speed below which a liquid return does not clean a hole, 50 ft/min [m/s].
 *
 * @source (a) Drilling Technology in Nontechnical Language (book)
 */
export const LEAST_UPHOLE_SPEED = 0.254;

/**
 * Uphole speed preferred for a liquid return whatever it is, 100 ft/min [m/s].
 *
 * @source (a) Drilling Technology in Nontechnical Language (book)
 */
export const PREFERRED_UPHOLE_SPEED = 0.508;

/** One foot a minute [m/s]. Exact by definition. */
const FOOT_PER_MINUTE = 0.3048 / 60;

function need(least: number, low: number, high: number, source: Source): UpholeNeed {
  return { least: least * FOOT_PER_MINUTE, low: low * FOOT_PER_MINUTE, high: high * FOOT_PER_MINUTE, source };
}

/** Uphole speeds that practice asks of each medium. */
export const UPHOLE_NEEDS: Readonly<Record<CirculationMedium, UpholeNeed>> = {
  water: need(50, 150, 200, commonPractice()),
  bentonite: need(50, 80, 150, commonPractice()),
  polymer: need(50, 80, 120, commonPractice()),
  "stiff-foam": need(
    40,
    40,
    100,
    readIn("Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual; range common practice"),
  ),
  air: need(2000, 3000, 5000, recalledFrom("Angel 1957, 3000 ft/min of standard air; 2000 to 3000 seen in trade use")),
};
