import type { RockResponse } from "../ground/index.ts";
import {
  derivedFrom,
  given,
  readIn,
  recalledFrom,
  type Working,
  type WorkingInput,
  working,
} from "../quantity/index.ts";
import type { BitLoads } from "./bit-loads.ts";

/** The figures of a steady state that its workings explain. */
export interface DrillingFigures {
  /** Hole radius [m]. */
  readonly holeRadius: number;
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Rate of penetration [m/s]. */
  readonly rate: number;
  /** Rotary power at the bit [W]. */
  readonly power: number;
  /** E, rotary work for each volume of hole [Pa]. */
  readonly drillingEnergy: number;
  /** S, weight for each area laid open [Pa]. */
  readonly drillingStrength: number;
  /** MSE [Pa]. */
  readonly mechanicalEnergy: number;
  /** Intrinsic over drilling specific energy [-]. */
  readonly efficiency: number;
  /** μ_b [-]. */
  readonly frictionNumber: number;
  readonly bit: BitLoads;
}

const CUTTER_LAW = recalledFrom("Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23");
const BIT_LAW = readIn("Detournay, Richard & Shepherd 2008, Int. J. Rock Mech. Min. Sci. 45:1347-1360");

/**
 * How every figure of a steady state was reached.
 *
 * @source (d) each working names its own source
 */
export function drillingWorkings(figures: DrillingFigures, response: RockResponse, responseFrom: string): Working[] {
  const { bit, holeRadius, rotarySpeed, advance, rate } = figures;
  const a = given("a", "hole radius", holeRadius, "m", "layout");
  const d = given("d", "advance per revolution", advance, "m", "working: advance per revolution");
  const w = given("W", "weight on bit", bit.weight, "N", "working: weight on bit");
  const t = given("T", "torque at the bit", bit.torque, "N·m", "working: torque at the bit");
  const omega = given("ω", "rotary speed", rotarySpeed, "rad/s", "entered");
  const v = given("v", "rate of penetration", rate, "m/s", "working: rate of penetration");
  const rock = rockInputs(response, responseFrom);
  return [
    {
      name: "weight on bit",
      relation: "W = Σ over all cutters of (ζ ε h + chamfer + σ_c min(l, κ h)) cos τ db",
      inputs: [
        ...rock,
        given("W_c", "part that cuts", bit.cuttingWeight, "N", "sum over cutters"),
        given("W_f", "part on chamfers and flats", bit.contactWeight, "N", "sum over cutters"),
      ],
      value: bit.weight,
      unit: "N",
      source: CUTTER_LAW,
    },
    {
      name: "advance per revolution",
      relation: "the d at which the cutters carry W",
      inputs: [...rock, w],
      value: advance,
      unit: "m",
      source: derivedFrom("root of weight against advance"),
    },
    working("rate of penetration", "v = d ω / 2π", [d, omega], rate, "m/s", derivedFrom("kinematics")),
    {
      name: "torque at the bit",
      relation: "T = Σ over all cutters of r (ε h + chamfer + μ σ_c min(l, κ h)) db",
      inputs: [...rock, d],
      value: bit.torque,
      unit: "N·m",
      source: CUTTER_LAW,
    },
    working("rotary power", "P = T ω", [t, omega], figures.power, "W", derivedFrom("mechanics")),
    working("drilling specific energy", "E = 2 T / (a² d)", [t, a, d], figures.drillingEnergy, "Pa", BIT_LAW),
    working("drilling strength", "S = W / (a d)", [w, a, d], figures.drillingStrength, "Pa", BIT_LAW),
    working(
      "mechanical specific energy",
      "MSE = W/(π a²) + ω T/(π a² v)",
      [w, t, a, omega, v],
      figures.mechanicalEnergy,
      "Pa",
      recalledFrom("Teale 1965, Int. J. Rock Mech. Min. Sci. 2:57-73"),
    ),
    working(
      "efficiency",
      "η = ε / E",
      [
        rock[0],
        given("E", "drilling specific energy", figures.drillingEnergy, "Pa", "working: drilling specific energy"),
      ],
      figures.efficiency,
      "-",
      CUTTER_LAW,
    ),
    working(
      "bit friction number",
      "μ_b = 3 T / (2 W a)",
      [t, w, a],
      figures.frictionNumber,
      "-",
      readIn("Pessier & Fear 1992, SPE 24584"),
    ),
    working(
      "side force as a share of the weight",
      "|F| / W, F = vector sum of drag and radial forces",
      [given("|F|", "side force", bit.lateralForce, "N", "sum over cutters"), w],
      bit.lateralShare,
      "-",
      derivedFrom("statics of the summed cutter forces"),
    ),
  ];
}

function rockInputs(response: RockResponse, from: string): [WorkingInput, ...WorkingInput[]] {
  return [
    given("ε", "intrinsic specific energy of the rock", response.specificEnergy, "Pa", from),
    given("σ_c", "contact stress under flats and chamfers", response.contactStress, "Pa", from),
    given("ψ", "friction angle on the cutter face", response.faceFriction, "rad", from),
    given("μ", "friction of flats on rock", response.flatFriction, "-", from),
    given("κ", "growth of contact length with depth", response.kappa, "-", from),
  ];
}
