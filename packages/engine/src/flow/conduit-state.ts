import type { DrillingFluid } from "../fluid/index.ts";
import type { Source } from "../quantity/index.ts";
import type { Conduit } from "./conduit.ts";

/** How the fluid moves: in layers, mixed through, or between the two. */
export type FlowRegime = "laminar" | "transitional" | "turbulent";

/**
 * Height of the roughness of drill pipe and casing walls, as for commercial steel [m].
 *
 * @source (b) Moody 1944, Trans. ASME 66:671, commercial steel, recalled
 */
export const STEEL_ROUGHNESS = 4.572e-5;

/** A stretch of pipe bore or annulus with fluid moving through it. */
export interface ConduitLossInput<Fluid extends DrillingFluid = DrillingFluid> {
  readonly fluid: Fluid;
  readonly conduit: Conduit;
  /** Flow [m³/s]. */
  readonly flow: number;
  /** Length of the stretch [m]. */
  readonly length: number;
  /** Roughness height of the wall, only used for a Newtonian fluid; steel where not given [m]. */
  readonly roughness?: number;
}

/** Pressure lost along a stretch of pipe bore or annulus, and the state of the flow there. */
export interface ConduitLoss {
  /** Pressure drop [Pa]. */
  readonly pressureDrop: number;
  /** Mean speed [m/s]. */
  readonly speed: number;
  /** Reynolds number as the law defines it [-]. */
  readonly reynolds: number;
  readonly regime: FlowRegime;
  /** Fanning friction factor, wall stress over ρ v²/2 [-]. */
  readonly friction: number;
  /** The law used, in symbols. */
  readonly relation: string;
  readonly source: Source;
}
