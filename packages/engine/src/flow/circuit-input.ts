import type { CirculationMedium, DrillingFluid } from "../fluid/index.ts";
import type { BoreSection, HoleSection } from "./annulus-sections.ts";
import type { PumpPoint } from "./pump-curve.ts";
import type { Chip, SlipForm } from "./slip-band.ts";

/** The pump and what comes through it. */
export interface CircuitPump {
  /** Flow asked of it: what a piston pump delivers, slip of the valves taken off [m³/s]. */
  readonly flow: number;
  /** Pressure it may run at all day [Pa]. */
  readonly pressureRating?: number;
  /** Curve of a centrifugal pump by rising flow; left out for a piston pump. */
  readonly curve?: readonly PumpPoint[];
  /** Whether a valve holds a centrifugal pump down to the flow asked; left out, it gives what its curve says. */
  readonly throttled?: boolean;
  /** Largest lump that passes the suction and the pump [m]. */
  readonly largestLump?: number;
  /** Whether the suction has a screen. */
  readonly screened?: boolean;
}

/** Hose, swivel and kelly or top head, as a length of pipe that loses as much. */
export interface SurfaceGear {
  /** Length of pipe that loses as much [m]. */
  readonly equivalentLength: number;
  /** Bore of that pipe [m]. */
  readonly bore: number;
}

/** The openings of the bit. */
export interface BitPorts {
  /** Diameter of each port [m]. */
  readonly diameters: readonly number[];
  /** Discharge coefficient [-]. */
  readonly dischargeCoefficient: number;
}

/** The liquids a circuit is reckoned for; air and foam change their volume on the way and need another model. */
export type LiquidMedium = Exclude<CirculationMedium, "air" | "stiff-foam">;

/** Limits set by hand in place of those of practice. */
export interface FlowLimits {
  /** Least flow that cools the bit [m³/s]. */
  readonly coolingFlow?: number;
  /** Least speed at which the return cleans [m/s]. */
  readonly upholeSpeed?: number;
  /** Largest share of cuttings in the return [-]. */
  readonly cuttingsShare?: number;
}

/** Everything the fluid passes from the pump back to the pit. */
export interface CircuitInput {
  readonly pump: CircuitPump;
  readonly fluid: DrillingFluid;
  /** What the fluid is, in the words of the trade; decides the uphole speed it needs. */
  readonly medium: LiquidMedium;
  readonly surfaceGear?: SurfaceGear;
  /** Pipe and collars from the top down to the bit. */
  readonly string: readonly BoreSection[];
  /** Casing and open hole from the top down; the last reaches the bit. */
  readonly hole: readonly HoleSection[];
  /** Diameter that the bit drills [m]. */
  readonly holeDiameter: number;
  readonly ports: BitPorts;
  /** The chips to be brought up. */
  readonly chip: Chip;
  /** The form of slip that cleaning goes by; the mean of Moore and Chien where none is named. */
  readonly slipForm?: SlipForm;
  /** Rate of penetration looked at [m/s]. */
  readonly rate?: number;
  /** Open area of the slots between the wings, across the hole [m²]. */
  readonly slotArea?: number;
  /** Whether the ground is sticky clay or wet shale. */
  readonly stickyGround?: boolean;
  /** Roughness height of pipe and hole walls; steel where not given [m]. */
  readonly roughness?: number;
  readonly limits?: FlowLimits;
}
