import type { BitLayout } from "../bit/index.ts";
import { type CoolingFilm, FILM_COEFFICIENT_RANGE, usualCoolingFilm } from "../cutting/index.ts";
import { portSpeed } from "../flow/index.ts";
import { derivedFrom, type Finding, given, recalledFrom, requirePositive, type Working } from "../quantity/index.ts";
import {
  filmCoefficient,
  LAMINAR_NUSSELT,
  WATER_CONDUCTIVITY,
  WATER_HEAT_CAPACITY,
  type WashingFluid,
} from "./film-coefficient.ts";

/** What washes the cutters of a bit. */
export interface CutterWash {
  readonly layout: BitLayout;
  /** Flow at the bit [m³/s]. */
  readonly flow: number;
  /** Open area of all slots [m²]. */
  readonly slotArea: number;
  /** Number of wings, one slot to each [-]. */
  readonly wings: number;
  /** Number of ports; left out, one to each slot [-]. */
  readonly portCount?: number;
  /** Share of the flow in the slot ahead of each wing; even where not given [-]. */
  readonly flowShares?: readonly number[];
  readonly fluid: WashingFluid;
}

/** The cooling of every cutter by the flow in its slot. */
export interface CutterFilms {
  /** One for each cutter, in the order of the layout. */
  readonly films: readonly CoolingFilm[];
  /** Speed of the fluid in the slot ahead of each wing [m/s]. */
  readonly slotSpeeds: readonly number[];
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * Cooling of each cutter from the flow in the slot ahead of its wing.
 *
 * v = s Q/A_1 with s the slot's share of the flow and A_1 = A/n its area; D = √A_1 stands for its hydraulic diameter. The
 * washed surface is the face and as much again of the side. A cutter whose wing is not known is cooled as the mean slot.
 *
 * @throws RangeError when flow, area or wings are not positive or a share is missing
 * @source (b) Dittus & Boelter 1930, recalled; (c) slot as a square duct, washed surface: no source
 */
export function cutterFilms(wash: CutterWash): CutterFilms {
  const { layout, flow, slotArea, wings, portCount = wings, fluid } = wash;
  const { conductivity = WATER_CONDUCTIVITY, heatCapacity = WATER_HEAT_CAPACITY } = fluid;
  requirePositive({ flow, slotArea, wings });
  const shares = wash.flowShares ?? new Array<number>(wings).fill(1 / wings);
  if (shares.length !== wings)
    throw new RangeError(`a share is needed for each of ${wings} wings, got ${shares.length}`);
  const area = slotArea / wings;
  const hydraulicDiameter = Math.sqrt(area);
  const slotSpeeds = shares.map((share) => portSpeed({ flow: share * flow, area }));
  const coefficients = slotSpeeds.map((speed) => filmCoefficient({ ...fluid, speed, hydraulicDiameter }));
  const mean = coefficients.reduce((sum, each) => sum + each, 0) / wings;
  const slowest = Math.min(...slotSpeeds);
  const least = Math.min(...coefficients);
  return {
    films: layout.cutters.map(({ wing, faceDiameter }) => ({
      coefficient: coefficients[wing - 1] ?? mean,
      area: usualCoolingFilm(faceDiameter).area,
    })),
    slotSpeeds,
    findings: unevenFindings(portCount, wings, wash.flowShares !== undefined),
    working: [
      {
        name: "film coefficient at the least washed wing",
        relation: "h = max(Nu_0, 0.023 (ρ v D/η)^0.8 (c η/k)^0.4) k/D, held to 0.1 to 10 W/(cm²·K)",
        inputs: [
          given("v", "speed in that slot", slowest, "m/s", "flow over slot area"),
          given("D", "hydraulic diameter of a slot", hydraulicDiameter, "m", "root of its area"),
          given("ρ", "density of the fluid", fluid.density, "kg/m³", "fluid"),
          given("η", "viscosity of the fluid", fluid.viscosity, "Pa·s", "fluid"),
          given("c", "heat capacity of the fluid", heatCapacity, "J/(kg·K)", "fluid, or water"),
          given("k", "thermal conductivity of the fluid", conductivity, "W/(m·K)", "fluid, or water"),
          given("Nu_0", "Nusselt number of laminar flow", LAMINAR_NUSSELT, "-", "heat-transfer texts, recalled"),
          given("h_least", "low end of what is met", FILM_COEFFICIENT_RANGE.low, "W/(m²·K)", "weak memory"),
        ],
        value: least,
        unit: "W/(m²·K)",
        source: recalledFrom("Dittus & Boelter 1930; that it holds in a slot is our assumption"),
      },
    ],
  };
}

function unevenFindings(ports: number, wings: number, sharesKnown: boolean): Finding[] {
  if (sharesKnown || ports >= wings) return [];
  return [
    {
      code: "slots-without-port",
      severity: "note",
      where: "ports",
      message: `${ports} ports for ${wings} slots: some slots are washed only from their neighbours, and the cutters behind them run hotter than reckoned here with even shares.`,
      value: ports,
      limit: wings,
      unit: "-",
      source: derivedFrom("number of ports and wings"),
    },
  ];
}
