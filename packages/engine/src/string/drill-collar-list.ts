import { derivedFrom, type Source } from "../quantity/index.ts";
import { inches } from "./field-sizes.ts";
import { plainEndWeight } from "./plain-end-weight.ts";

/** A size of drill collar. */
export interface DrillCollar {
  /** Outer diameter and bore as the trade calls them. */
  readonly name: string;
  /** Outer diameter [m]. */
  readonly outerDiameter: number;
  /** Bore [m]. */
  readonly bore: number;
  /** Weight in air [N/m]. */
  readonly linearWeight: number;
  readonly source: Source;
}

function collar(name: string, outer: number, bore: number): DrillCollar {
  const size = { outerDiameter: inches(outer), bore: inches(bore) };
  return {
    name,
    ...size,
    linearWeight: plainEndWeight(size),
    source: derivedFrom("outer diameter, bore and the density of steel"),
  };
}

/** Drill collars of small rigs. */
export const DRILL_COLLARS: readonly DrillCollar[] = [
  collar("4 3/4 x 2 1/4 in", 4.75, 2.25),
  collar("6 x 2 1/4 in", 6, 2.25),
  collar("6 1/4 x 2 1/4 in", 6.25, 2.25),
];
