import {
  commonPractice,
  derivedFrom,
  enteredBy,
  given,
  readIn,
  recalledFrom,
  type Working,
  type WorkingInput,
} from "../quantity/index.ts";
import type { CircuitInput } from "./circuit-input.ts";
import type { CircuitFigures, SectionLoss } from "./circuit-result.ts";
import { hydraulicDiameter } from "./conduit.ts";
import { COOLING_FLOW_PER_DIAMETER } from "./cooling-flow.ts";
import { CUTTINGS_SHARE_LIMIT } from "./cuttings-load.ts";
import { operatingWorking } from "./operating-findings.ts";
import { USUAL_SPHERICITY } from "./slip-band.ts";

/**
 * How each figure of a circuit was reached.
 *
 * @source (d) the relations of the circuit, each naming its own source
 */
export function circuitWorking(input: CircuitInput, figures: CircuitFigures): Working[] {
  return [
    ...portWorking(input, figures),
    ...figures.losses.flatMap((loss) => lossWorking(input, loss)),
    ...pressureWorking(figures),
    operatingWorking(input, figures.pumpPressure, figures.operatingPoint),
    ...cleaningWorking(input, figures),
    ...slotWorking(input, figures),
    coolingWorking(input, figures),
  ];
}

const INPUT = "input of the circuit";

function flowOf(input: CircuitInput): WorkingInput {
  return given("Q", "pump flow", input.pump.flow, "m³/s", INPUT);
}

function densityOf(input: CircuitInput): WorkingInput {
  return given("ρ", "density of the fluid", input.fluid.density, "kg/m³", INPUT);
}

function portWorking(input: CircuitInput, { ports }: CircuitFigures): Working[] {
  const area = given("A", "total port area", ports.area, "m²", "port area");
  const coefficient = given("Cd", "discharge coefficient", input.ports.dischargeCoefficient, "-", INPUT);
  const drop = given("Δp", "port pressure drop", ports.pressureDrop, "Pa", "port pressure drop");
  const diameters = input.ports.diameters.map((d, i) => given(`d${i + 1}`, `port ${i + 1}`, d, "m", INPUT));
  return [
    {
      name: "port area",
      relation: "A = Σ π d²/4",
      inputs: diameters,
      value: ports.area,
      unit: "m²",
      source: derivedFrom("area of a circle"),
    },
    {
      name: "port speed",
      relation: "v = Q/A",
      inputs: [flowOf(input), area],
      value: ports.speed,
      unit: "m/s",
      source: readIn("Guo & Liu 2011, Applied Drilling Circulation Systems"),
    },
    {
      name: "port pressure drop",
      relation: "Δp = ρ Q²/(2 Cd² A²)",
      inputs: [densityOf(input), flowOf(input), coefficient, area],
      value: ports.pressureDrop,
      unit: "Pa",
      source: recalledFrom("Bourgoyne et al. 1986, Applied Drilling Engineering ch. 4"),
    },
    {
      name: "hydraulic power at the ports",
      relation: "P = Δp Q",
      inputs: [drop, flowOf(input)],
      value: ports.power,
      unit: "W",
      source: readIn("Lapeyrouse 2002, Formulas and Calculations for Drilling"),
    },
    {
      name: "hydraulic power per hole area",
      relation: "P/(π D²/4)",
      inputs: [
        given("P", "hydraulic power at the ports", ports.power, "W", "hydraulic power at the ports"),
        given("D", "diameter of the hole", input.holeDiameter, "m", INPUT),
      ],
      value: ports.powerPerHoleArea,
      unit: "W/m²",
      source: readIn("Lapeyrouse 2002, Formulas and Calculations for Drilling"),
    },
    {
      name: "impact force of the jets",
      relation: "F = Cd Q √(2 ρ Δp)",
      inputs: [coefficient, flowOf(input), densityOf(input), drop],
      value: ports.impactForce,
      unit: "N",
      source: readIn("Guo & Liu 2011, Applied Drilling Circulation Systems"),
    },
  ];
}

function rheologyOf({ fluid }: CircuitInput): WorkingInput[] {
  switch (fluid.model) {
    case "newtonian":
      return [given("μ", "viscosity", fluid.viscosity, "Pa·s", INPUT)];
    case "bingham":
      return [
        given("PV", "plastic viscosity", fluid.plasticViscosity, "Pa·s", INPUT),
        given("YP", "yield point", fluid.yieldPoint, "Pa", INPUT),
      ];
    case "power-law":
      return [
        given("K", "consistency", fluid.consistency, "Pa·sⁿ", INPUT),
        given("n", "flow index", fluid.flowIndex, "-", INPUT),
      ];
    case "herschel-bulkley":
      return [
        given("τy", "yield stress", fluid.yieldStress, "Pa", INPUT),
        given("K", "consistency", fluid.consistency, "Pa·sⁿ", INPUT),
        given("n", "flow index", fluid.flowIndex, "-", INPUT),
      ];
  }
}

function lossWorking(input: CircuitInput, loss: SectionLoss): Working[] {
  const diameter = given("d", "hydraulic diameter", loss.hydraulicDiameter, "m", INPUT);
  const speedName = `${loss.part === "annulus" ? "uphole speed" : "speed"}, ${loss.name}`;
  return [
    {
      name: speedName,
      relation: "v = Q/A",
      inputs: [flowOf(input), given("A", "area across the flow", input.pump.flow / loss.speed, "m²", "its diameters")],
      value: loss.speed,
      unit: "m/s",
      source: derivedFrom("continuity"),
    },
    {
      name: `pressure drop, ${loss.name}`,
      relation: loss.relation,
      inputs: [
        densityOf(input),
        given("v", "mean speed", loss.speed, "m/s", speedName),
        diameter,
        given("L", "length", loss.length, "m", INPUT),
        ...rheologyOf(input),
        given("Re", "Reynolds number", loss.reynolds, "-", "this law"),
        given("f", "friction factor (Fanning)", loss.friction, "-", "this law"),
      ],
      value: loss.pressureDrop,
      unit: "Pa",
      source: loss.source,
    },
  ];
}

function pressureWorking({ losses, ports, pumpPressure, shareAtPorts }: CircuitFigures): Working[] {
  const atPorts = given("Δp_b", "port pressure drop", ports.pressureDrop, "Pa", "port pressure drop");
  return [
    {
      name: "pump pressure",
      relation: "p = Δp_b + Σ Δp_i",
      inputs: [
        atPorts,
        ...losses.map((l, i) => given(`Δp_${i + 1}`, l.name, l.pressureDrop, "Pa", `pressure drop, ${l.name}`)),
      ],
      value: pumpPressure,
      unit: "Pa",
      source: derivedFrom("sum of the circuit's losses"),
    },
    {
      name: "share of the pump pressure at the ports",
      relation: "Δp_b/p",
      inputs: [atPorts, given("p", "pump pressure", pumpPressure, "Pa", "pump pressure")],
      value: shareAtPorts,
      unit: "-",
      source: derivedFrom("port pressure drop and pump pressure"),
    },
  ];
}

function cleaningWorking(input: CircuitInput, { cleaning, slowestAnnulus }: CircuitFigures): Working[] {
  const { slip, transportRatio, rateCeiling } = cleaning;
  const chipInputs = [
    given("d", "size of the chip", input.chip.size, "m", INPUT),
    given("ρ_c", "density of the chip", input.chip.density, "kg/m³", INPUT),
    densityOf(input),
    given("V", "uphole speed", slowestAnnulus.speed, "m/s", `uphole speed, ${slowestAnnulus.name}`),
    given("D - d", "gap of the annulus, both sides", hydraulicDiameter(slowestAnnulus.annulus), "m", INPUT),
    ...rheologyOf(input),
  ];
  const ratio = given("F", "transport ratio", transportRatio.mid, "-", "transport ratio");
  const hole = given("D", "diameter of the hole", input.holeDiameter, "m", INPUT);
  const workings: Working[] = [
    {
      name: "slip speed, Moore",
      relation: "f v² = (4/3) g d Δρ/ρ, f = max(40/Re, 22/√Re, 1.507), μ = τw (D - d)/(12 V)",
      inputs: chipInputs,
      value: slip.moore,
      unit: "m/s",
      source: recalledFrom("Moore 1974, Drilling Practices Manual"),
    },
    {
      name: "slip speed, Chien",
      relation: "f v² = (4/3) g d Δρ/ρ, f = 24/Re + 1.727 (1.727 above Re 100), μ = PV + YP d/(8 V)",
      inputs: chipInputs,
      value: slip.chien,
      unit: "m/s",
      source: recalledFrom("Chien 1971"),
    },
    ...(slip.shaped !== undefined
      ? [
          {
            name: "slip speed, sphericity",
            relation: "f v² = (4/3) g d Δρ/ρ, log f = A + B log Re + C (log Re)², μ = τw (D - d)/(12 V)",
            inputs: [...chipInputs, given("s", "sphericity of the chip", USUAL_SPHERICITY, "-", "Guo & Liu 2011")],
            value: slip.shaped,
            unit: "m/s",
            source: readIn("Guo & Liu 2011, Applied Drilling Circulation Systems"),
          },
        ]
      : []),
    {
      name: "transport ratio",
      relation: "F = 1 - Vs/V",
      inputs: [
        slip.form
          ? given("Vs", "slip speed", slip.speed.mid, "m/s", `slip speed, ${slip.form}`)
          : given("Vs", "slip speed, mean of two forms", slip.speed.mid, "m/s", "slip speed, Moore and Chien"),
        given("V", "uphole speed", slowestAnnulus.speed, "m/s", `uphole speed, ${slowestAnnulus.name}`),
      ],
      value: transportRatio.mid,
      unit: "-",
      source: derivedFrom("slip and uphole speed"),
    },
    {
      name: "rate that the flow can clean",
      relation: "rate = c F Q/(π D²/4)",
      inputs: [
        input.limits?.cuttingsShare === undefined
          ? given("c", "largest share of cuttings", CUTTINGS_SHARE_LIMIT, "-", "Pigott 1941, recalled")
          : given("c", "largest share of cuttings", input.limits.cuttingsShare, "-", "set by hand"),
        ratio,
        flowOf(input),
        hole,
      ],
      value: rateCeiling.mid,
      unit: "m/s",
      source: recalledFrom("Pigott 1941, Drilling and Production Practice"),
    },
  ];
  if (cleaning.cuttingsShare !== undefined && input.rate !== undefined) {
    workings.push({
      name: "share of cuttings in the return",
      relation: "c = rate (π D²/4)/(F Q)",
      inputs: [given("rate", "rate of penetration", input.rate, "m/s", INPUT), hole, ratio, flowOf(input)],
      value: cleaning.cuttingsShare,
      unit: "-",
      source: recalledFrom("Pigott 1941, Drilling and Production Practice"),
    });
  }
  return workings;
}

function slotWorking(input: CircuitInput, { slots }: CircuitFigures): Working[] {
  if (!slots || input.slotArea === undefined) return [];
  const area = given("A_s", "slot area", input.slotArea, "m²", INPUT);
  return [
    {
      name: "slot speed",
      relation: "v = Q/A_s",
      inputs: [flowOf(input), area],
      value: slots.speed,
      unit: "m/s",
      source: derivedFrom("continuity"),
    },
    {
      name: "slot area over hole area",
      relation: "A_s/(π D²/4)",
      inputs: [area, given("D", "diameter of the hole", input.holeDiameter, "m", INPUT)],
      value: slots.areaShare,
      unit: "-",
      source: derivedFrom("geometry"),
    },
  ];
}

function coolingWorking(input: CircuitInput, { coolingFlow }: CircuitFigures): Working {
  const byHand = input.limits?.coolingFlow;
  if (byHand !== undefined) {
    return {
      name: "flow asked for cooling",
      relation: "as set by hand",
      inputs: [given("Q", "least flow that cools", byHand, "m³/s", "set by hand")],
      value: byHand,
      unit: "m³/s",
      source: enteredBy("limits"),
    };
  }
  return {
    name: "flow asked for cooling",
    relation: "Q = q D",
    inputs: [
      given("q", "flow for each length of diameter", COOLING_FLOW_PER_DIAMETER.low, "m²/s", "common practice"),
      given("D", "diameter of the bit", input.holeDiameter, "m", INPUT),
    ],
    value: coolingFlow.low,
    unit: "m³/s",
    source: commonPractice(),
  };
}
