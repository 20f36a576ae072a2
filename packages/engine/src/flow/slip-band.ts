import { binghamEquivalent, type DrillingFluid } from "../fluid/index.ts";
import { type Band, band, requirePositive } from "../quantity/index.ts";
import { chienSlipSpeed } from "./chien-slip-speed.ts";
import { type Annulus, conduitSpeed, hydraulicDiameter } from "./conduit.ts";
import { mooreSlipSpeed } from "./moore-slip-speed.ts";
import { wallShear } from "./wall-shear.ts";

/**
 * Density of sedimentary chips where none is given, specific gravity 2.6 [kg/m³].
 *
 * @source (c) common practice, no source
 */
export const USUAL_CHIP_DENSITY = 2600;

/** A chip as it comes off the bit. */
export interface Chip {
  /** Size across the chip d [m]. */
  readonly size: number;
  /** Density [kg/m³]. */
  readonly density: number;
}

/** What `slipBand` needs. */
export interface SlipBandInput {
  readonly chip: Chip;
  readonly fluid: DrillingFluid;
  readonly annulus: Annulus;
  /** Pump flow [m³/s]. */
  readonly flow: number;
}

/** How fast chips fall behind the rising fluid, by two methods. */
export interface SlipBand {
  /** Slip speed; sides are the two methods, middle their mean [m/s]. */
  readonly speed: Band;
  /** By Moore, with the apparent viscosity at the annulus wall [m/s]. */
  readonly moore: number;
  /** By Chien, with PV and YP at the chip [m/s]. */
  readonly chien: number;
}

/**
 * Slip of a chip in a vertical annulus, as a band from two published methods that differ by up to a factor of two.
 *
 * Moore with μ = τw (D - d)/(12 V), Chien with μ = PV + YP d/(8 V); V the uphole speed, d the chip's size in the second.
 *
 * @throws RangeError when an input is not positive, the chip would float, or the pipe does not fit the hole
 * @source (b) Moore 1974 and Chien 1971, recalled
 */
export function slipBand({ chip, fluid, annulus, flow }: SlipBandInput): SlipBand {
  requirePositive({ chipSize: chip.size, chipDensity: chip.density });
  const upholeSpeed = conduitSpeed({ flow, conduit: annulus });
  const { stress } = wallShear({ fluid, conduit: annulus, flow });
  const { plasticViscosity, yieldPoint } = binghamEquivalent(fluid);
  const falling = (viscosity: number) => {
    return { chipSize: chip.size, chipDensity: chip.density, fluidDensity: fluid.density, viscosity };
  };
  const moore = mooreSlipSpeed(falling((stress * hydraulicDiameter(annulus)) / (12 * upholeSpeed)));
  const chien = chienSlipSpeed(falling(plasticViscosity + (yieldPoint * chip.size) / (8 * upholeSpeed)));
  return { speed: band(Math.min(moore, chien), (moore + chien) / 2, Math.max(moore, chien)), moore, chien };
}
