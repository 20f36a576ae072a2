import {
  actualAirFlow,
  airDensity,
  atmosphericPressure,
  commonPractice,
  derivedFrom,
  type Finding,
  type FoamNeed,
  foamNeed,
  given,
  minimumAirFlow,
  readIn,
  USUAL_CHIP_DENSITY,
  type Working,
} from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import { compressorFindings, foamFindings, injectionFindings } from "./gas-findings.ts";

/** What a hole drilled on air, mist or foam asks of its compressor. */
export interface GasNeed {
  /** Least free air at the site that lifts the chips from the end of the hole [m³/s]. */
  readonly leastAirFlow: number;
  /** The foam that this air makes; only on foam. */
  readonly foam?: FoamNeed;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** The air that lifts the chips at a rate in m/s, at the height and in the warmth of the site. */
export function gasNeed(traveler: ResolvedTraveler, rate = 0): GasNeed {
  const { bitHole, pipe, fluid, altitude } = traveler.inquiry;
  const surfacePressure = atmosphericPressure(altitude);
  const { temperature, injection = 0 } = fluid;
  const hole = {
    holeDiameter: bitHole.diameter,
    pipeDiameter: pipe.outsideDiameter,
    depth: bitHole.to,
    rate,
    rockDensity: USUAL_CHIP_DENSITY,
    injection,
    surfacePressure,
    surfaceTemperature: temperature,
  };
  const foam = fluid.kind === "foam" ? foamNeed(hole) : undefined;
  const standardFlow = foam ? foam.leastAirFlow : minimumAirFlow(hole);
  const inletDensity = airDensity({ pressure: surfacePressure, temperature });
  const leastAirFlow = standardFlow > 0 ? actualAirFlow({ standardFlow, inletDensity }) : 0;
  return {
    leastAirFlow,
    ...(foam ? { foam } : {}),
    findings: [
      ...compressorFindings(traveler, leastAirFlow),
      ...(injection > 0 ? injectionFindings(injection) : []),
      ...(foam ? foamFindings(foam) : []),
    ],
    working: workingsOf(traveler, { rate, standardFlow, inletDensity, leastAirFlow, foam }),
  };
}

interface WorkedNeed {
  readonly rate: number;
  readonly standardFlow: number;
  readonly inletDensity: number;
  readonly leastAirFlow: number;
  readonly foam: FoamNeed | undefined;
}

function workingsOf(
  { inquiry }: ResolvedTraveler,
  { rate, standardFlow, inletDensity, leastAirFlow, foam }: WorkedNeed,
): Working[] {
  const { bitHole, pipe, fluid, altitude } = inquiry;
  const { temperature, injection } = fluid;
  const pressure = given("p0", "air pressure at the site", atmosphericPressure(altitude), "Pa", "altitude");
  const warmth = given("T0", "temperature of the air at the site", temperature, "K", "fluid");
  const inputs = [
    given("D", "hole diameter", bitHole.diameter, "m", "hole"),
    given("d", "pipe outside diameter", pipe.outsideDiameter, "m", "pipe"),
    given("L", "depth", bitHole.to, "m", "hole"),
    pressure,
    warmth,
    given("R", "rate", rate, "m/s", "rate at the running point"),
    ...(injection === undefined ? [] : [given("q_l", "water injected", injection, "m³/s", "fluid")]),
  ];
  const standard: Working = foam
    ? {
        name: "least air for the foam, counted as standard air",
        relation: "(q_l + w_g R T/p)/A at the bottom = 90 ft/min, p by the column of the foam without friction",
        inputs,
        value: standardFlow,
        unit: "m³/s",
        source: derivedFrom("column of gas and liquid; lifting speed of Lyons, Guo & Seidel 2001"),
      }
    : {
        name: "least air to lift the chips, counted as standard air",
        relation: "ρ v²/2 at the bottom = 3.0 ft·lbf/ft³, pressure marched down with friction, chips and mist",
        inputs,
        value: standardFlow,
        unit: "m³/s",
        source: readIn("Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual, after Angel 1957"),
      };
  return [
    standard,
    {
      name: "least free air at the site",
      relation: "Q = Q_0 ρ_0/ρ",
      inputs: [
        given("Q_0", "counted as standard air", standardFlow, "m³/s", standard.name),
        given("ρ", "density of the air at the site", inletDensity, "kg/m³", "p0/(R T0)"),
      ],
      value: leastAirFlow,
      unit: "m³/s",
      source: readIn("Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual"),
    },
    ...(foam
      ? [
          {
            name: "share of gas in the foam at the bottom",
            relation: "Γ = q_g/(q_g + q_l)",
            inputs: [given("p", "pressure at the bottom", foam.bottomPressure, "Pa", "column of the foam")],
            value: foam.bottomQuality,
            unit: "-",
            source: commonPractice("what a foam bears, no source"),
          },
        ]
      : []),
  ];
}
