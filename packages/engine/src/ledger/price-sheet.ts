import type { BitMaterial } from "../bit/index.ts";

/** What a shop and its driller pay, in one currency. */
export interface PriceSheet {
  /** Rig with its crew, fuel left out [money/s]. */
  readonly rigPrice: number;
  /** Fuel [money/m³]. */
  readonly fuelPrice: number;
  /** Fuel that rig and pump burn while the hole is being made [m³/s]. */
  readonly fuelFlow: number;
  /** In and out of the hole and whatever else a hole takes beside drilling [s]. */
  readonly tripTime: number;
  /** Adding one joint of pipe [s]. */
  readonly connectionTime: number;
  /** Mud, water, chemicals and the like [money/m]. */
  readonly otherPrice: number;
  /** A body as it is before cutters are brazed in, by its material [money]. */
  readonly bodyPrices: Readonly<Record<BitMaterial, number>>;
  /** Cutters by the size of their faces. */
  readonly cutterPrices: readonly CutterPrice[];
  /** Labour of seating one cutter, braze and flux with it [money]. */
  readonly pocketPrice: number;
  /** Hardfacing and protection of the gauge, the whole bit [money]. */
  readonly hardfacingPrice: number;
}

/** What one cutter of a size costs. */
export interface CutterPrice {
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
  /** One cutter [money]. */
  readonly cutterPrice: number;
}
