import {
  derivedFrom,
  FRESH_WATER_DENSITY,
  given,
  recalledFrom,
  STANDARD_GRAVITY,
  type Working,
  type WorkingInput,
} from "../quantity/index.ts";
import type { GroundBedFigures, Stringer } from "./ground-bed.ts";

/** The fluid over a bed. */
export interface BedFluid {
  /** Density of the drilling fluid [kg/m³]. */
  readonly fluidDensity: number;
  /** Depth of the standing water level [m]. */
  readonly waterLevel: number;
  /** Depth of the top of the fluid in the hole [m]. */
  readonly fluidLevel: number;
}

/**
 * How the figures of one bed were reached, in the order in which they follow from each other.
 *
 * @source (d) the relations named in each
 */
export function bedWorking(of: GroundBedFigures, fluid: BedFluid): Working[] {
  return [
    strengthWorking(of),
    pressureWorking(of, fluid),
    confinementOfBed(of),
    ...responseWorking(of),
    abrasivityWorking(of),
    ...(of.stringer ? [confinementOfStringer(of, of.stringer)] : []),
  ];
}

function strengthWorking({ bed, rock, ucs, ucsSource, reading }: GroundBedFigures): Working {
  const state =
    reading && reading.modifiers.length > 0 ? `, moved by "${reading.modifiers.join(", ")}" (estimate)` : "";
  const from = bed.ucs === undefined ? `rock table, ${rock.name}` : "the bed";
  return {
    name: `unconfined strength of ${bed.name}`,
    relation: bed.ucs === undefined ? `band of the rock table${state}` : "as given for the bed",
    inputs: [given("low", "low side", ucs.low, "Pa", from), given("high", "high side", ucs.high, "Pa", from)],
    value: ucs.mid,
    unit: "Pa",
    source: ucsSource,
  };
}

function pressureWorking({ bed, midDepth, pressureDifference }: GroundBedFigures, fluid: BedFluid): Working {
  return {
    name: `pressure of the fluid above that of the ground water at ${bed.name}`,
    relation: "Δp = ρ_f g (z - z_f) - ρ_w g (z - z_w), never below 0",
    inputs: [
      given("ρ_f", "density of the drilling fluid", fluid.fluidDensity, "kg/m³", "fluid"),
      given("z", "depth of the middle of the bed", midDepth, "m", "ground"),
      given("z_f", "depth of the top of the fluid", fluid.fluidLevel, "m", "fluid"),
      given("ρ_w", "density of the ground water", FRESH_WATER_DENSITY, "kg/m³", "fresh water"),
      given("z_w", "depth of the standing water", fluid.waterLevel, "m", "ground"),
      given("g", "free fall", STANDARD_GRAVITY, "m/s²", "standard"),
    ],
    value: pressureDifference,
    unit: "Pa",
    source: derivedFrom("two hydrostatic columns"),
  };
}

function confinementOfBed(of: GroundBedFigures): Working {
  const { bed, rock, ucs, confinedStrength } = of;
  const ucsGiven = given("UCS", "unconfined strength", ucs.mid, "Pa", `unconfined strength of ${bed.name}`);
  return confinementWorking(of, { name: bed.name, rock, ucsGiven, confinedStrength });
}

function confinementOfStringer(of: GroundBedFigures, { rock, confinedStrength }: Stringer): Working {
  const name = `the ${rock.name} bands in ${of.bed.name}`;
  const ucsGiven = given("UCS", "unconfined strength", rock.ucs.mid, "Pa", `rock table, ${rock.name}`);
  return confinementWorking(of, { name, rock, ucsGiven, confinedStrength });
}

function confinementWorking(
  { bed, pressureDifference }: GroundBedFigures,
  strength: Pick<Stringer, "rock" | "confinedStrength"> & { readonly name: string; readonly ucsGiven: WorkingInput },
): Working {
  const { name, rock, ucsGiven, confinedStrength } = strength;
  return {
    name: `confined strength of ${name}`,
    relation: "CCS = UCS + Δp + 2 Δp sin φ / (1 - sin φ)",
    inputs: [
      ucsGiven,
      given("Δp", "pressure difference", pressureDifference, "Pa", `pressure at ${bed.name}`),
      given("φ", "internal friction angle", rock.frictionAngle.mid, "rad", `rock table, ${rock.name}`),
    ],
    value: confinedStrength.mid,
    unit: "Pa",
    source: recalledFrom("Caicedo, Calhoun & Ewy 2005"),
  };
}

function responseWorking({ bed, rock, confinedStrength, response }: GroundBedFigures): Working[] {
  const strength = given("CCS", "confined strength", confinedStrength.mid, "Pa", `confined strength of ${bed.name}`);
  const table = `rock table, ${rock.name}`;
  return [
    {
      name: `intrinsic specific energy of ${bed.name}`,
      relation: "ε = k_ε CCS",
      inputs: [strength, given("k_ε", "specific energy over strength", rock.specificEnergyRatio.mid, "-", table)],
      value: response.mid.specificEnergy,
      unit: "Pa",
      source: rock.sources.specificEnergyRatio,
    },
    {
      name: `contact strength of ${bed.name}`,
      relation: "σ = k_σ CCS",
      inputs: [strength, given("k_σ", "contact strength over strength", rock.contactStressRatio.mid, "-", table)],
      value: response.mid.contactStress,
      unit: "Pa",
      source: rock.sources.contactStressRatio,
    },
  ];
}

function abrasivityWorking({ bed, rock, ucs, abrasivity }: GroundBedFigures): Working {
  const strength = rock.clastUcs
    ? given("UCS", "strength of the stones", rock.clastUcs.mid, "Pa", `rock table, ${rock.name}`)
    : given("UCS", "unconfined strength", ucs.mid, "Pa", `unconfined strength of ${bed.name}`);
  return {
    name: `rock abrasivity index of ${bed.name}`,
    relation: "RAI = UCS in MPa × q",
    inputs: [
      strength,
      given("q", "equivalent quartz share", rock.equivalentQuartz.mid, "-", `rock table, ${rock.name}`),
    ],
    value: abrasivity.index.mid,
    unit: "-",
    source: recalledFrom("Plinninger 2010"),
  };
}
