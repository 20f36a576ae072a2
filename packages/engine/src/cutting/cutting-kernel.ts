import { edgeLoads } from "./edge-loads.ts";
import { engage } from "./engage.ts";

/**
 * The two loops that every solution runs over and over. Which kernel runs them changes how long it takes and no figure:
 * all give the same to the last bit.
 */
export interface CuttingKernel {
  /** As `engage`. */
  readonly engage: typeof engage;
  /** As `edgeLoads`. */
  readonly edgeLoads: typeof edgeLoads;
}

/**
 * The loops as they stand in this language: everywhere, and what every other kernel is held to.
 *
 * @source (d) bookkeeping, no relation
 */
export const plainKernel: CuttingKernel = { engage, edgeLoads };
