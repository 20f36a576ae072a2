import type { Band, Finding, Working } from "../quantity/index.ts";
import type { Annulus } from "./conduit.ts";
import type { ConduitLoss } from "./conduit-state.ts";
import type { OperatingPoint } from "./operating-point.ts";
import type { SlipBand } from "./slip-band.ts";

/** The parts of a circuit that lose pressure along their length. */
export type CircuitPart = "surface gear" | "pipe" | "annulus";

/** What one stretch of the circuit loses. */
export interface SectionLoss extends ConduitLoss {
  readonly name: string;
  readonly part: CircuitPart;
  /** Length of the stretch [m]. */
  readonly length: number;
  /** Hydraulic diameter of the stretch [m]. */
  readonly hydraulicDiameter: number;
}

/** The annulus in which the return rises slowest; it decides the cleaning. */
export interface SlowestAnnulus {
  readonly name: string;
  readonly annulus: Annulus;
  /** Uphole speed there [m/s]. */
  readonly speed: number;
}

/** What happens at the ports. */
export interface PortState {
  /** Total area [m²]. */
  readonly area: number;
  /** Speed in the ports [m/s]. */
  readonly speed: number;
  /** Pressure drop over the ports [Pa]. */
  readonly pressureDrop: number;
  /** Hydraulic power at the ports [W]. */
  readonly power: number;
  /** Hydraulic power for each area of hole [W/m²]. */
  readonly powerPerHoleArea: number;
  /** Impact force of the jets [N]. */
  readonly impactForce: number;
}

/** How the cuttings come up. */
export interface CleaningState {
  readonly slip: SlipBand;
  /** Transport ratio in the slowest annulus [-]. */
  readonly transportRatio: Band;
  /** Share of cuttings in the return at the rate looked at, middle slip; absent without a rate or where chips do not rise [-]. */
  readonly cuttingsShare?: number;
  /** Rate at which cuttings reach their limit [m/s]. */
  readonly rateCeiling: Band;
}

/** The slots between the wings as a way for the return. */
export interface SlotState {
  /** Speed in the slots [m/s]. */
  readonly speed: number;
  /** Slot area over hole area [-]. */
  readonly areaShare: number;
  /** Slot speed over the uphole speed just above the bit [-]. */
  readonly speedRatio: number;
}

/** The circuit worked through. */
export interface Circuit {
  /** Surface gear, string and annuli in the order the fluid passes them, ports left out. */
  readonly losses: readonly SectionLoss[];
  readonly ports: PortState;
  /** Pump pressure, all losses summed [Pa]. */
  readonly pumpPressure: number;
  /** Share of the pump pressure spent at the ports [-]. */
  readonly shareAtPorts: number;
  /** Where the pump and this circuit meet; every other figure is that of the flow asked. */
  readonly operatingPoint: OperatingPoint;
  readonly slowestAnnulus: SlowestAnnulus;
  readonly cleaning: CleaningState;
  readonly slots?: SlotState;
  /** Flow that practice asks for to cool the bit [m³/s]. */
  readonly coolingFlow: Band;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** The circuit's figures before findings and workings are drawn from them. */
export type CircuitFigures = Omit<Circuit, "findings" | "working">;
