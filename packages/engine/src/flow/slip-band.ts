import { binghamEquivalent, type DrillingFluid } from "../fluid/index.ts";
import { type Band, band, requirePositive } from "../quantity/index.ts";
import { chienSlipSpeed } from "./chien-slip-speed.ts";
import { type Annulus, conduitSpeed, hydraulicDiameter } from "./conduit.ts";
import { mooreSlipSpeed } from "./moore-slip-speed.ts";
import { sphericitySlipSpeed } from "./sphericity-slip-speed.ts";
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

/** The published forms by which a chip's fall can be told. */
export const SLIP_FORMS = ["Moore", "Chien", "sphericity"] as const;

/** One of the published forms. */
export type SlipForm = (typeof SLIP_FORMS)[number];

/**
 * Sphericity of a chip whose shape nobody gave [-].
 *
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems, the chip of its example
 */
export const USUAL_SPHERICITY = 0.8;

/** What `slipBand` needs. */
export interface SlipBandInput {
  readonly chip: Chip;
  readonly fluid: DrillingFluid;
  readonly annulus: Annulus;
  /** Pump flow [m³/s]. */
  readonly flow: number;
  /** The form that the middle goes by; the mean of Moore and Chien where none is named. */
  readonly form?: SlipForm;
}

/** How fast chips fall behind the rising fluid, by the published forms. */
export interface SlipBand {
  /** Slip speed; sides are the slowest and the fastest form looked at, middle the one named or the mean [m/s]. */
  readonly speed: Band;
  /** The form that the middle goes by; absent where it is the mean. */
  readonly form?: SlipForm;
  /** By Moore, with the apparent viscosity at the annulus wall [m/s]. */
  readonly moore: number;
  /** By Chien, with PV and YP at the chip [m/s]. */
  readonly chien: number;
  /** By the drag of a chip of usual sphericity, with the apparent viscosity at the annulus wall; where it is asked for [m/s]. */
  readonly shaped?: number;
}

/**
 * Slip of a chip in a vertical annulus, as a band from published forms that differ by up to a factor of two: Moore and Chien,
 * and the third where it is asked for.
 *
 * Moore and the sphericity form with μ = τw (D - d)/(12 V), Chien with μ = PV + YP d/(8 V); V the uphole speed, d the
 * chip's size in the last.
 *
 * @throws RangeError when an input is not positive, the chip would float, or the pipe does not fit the hole
 * @source (b) Moore 1974 and Chien 1971, recalled; (a) Guo & Liu 2011 for the third
 */
export function slipBand({ chip, fluid, annulus, flow, form }: SlipBandInput): SlipBand {
  requirePositive({ chipSize: chip.size, chipDensity: chip.density });
  const upholeSpeed = conduitSpeed({ flow, conduit: annulus });
  const { stress } = wallShear({ fluid, conduit: annulus, flow });
  const { plasticViscosity, yieldPoint } = binghamEquivalent(fluid);
  const falling = (viscosity: number) => {
    return { chipSize: chip.size, chipDensity: chip.density, fluidDensity: fluid.density, viscosity };
  };
  const atWall = falling((stress * hydraulicDiameter(annulus)) / (12 * upholeSpeed));
  const moore = mooreSlipSpeed(atWall);
  const chien = chienSlipSpeed(falling(plasticViscosity + (yieldPoint * chip.size) / (8 * upholeSpeed)));
  const shaped = form === "sphericity" ? sphericitySlipSpeed({ ...atWall, sphericity: USUAL_SPHERICITY }) : undefined;
  const named = form === "Moore" ? moore : form === "Chien" ? chien : shaped;
  const looked = [moore, chien, ...(shaped === undefined ? [] : [shaped])];
  return {
    speed: band(Math.min(...looked), named ?? (moore + chien) / 2, Math.max(...looked)),
    ...(form ? { form } : {}),
    moore,
    chien,
    ...(shaped === undefined ? {} : { shaped }),
  };
}
